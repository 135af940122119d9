// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/survey_step.h"
#include "app/wording/typed_amount.h"

class QLabel;

namespace days::survey_day {

/// The thresholds of structure: shown, and changed where the water's own do not suit.
class StructurePart : public SurveyStep {
    Q_OBJECT
public:
    explicit StructurePart(SurveyContext context);

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;

private:
    /// Changes one threshold. \return whether it may be so.
    using Change = std::function<void(water::StructureChoice&)>;
    [[nodiscard]] bool mayBe(const Change& change) const;
    void set(const Change& change);
    /// A field for one of them; empty text: automatic.
    template <class T, class Parse>
    widgets::AmountField* addThreshold(const AmountEntry& entry,
                                       std::optional<T> water::StructureChoice::*which,
                                       Parse parse);

    widgets::AmountField* dropOff_;
    widgets::AmountField* highGround_;
    widgets::AmountField* leastSize_;
    widgets::AmountField* fineScale_;
    widgets::AmountField* broadScale_;
    QLabel* used_;
};

} // namespace days::survey_day
