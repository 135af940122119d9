// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/basis.h"

#include <gtest/gtest.h>

namespace {

using open_water::Basis;

TEST(Basis, IsAnotherWithEachMapThatIsDrawnAfresh) {
    const water::Stamp stamp(7);
    water::Derived derived;
    derived.drawn = std::make_shared<surface::DrawnWater>();
    derived.structure = std::make_shared<structure::ZoneMap>();
    derived.weed = std::make_shared<weed::WeedMap>();
    derived.sections = std::make_shared<sections::SectionMap>();
    const Basis basis(stamp, derived);
    EXPECT_EQ(basis, Basis(stamp, derived));
    EXPECT_NE(basis, Basis(water::Stamp(8), derived));
    // The same figures, but made again.
    water::Derived afresh = derived;
    afresh.drawn = std::make_shared<surface::DrawnWater>(*derived.drawn);
    EXPECT_NE(basis, Basis(stamp, afresh)) << "bottom";
    afresh = derived;
    afresh.structure = std::make_shared<structure::ZoneMap>(*derived.structure);
    EXPECT_NE(basis, Basis(stamp, afresh)) << "structure";
    afresh = derived;
    afresh.weed = std::make_shared<weed::WeedMap>(*derived.weed);
    EXPECT_NE(basis, Basis(stamp, afresh)) << "weed";
    afresh = derived;
    afresh.sections = std::make_shared<sections::SectionMap>(*derived.sections);
    EXPECT_NE(basis, Basis(stamp, afresh)) << "sections";
}

} // namespace
