// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/grid/grid.h"
#include "core/marks/clearance.h"
#include "core/marks/exclusion.h"

#include <array>
#include <cstdint>

namespace marks {

/// Every cell of the water today: whether a boat may lie in its middle, and if not, why.
class LyingCells {
public:
    /// \return wrongUse for settings or a plan out of range; cancelled.
    [[nodiscard]] static base::Result<LyingCells> of(const MarkInput& input, const Plan& plan,
                                                     const ProposeSettings& settings,
                                                     base::Progress& progress);

    [[nodiscard]] const grid::GridFrame& frame() const { return what_.frame(); }
    /// False on land as well.
    [[nodiscard]] bool mayLieIn(grid::Cell c) const { return frame().holds(c) && what_[c] == open; }
    /// Nothing where the boat may lie, and on land.
    [[nodiscard]] std::optional<Exclusion> excludedIn(grid::Cell c) const {
        return what_[c] > open ? std::optional(allExclusions[what_[c] - open - 1U]) : std::nullopt;
    }
    /// How much of the water each condition excludes, in the order of allExclusions, each cell
    /// counted for the first that holds.
    [[nodiscard]] ExcludedAreas excludedAreas() const;
    [[nodiscard]] const Clearance& clearance() const { return clearance_; }

private:
    static constexpr std::uint8_t land = 0;
    static constexpr std::uint8_t open = 1;

    grid::Grid<std::uint8_t> what_; ///< Land, open, or open and one more than the exclusion.
    Clearance clearance_;
};

} // namespace marks
