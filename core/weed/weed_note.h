// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/typed_id.h"
#include "core/geo/lon_lat.h"
#include "core/units/length.h"
#include "core/units/moment.h"

#include <chrono>
#include <optional>
#include <string_view>
#include <vector>

namespace weed {

/// How much weed was met.
enum class Growth { none, thin, thick };

/// "none", "thin", "thick".
[[nodiscard]] std::string_view nameOf(Growth growth);
[[nodiscard]] std::optional<Growth> growthNamed(std::string_view name);

using WeedNoteId = base::TypedId<struct WeedNoteKind>;

/// Where a note holds: at its place, along a line, or all over an area.
enum class Extent { place, line, area };

/// What the angler noted at one place, along one line or over one area.
struct WeedNote {
    WeedNoteId id;
    geo::LonLat place; ///< Of a line or an area its first corner.
    Growth growth = Growth::none;
    std::optional<units::Length> height{}; ///< Above the bottom.
    std::optional<units::Day> seen{};      ///< Nobody knows when where absent.
    Extent extent = Extent::place;
    /// Of a line, at least two; of an area, at least three, the last not the first again; none of
    /// a place.
    std::vector<geo::LonLat> corners{};
    friend bool operator==(const WeedNote&, const WeedNote&) = default;
};

/// How much a note counts in that year: half for each year that it is older, beds mostly coming
/// back where they were, but not as they were (ours). In full where one of the two is not known.
[[nodiscard]] double worthOf(const WeedNote& note, std::optional<std::chrono::year> year);

/// A line or an area; a place where there are too few corners for that.
[[nodiscard]] WeedNote noteOver(Extent extent, std::vector<geo::LonLat> corners);

} // namespace weed
