// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/check_view.h"
#include "app/days/survey_day/set_aside_walk.h"
#include "app/days/survey_day/survey_step.h"
#include "core/water/questions/soundings_within.h"

namespace widgets {
class PlainTable;
}

namespace days::survey_day {

/// Within "Check the soundings": what was set aside by reason, gone through one by one, and the
/// sounding that is looked at with how its depth came about.
class SetAsidePart : public SurveyStep {
    Q_OBJECT
public:
    explicit SetAsidePart(SurveyContext context);

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;
    void hideEvent(QHideEvent* event) override;

private:
    using Edit = void (*)(open_water::OpenWater&, const water::SoundingChoice&);

    void layWalk();
    void layHands();
    void chooseReason(int row);
    void step(bool isForward);
    void judge(Edit edit);
    void askSoundings(side_view::BrushAct act);
    void take(side_view::BrushAct act, const water::SoundingChoice& choice);
    void showSounding();
    [[nodiscard]] SetAsideWalk walk() const;

    std::vector<soundings::Verdict> reasons_; ///< Of the rows.
    std::optional<soundings::Verdict> reason_;
    widgets::PlainTable* table_ = nullptr;
    QLabel* state_ = nullptr;
    QPushButton* previous_ = nullptr;
    QPushButton* next_ = nullptr;
    QLabel* title_ = nullptr;
    widgets::PlainTable* terms_ = nullptr;
    QPushButton* keep_ = nullptr;
    QPushButton* aside_ = nullptr;
    QPushButton* ring_ = nullptr;
    QPushButton* takeBack_ = nullptr;
};

} // namespace days::survey_day
