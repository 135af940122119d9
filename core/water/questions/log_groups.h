// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/grouping.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <string>
#include <vector>

namespace water {

/// The group of stays that lie on no water of this chart.
inline constexpr std::string_view elsewhere = "elsewhere";
/// Of those with water below, but nothing of the kind asked for within a cast.
inline constexpr std::string_view plainBottom = "plain bottom";
inline constexpr std::string_view tooDeep = "deeper than the limit";

/// What a stay fished: the ground within reach of a place.
struct Fished {
    geo::WaterPoint place; ///< Of the middle of the baits where that is noted, or else of the boat.
    units::Length within;  ///< A cast from the boat; a few metres where the baits are noted.
};

/// Stays by the section, the kind of zone, or the band that they fished. A hump fished from beside
/// it is that hump: where the place fished is on no section the nearest one within reach counts,
/// and of zones the one within reach that is worth most to a bait. The band is that at the place,
/// at chart level, named by its depths in metres: "4 to 6 m".
[[nodiscard]] std::vector<rates::GroupedStay> bySection(const Water& water, const Derived& derived);
[[nodiscard]] std::vector<rates::GroupedStay> byZone(const Water& water, const Derived& derived);
[[nodiscard]] std::vector<rates::GroupedStay> byBand(const Water& water, const Derived& derived);

/// Stays by the place they were anchored on: those within 25 m of an earlier one share its name,
/// "mark 3".
[[nodiscard]] std::vector<rates::GroupedStay> byMark(const Water& water);

/// By how long before a stay's day its place was last fished, by anybody: "for the first time",
/// "the same day", "1 to 3 days before" ... "over 30 days before". A place is what lies within half
/// a cast, to a few metres.
[[nodiscard]] std::vector<rates::GroupedStay> byDaysSince(const Water& water);
[[nodiscard]] std::vector<std::string> daysSinceOrder();
/// Where "mark 1", "mark 2" and so on lie: the first stay on each.
[[nodiscard]] std::vector<geo::LonLat> placesOfMarks(const Water& water);

/// Whether a stay had this bait on a hook, any case; its bait may name several.
[[nodiscard]] bool fishedBait(const logbook::Stay& stay, std::string_view bait);

/// "4 to 6 m", "over 20 m".
[[nodiscard]] std::string bandName(const contours::Bands& bands, std::size_t band);
/// The group of what was fished by the zones within its reach.
[[nodiscard]] std::string zoneGroup(const Water& water, const Derived& derived,
                                    const Fished& fished);

} // namespace water
