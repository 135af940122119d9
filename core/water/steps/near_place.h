// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark.h"
#include "core/water/document/water.h"

#include <optional>
#include <string>
#include <vector>

namespace water {

/// Farther away a name says nothing of a place. Our choice (no source).
inline constexpr units::Length nearEnoughToName = units::Length::metres(250.0);

/// A named place in the water's frame: what is asked of many places is brought there once.
struct PlacedName {
    std::string name;
    geo::WaterPoint at;
};
/// Needs a water that has a frame.
[[nodiscard]] std::vector<PlacedName> placedNames(const Water& water);
/// As nearestNamedPlace(), among these.
[[nodiscard]] std::optional<marks::NearPlace> nearestOf(const std::vector<PlacedName>& names,
                                                        geo::WaterPoint place);

/// The named place of the chart nearest to `place`, of equals the first; nothing beyond
/// nearEnoughToName. Needs a water that has a frame.
[[nodiscard]] std::optional<marks::NearPlace> nearestNamedPlace(const Water& water,
                                                                geo::WaterPoint place);

} // namespace water
