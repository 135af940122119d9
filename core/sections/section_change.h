// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"
#include "core/geo/lon_lat.h"

#include <vector>

namespace sections {

/// What the user wants otherwise than the division made it. Bound to places, not to numbers, so
/// that it holds when the map is redrawn.
struct SectionChange {
    enum class Kind {
        join,  ///< The sections at the two places become one.
        split, ///< The section in which most of the line lies is cut along it.
        border ///< The border between the sections at the two places runs along the line.
    };
    Kind kind = Kind::join;
    std::vector<geo::LonLat> places; ///< Two for join and border, none for split.
    std::vector<geo::LonLat> line;   ///< For split and border, at least two points.
    friend bool operator==(const SectionChange&, const SectionChange&) = default;
};

/// A change that could not be made on the map as it is now; it stays with the water.
struct ChangeRefused {
    std::size_t change = 0; ///< Its position among the changes.
    base::Error why;
};

} // namespace sections
