// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/lie_part.h"
#include "app/days/day_context.h"
#include "core/base/result.h"
#include "core/water/questions/lie_trial.h"

#include <optional>

namespace days::tomorrow {

/// The mark of the trial as one of the user's own with this part of it at `to`. A bait that is
/// moved makes all baits of the mark his; anchors are laid in the trial's wind.
/// \param now the water as it is; what he laid of the mark before stays.
[[nodiscard]] water::PinnedMark withPart(const water::LieTrial& trial, const water::Water& now,
                                         const chart::LiePart& part, geo::WaterPoint to);

/// The hand on boat, anchors and baits of a mark: shows with each move what would follow of it, and
/// makes one edit of what is let go.
class LieHand {
public:
    explicit LieHand(DayContext context) : context_(context) {}

    void hold(const chart::LiePart& part, geo::WaterPoint at);
    void drop(const chart::LiePart& part, geo::WaterPoint to);
    /// Nothing happened.
    void letGo();

private:
    /// Of the mark that is held; null with a word to the user where it cannot be tried.
    const water::LieTrial* trialOf(int rank);
    base::Result<marks::Mark> tried(const chart::LiePart& part, geo::WaterPoint at);

    DayContext context_;
    std::optional<water::LieTrial> trial_;
};

} // namespace days::tomorrow
