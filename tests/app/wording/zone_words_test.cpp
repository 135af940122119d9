// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/zone_words.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using structure::KindFamily;
using structure::ZoneKind;

TEST(ZoneWords, NameEveryKindAsItsZonesAreNamedAndExplainIt) {
    std::set<QString> meanings;
    for (const ZoneKind kind : structure::allZoneKinds) {
        EXPECT_EQ(wording::spoken(kind).toStdString(), structure::nameOf(kind));
        EXPECT_TRUE(wording::meaningOf(kind).endsWith('.'));
        meanings.insert(wording::meaningOf(kind));
    }
    EXPECT_EQ(meanings.size(), structure::allZoneKinds.size()) << "no two mean the same";
}

TEST(ZoneWords, ListAFamily) {
    EXPECT_EQ(wording::anyOf(KindFamily::feature), "hump, hole, spur or saddle");
    EXPECT_EQ(wording::allOf(KindFamily::feature), "humps, holes, spurs and saddles");
    EXPECT_EQ(wording::anyOf(KindFamily::weed), "weed bed or weed edge");
    EXPECT_EQ(wording::allOf(KindFamily::dropOff), "drop-offs");
}

} // namespace
