// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"

#include <vector>

class QLabel;

namespace widgets {
class IntervalBar;
}

namespace days::tomorrow {

/// Within "What matters to you": the page of beliefs and record. For each belief what the user
/// said, what his log says of it, and how sure that is.
class BeliefsPart : public DayStep {
    Q_OBJECT
public:
    explicit BeliefsPart(DayContext context);

    DayStepLine refresh() override;

private:
    QLabel* basis_ = nullptr;
    QLabel* old_ = nullptr;
    widgets::IntervalBar* bars_ = nullptr;
    std::vector<QLabel*> rows_; ///< In the order of allFactorKinds.
};

} // namespace days::tomorrow
