// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_b12.h"

#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

std::vector<soundings::SurveyDay> oneSounding() {
    std::vector<soundings::SurveyDay> days(1);
    days[0].soundings.edit().push_back({{3.1, -55.2},
                                        units::Depth::feet(10.0),
                                        units::momentFrom("2026-09-05T07:42:00Z", units::Clock())});
    return days;
}

TEST(WriteB12, WritesDegreesMetresAndMilliseconds) {
    const support::ScratchFolder scratch;
    const auto path = scratch.path() / "b12.csv";
    ASSERT_TRUE(outputs::writeB12Table(path, oneSounding(), nullptr));
    EXPECT_EQ(support::ScratchFolder::textOf(path),
              "LON,LAT,DEPTH,TIME\n3.1000000,-55.2000000,3.048,2026-09-05T07:42:00.000Z\n");
}

TEST(WriteB12, SaysInGeoJsonHowTheDepthsAreMeant) {
    const support::ScratchFolder scratch;
    const auto path = scratch.path() / "b12.geojson";
    ASSERT_TRUE(outputs::writeB12Geojson(path, oneSounding(), nullptr));
    const auto json = nlohmann::json::parse(support::ScratchFolder::textOf(path));
    const auto& node = json["properties"]["trustedNode"];
    EXPECT_EQ(node["convention"], "GeoJSON CSB 3.0");
    EXPECT_EQ(node["verticalReferenceOfDepth"], "Transducer");
    for (const char* unknown :
         {"providerOrganizationName", "providerEmail", "uniqueVesselID", "dataLicense"}) {
        EXPECT_FALSE(node.contains(unknown)) << unknown << " is the giver's to say";
    }
    EXPECT_EQ(json["properties"]["depthUnits"], "meters");
    ASSERT_EQ(json["features"].size(), 1U);
    EXPECT_EQ(json["features"][0]["geometry"]["coordinates"],
              (nlohmann::json{3.1, -55.2})); // two numbers: depth is no height
    EXPECT_EQ(json["features"][0]["properties"]["depth"], 3.048);
    EXPECT_EQ(json["features"][0]["properties"]["time"], "2026-09-05T07:42:00.000Z");
}

} // namespace
