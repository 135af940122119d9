// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"

class QLabel;
class QPushButton;

namespace widgets {
class PlainTable;
}

namespace days::tomorrow {

/// Within "Marks": water in which the user wants no mark any more, and the way to lift each ban.
class BannedPart : public DayStep {
    Q_OBJECT
public:
    explicit BannedPart(DayContext context);

    DayStepLine refresh() override;

private:
    void banChosen();
    void askArea();
    void choose(int row);
    void lift(int row);
    void showButtons();

    widgets::PlainTable* table_ = nullptr;
    QLabel* about_ = nullptr;
    QPushButton* mark_ = nullptr;
    QPushButton* area_ = nullptr;
    QPushButton* lift_ = nullptr;
};

} // namespace days::tomorrow
