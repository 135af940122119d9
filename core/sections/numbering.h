// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/shared_list.h"
#include "core/geo/lon_lat.h"
#include "core/units/area.h"

#include <vector>

namespace sections {

/// A number that a section has, or once had, and the water that it is the number of.
struct NumberedWater {
    int number = 0;                       ///< From 1.
    bool isOnMap = true;                  ///< False where no section of the latest map has it.
    std::vector<geo::LonLatPiece> pieces; ///< The section's outline when it last had it.
    friend bool operator==(const NumberedWater&, const NumberedWater&) = default;
};

/// What the next map takes over from the one before: the numbers, for good, so that yesterday's
/// sheet and the log never speak of other water, and the borders, so that the map stays the one
/// that the angler knows.
struct Numbering {
    base::SharedList<NumberedWater> waters; ///< By number; none is ever lost.
    /// The division before the user changed it; empty where it is that of the waters on the map.
    base::SharedList<std::vector<geo::LonLatPiece>> parts;
    units::Area wantedArea; ///< Size of a section that it was divided for.
    friend bool operator==(const Numbering&, const Numbering&) = default;
};

/// The division that `numbering` remembers, a part each.
[[nodiscard]] std::vector<std::vector<geo::LonLatPiece>> partsOf(const Numbering& numbering);

} // namespace sections
