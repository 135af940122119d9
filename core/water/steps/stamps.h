// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/plan.h"
#include "core/water/document/derived.h"
#include "core/water/document/stamp.h"
#include "core/water/document/water.h"

#include <array>

namespace water {

/// The stamps of all that is made from one water, taken in one pass. What a long list gives to them
/// is worked out once a list and known to its copies: after an edit only what it changed is read.
class Stamps {
public:
    [[nodiscard]] static Stamps of(const Water& water);

    /// Changes whenever anything changes that the step, or a step before it, depends on.
    [[nodiscard]] Stamp at(Step step) const { return ofSteps_.at(static_cast<std::size_t>(step)); }
    /// Changes whenever anything changes that planDay() depends on: PlannedDay::madeFrom of a day
    /// that still holds.
    [[nodiscard]] Stamp ofPlan() const { return ofPlan_; }
    friend bool operator==(const Stamps&, const Stamps&) = default;

private:
    std::array<Stamp, allSteps.size()> ofSteps_;
    Stamp ofPlan_;
};

/// The stamp of a day planned for this water by `plan`, which goes before the water's own.
/// \param sections the stamp of the sections that it was planned on.
[[nodiscard]] Stamp stampOfPlan(const Water& water, const marks::Plan& plan, Stamp sections);

} // namespace water
