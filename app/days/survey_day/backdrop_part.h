// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/backdrop_keeper.h"
#include "app/days/step_body.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QSlider;

namespace days::survey_day {

/// The backdrop of the chart: which file, whether it is shown, how strong.
class BackdropPart : public StepBody {
    Q_OBJECT
public:
    BackdropPart(DayContext context, BackdropKeeper& keeper, QWidget* parent);

private:
    void refresh();
    void ask();

    DayContext context_;
    BackdropKeeper& keeper_;
    QLabel* file_ = nullptr;
    QPushButton* takeAway_ = nullptr;
    QCheckBox* shown_ = nullptr;
    QSlider* strength_ = nullptr;
};

} // namespace days::survey_day
