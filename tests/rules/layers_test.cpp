// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/layers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rules {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(Layers, AreReadFromTheBuildDescription) {
    const Layers layers = layersIn(
        "# layer(ghost USES all)\nlayer(base FENCED fmt::fmt)\n"
        "layer(geo USES base units # and no more\n    FENCED PROJ::proj)\nother(gdal USES geo)\n",
        "layer");
    ASSERT_EQ(layers.size(), 2U);
    EXPECT_THAT(layers.at("base"), IsEmpty());
    EXPECT_THAT(layers.at("geo"), ElementsAre("base", "units"));
}

} // namespace rules
