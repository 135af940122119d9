// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/zone_kinds.h"

#include <gtest/gtest.h>

namespace {

using structure::KindFacts;
using structure::KindFamily;
using structure::ZoneKind;

TEST(ZoneKinds, HaveOneRowEachInTheirOrder) {
    for (const ZoneKind kind : structure::allZoneKinds) {
        EXPECT_EQ(structure::factsOf(kind).kind, kind);
        EXPECT_FALSE(structure::factsOf(kind).name.empty());
        EXPECT_GT(structure::factsOf(kind).worthToABait, 0.0);
        EXPECT_LE(structure::factsOf(kind).worthToABait, 1.0);
    }
    constexpr std::array shorter{KindFacts{ZoneKind::dropOff, "drop-off", {}, 0.5}};
    static_assert(!structure::hasEveryKind(shorter));
    constexpr auto swapped = [] {
        auto table = structure::kindTable;
        std::swap(table[1], table[2]);
        return table;
    }();
    static_assert(!structure::hasEveryKind(swapped));
}

TEST(ZoneKinds, AreEdgesWeedPlacesOrLevelGround) {
    for (const ZoneKind kind : structure::allZoneKinds) {
        const bool isPlace = kind == ZoneKind::hump || kind == ZoneKind::hole ||
                             kind == ZoneKind::spur || kind == ZoneKind::saddle;
        EXPECT_EQ(structure::isFeature(kind), isPlace) << structure::nameOf(kind);
        const bool isWeed = kind == ZoneKind::weedBed || kind == ZoneKind::weedEdge;
        EXPECT_EQ(structure::factsOf(kind).family == KindFamily::weed, isWeed);
    }
    EXPECT_EQ(structure::factsOf(ZoneKind::dropOff).family, KindFamily::dropOff);
    EXPECT_EQ(structure::factsOf(ZoneKind::trough).family, KindFamily::level);
}

} // namespace
