// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/geo/lon_lat.h"
#include "core/units/length.h"

#include <QString>

#include <optional>

namespace wording {

/// A place as it is read off a receiver, latitude first: "55.1950 N 3.1041 E", "55.195, 3.1041",
/// "N55° 11.70' E3° 6.25'". Nothing where the text is no such place.
[[nodiscard]] std::optional<geo::LonLat> placeTyped(const QString& text);

/// No bait lies farther from its boat than this (our choice, no source).
inline constexpr auto farthestBait = units::Length::metres(300.0);

/// Where a bait lies, as seen from the boat: "NE 30 m", "30 m, 045°", or a place as placeTyped()
/// takes it. The length needs its unit. Nothing where that is farther than `farthestBait`.
[[nodiscard]] std::optional<geo::LonLat> baitPlaceTyped(const QString& text, geo::LonLat boat,
                                                        preferences::UnitSystem units);
/// The same in words, which can be typed again: "045° 30 m".
[[nodiscard]] QString baitPlaceWords(geo::LonLat bait, geo::LonLat boat, const Words& words);

} // namespace wording
