// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/zone.h"

namespace structure {

/// What a kind of bottom means to whoever anchors beside it.
enum class KindFamily {
    dropOff,
    weed,
    feature, ///< A place by itself, to be looked at as one: its middle is where to anchor.
    level,   ///< Ground that is neither edge nor place.
};

/// All that core knows of a kind: its one row.
struct KindFacts {
    ZoneKind kind;
    std::string_view name; ///< In files and reports: "drop-off", "weed bed".
    KindFamily family;
    /// To a bait, 0 to 1: features and edges from 0.75 up, plateau, trough and shelf about a half,
    /// flat bottom and weed itself little. Common practice (no source).
    double worthToABait;
};

/// One row a kind, in the order of ZoneKind.
inline constexpr std::array kindTable{
    KindFacts{ZoneKind::dropOff, "drop-off", KindFamily::dropOff, 0.9},
    KindFacts{ZoneKind::shelf, "shelf", KindFamily::level, 0.4},
    KindFacts{ZoneKind::plateau, "plateau", KindFamily::level, 0.6},
    KindFacts{ZoneKind::hump, "hump", KindFamily::feature, 1.0},
    KindFacts{ZoneKind::hole, "hole", KindFamily::feature, 0.75},
    KindFacts{ZoneKind::trough, "trough", KindFamily::level, 0.5},
    KindFacts{ZoneKind::spur, "spur", KindFamily::feature, 0.95},
    KindFacts{ZoneKind::saddle, "saddle", KindFamily::feature, 0.8},
    KindFacts{ZoneKind::flat, "flat", KindFamily::level, 0.2},
    KindFacts{ZoneKind::weedBed, "weed bed", KindFamily::weed, 0.1},
    KindFacts{ZoneKind::weedEdge, "weed edge", KindFamily::weed, 0.85}};

/// Whether `table` has one row a kind, in the order of ZoneKind: to be asserted of every table of
/// kinds.
template <class Table>
[[nodiscard]] consteval bool hasEveryKind(const Table& table) {
    bool isWhole = table.size() == allZoneKinds.size();
    for (std::size_t k = 0; isWhole && k < table.size(); ++k) {
        isWhole = static_cast<std::size_t>(table[k].kind) == k && allZoneKinds[k] == table[k].kind;
    }
    return isWhole;
}
static_assert(hasEveryKind(kindTable));

[[nodiscard]] constexpr const KindFacts& factsOf(ZoneKind kind) {
    return kindTable[static_cast<std::size_t>(kind)];
}

/// What one anchors beside in order to fish it, and not just the ground round about: features and
/// edges.
[[nodiscard]] constexpr bool isPlaceToFish(ZoneKind kind) {
    constexpr double leastWorth = 0.75;
    return factsOf(kind).worthToABait >= leastWorth;
}

[[nodiscard]] constexpr bool isFeature(ZoneKind kind) {
    return factsOf(kind).family == KindFamily::feature;
}

} // namespace structure
