// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/document/derived.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/steps/day_ground.h"

#include <memory>

namespace water {

/// One mark of a planned day as it would lie if the user put it, its anchors or its baits
/// otherwise: asked again and again while his hand moves, and just what the next plan will make of
/// it. The bottom is made once.
class LieTrial {
public:
    /// \param planned that it is of; the trial keeps it and the water alive.
    /// \return wrongUse where there is no such mark, or the water is not derived up to
    /// Step::sections.
    [[nodiscard]] static base::Result<LieTrial> of(std::shared_ptr<const Water> water,
                                                   const Derived& derived,
                                                   std::shared_ptr<const PlannedDay> planned,
                                                   int rank);

    /// With what it would have of ropes, baits, knots and cautions of its lie, in the wind of its
    /// hours; what else is said of the mark is as it was planned.
    /// \return unusableInput where nothing holds the boat so.
    [[nodiscard]] base::Result<marks::Mark> with(const PinnedMark& asked) const;

    [[nodiscard]] const Water& water() const { return *water_; }
    [[nodiscard]] const PlannedDay& planned() const { return *planned_; }
    [[nodiscard]] const marks::Mark& mark() const { return mark_; }
    /// That the anchors of the mark are laid for.
    [[nodiscard]] const logbook::Wind& wind() const { return wind_; }

private:
    LieTrial(std::shared_ptr<const Water> water, std::shared_ptr<const PlannedDay> planned,
             std::shared_ptr<const DayGround> ground, marks::Mark mark);

    std::shared_ptr<const Water> water_;
    std::shared_ptr<const PlannedDay> planned_;
    std::shared_ptr<const DayGround> ground_;
    marks::Mark mark_;
    logbook::Wind wind_;
};

} // namespace water
