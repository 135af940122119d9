// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

#include <utility>
#include <vector>

namespace widgets {

/// A name and what is to be said of it.
using Fact = std::pair<QString, QString>;

/// Facts below one another, their names in a column of their own. Hidden while there are none.
class FactList : public QLabel {
public:
    explicit FactList(QWidget* parent = nullptr);

    void setFacts(const std::vector<Fact>& facts);
};

} // namespace widgets
