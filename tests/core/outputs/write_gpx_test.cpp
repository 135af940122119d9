// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_gpx.h"

#include "core/gdal/vector_source.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using support::FoundWater;
using support::ScratchFolder;

base::Progress quiet;

TEST(WriteGpx, GivesMarksAsWaypointsInTheOrderOfTheSchema) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto path = folder.path() / "marks.gpx";
    ASSERT_TRUE(
        outputs::writeMarksGpx(path, known.told(), known.made.frame, known.water.name).has_value());
    const std::string text = ScratchFolder::textOf(path);
    std::size_t at = 0;
    // gpx.xsd: metadata before wpt; in wptType name, desc, type, extensions, in this order.
    for (const char* wanted :
         {"<gpx version=\"1.1\" creator=", "xmlns=\"http://www.topografix.com/GPX/1/1\"",
          "<metadata>", "Ashmere &amp; &lt;Little&gt; Øvre", "<wpt lat=\"",
          "<name>1 Heron Bay</name>", "<desc>58 m of drop-off &lt; 9 m &amp; deep</desc>",
          "<type>mark</type>", "<extensions>", "<mm:depth_m>6.66</mm:depth_m>",
          "<mm:trust_m>0.30</mm:trust_m>", "<mm:bow_anchor ", "<mm:stern_anchor ",
          "</extensions></wpt>", "</gpx>"}) {
        at = text.find(wanted, at);
        ASSERT_NE(at, std::string::npos) << wanted << " is not in its place in\n" << text;
    }
    EXPECT_EQ(text.find("<ele>"), std::string::npos);
}

TEST(WriteGpx, PutsAMarkWhereItIs) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto path = folder.path() / "marks.gpx";
    ASSERT_TRUE(
        outputs::writeMarksGpx(path, known.told(), known.made.frame, known.water.name).has_value());
    auto source = gdal::VectorSource::open(path);
    ASSERT_TRUE(source.has_value()) << source.error().sentence();
    std::vector<geo::LonLat> places;
    for (std::size_t layer = 0; layer < source->layers().size(); ++layer) {
        if (source->layers()[layer].name == "waypoints") {
            ASSERT_TRUE(source
                            ->forEach(
                                layer,
                                [&](const gdal::Feature& feature) {
                                    places.push_back(feature.points.at(0).place);
                                    return true;
                                },
                                quiet)
                            .has_value());
        }
    }
    ASSERT_EQ(places.size(), 1U);
    EXPECT_NEAR(places[0].lon_deg, known.marks[0].lonLat.lon_deg, 1e-7);
    EXPECT_NEAR(places[0].lat_deg, known.marks[0].lonLat.lat_deg, 1e-7);
}

TEST(WriteGpx, GivesATripAsOneRouteToFollow) {
    const ScratchFolder folder;
    const FoundWater known;
    const auto path = folder.path() / "trip.gpx";
    surface::SurveyTrip trip;
    trip.lines.resize(2);
    trip.lines[0].start = {20.0, 0.0};
    trip.lines[0].end = {100.0, 0.0};
    trip.lines[1].start = {100.0, 50.0};
    trip.lines[1].end = {20.0, 50.0};
    trip.route = {{0.0, 0.0},    {20.0, 0.0},  {100.0, 0.0}, {110.0, 25.0},
                  {100.0, 50.0}, {20.0, 50.0}, {0.0, 0.0}};
    ASSERT_TRUE(outputs::writeTripGpx(path, trip, known.made.frame, known.water.name).has_value());
    const std::string text = ScratchFolder::textOf(path);
    std::vector<std::string> names;
    for (std::size_t at = text.find("<rtept "); at != std::string::npos;
         at = text.find("<rtept ", at + 1)) {
        const auto from = text.find("<name>", at) + 6;
        names.push_back(text.substr(from, text.find("</name>", from) - from));
    }
    EXPECT_EQ(names, (std::vector<std::string>{"launch", "1 start", "1 end", "turn", "2 start",
                                               "2 end", "launch"}));
    EXPECT_EQ(text.find("<rte>"), text.rfind("<rte>")) << "one route";
}

TEST(WriteGpx, NeverWritesALongitudeOf180) {
    const ScratchFolder folder;
    FoundWater known;
    known.marks[0].lonLat = {180.0, 10.0};
    const auto path = folder.path() / "marks.gpx";
    ASSERT_TRUE(outputs::writeMarksGpx(path, known.told(), known.made.frame, "").has_value());
    EXPECT_NE(ScratchFolder::textOf(path).find("lon=\"-180.0000000\""), std::string::npos);
}

} // namespace
