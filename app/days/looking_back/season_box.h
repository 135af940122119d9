// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/looking_back/log_question.h"

#include <QComboBox>

namespace days::looking_back {

/// Chooses the season of the question: by threes of months, as the weather is counted.
class SeasonBox : public QComboBox {
    Q_OBJECT
public:
    explicit SeasonBox(LogQuestion& question, QWidget* parent = nullptr);
};

} // namespace days::looking_back
