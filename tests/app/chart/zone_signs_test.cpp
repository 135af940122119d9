// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/zone_signs.h"

#include <gtest/gtest.h>

namespace {

using chart::ZoneFill;
using structure::ZoneKind;

TEST(ZoneSigns, AreThereForEveryKindThatIsFilledWithStrokes) {
    for (const ZoneKind kind : structure::allZoneKinds) {
        const chart::ZoneSign& sign = chart::signOf(kind);
        EXPECT_EQ(sign.kind, kind);
        ASSERT_EQ(sign.strokes != nullptr, sign.fill == ZoneFill::strokes)
            << structure::nameOf(kind);
        if (sign.strokes != nullptr) {
            const QRectF small = sign.strokes(1.0).boundingRect();
            const QRectF large = sign.strokes(2.0).boundingRect();
            EXPECT_GT(small.width(), 4.0);
            EXPECT_NEAR(large.width(), 2.0 * small.width(), 1e-9);
            EXPECT_LT(small.width(), 7.0) << "signs are strewn 21 apart";
        }
    }
    EXPECT_EQ(chart::signOf(ZoneKind::dropOff).fill, ZoneFill::hachures);
    EXPECT_FALSE(chart::signOf(ZoneKind::flat).isNamed);
}

} // namespace
