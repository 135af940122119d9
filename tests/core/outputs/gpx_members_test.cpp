// SPDX-License-Identifier: GPL-3.0-or-later
// The marks for a handheld, compared to the letter: a wrong anchor on the screen of the boat is a
// wrong anchor on the bottom.
#include "core/outputs/write_gpx.h"

#include "core/base/number_text.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

using support::ScratchFolder;
using units::Depth;
using units::Length;

class GpxMembers : public testing::Test {
protected:
    std::string placeText(double x_m, double y_m) const {
        const geo::LonLat at = frame.toEarth(geo::WaterPoint{x_m, y_m});
        return "lat=\"" + base::fixedText(at.lat_deg, 7) + "\" lon=\"" +
               base::fixedText(at.lon_deg, 7) + "\"";
    }
    std::string read() const { return ScratchFolder::textOf(path); }

    static std::string head(const std::string& name) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" "
               "creator=\"Meremark\" xmlns=\"http://www.topografix.com/GPX/1/1\" "
               "xmlns:mm=\"urn:meremark:gpx:1\">\n<metadata><name>" +
               name +
               "</name><desc>Drawn from an angler's own soundings: not for navigation. Local rules "
               "go first.</desc></metadata>\n";
    }
    geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    ScratchFolder folder;
    std::filesystem::path path = folder.path() / "out.gpx";
};

marks::Mark markOf(int rank, std::string section, geo::LonLat at) {
    marks::Mark mark;
    mark.rank = rank;
    mark.lonLat = at;
    mark.sectionName = std::move(section);
    mark.depth = Depth::metres(5.126);
    mark.trust = Depth::metres(0.374);
    mark.factors = {{marks::FactorKind::depth, 0.8, 1.0, {}},
                    {marks::FactorKind::dropOff, 0.4, 0.5, {}}};
    mark.anchors.bow = {{40.0, 25.0}, Depth::metres(6.254), Length::metres(21.567), 3.0};
    mark.anchors.stern = {{-35.0, -20.0}, Depth::metres(4.756), Length::metres(13.333), 2.5};
    return mark;
}

marks::ToldMarks told(const std::vector<marks::Mark>& marks) {
    return {marks, [](const std::vector<marks::Factor>& factors) {
                return factors.size() == 2 ? "4 \"to\" 6 m; 58 m & <more>" : "";
            }};
}

TEST_F(GpxMembers, MarksHaveTheirPlacesDepthsAndAnchors) {
    const std::vector marks{markOf(1, "Heron > Bay", {3.0987654, 55.2012345}),
                            markOf(2, "", {-3.5, -55.25})};
    ASSERT_TRUE(outputs::writeMarksGpx(path, told(marks), frame, "A\x01\"mere\"").has_value());
    const std::string inside =
        "<desc>4 &quot;to&quot; 6 m; 58 m &amp; &lt;more&gt;</desc><type>mark</type><extensions>"
        "<mm:depth_m>5.13</mm:depth_m><mm:trust_m>0.37</mm:trust_m><mm:bow_anchor " +
        placeText(40.0, 25.0) +
        "><mm:depth_m>6.25</mm:depth_m><mm:rope_m>21.57</mm:rope_m></mm:bow_anchor>"
        "<mm:stern_anchor " +
        placeText(-35.0, -20.0) +
        "><mm:depth_m>4.76</mm:depth_m><mm:rope_m>13.33</mm:rope_m></mm:stern_anchor>"
        "</extensions></wpt>\n";
    EXPECT_EQ(read(), head("A &quot;mere&quot;") +
                          "<wpt lat=\"55.2012345\" lon=\"3.0987654\"><name>1 Heron &gt; "
                          "Bay</name>" +
                          inside + "<wpt lat=\"-55.2500000\" lon=\"-3.5000000\"><name>2</name>" +
                          inside + "</gpx>\n");
}

TEST_F(GpxMembers, ATripIsWhereItsRouteIs) {
    surface::SurveyTrip trip;
    trip.lines.resize(2);
    trip.lines[0].start = {20.0, 5.0};
    trip.lines[0].end = {100.0, 7.0};
    trip.lines[1].start = {100.0, 7.0}; // Begins where the first ends: both are named.
    trip.lines[1].end = {20.0, 50.0};
    trip.route = {{-1.0, -2.0}, {20.0, 5.0},  {100.0, 7.0}, {100.0, 7.0},
                  {20.0, 50.0}, {10.0, 30.0}, {-1.0, -2.0}};
    ASSERT_TRUE(outputs::writeTripGpx(path, trip, frame, "Mere & more").has_value());
    const auto point = [&](double x_m, double y_m, const std::string& name) {
        return "<rtept " + placeText(x_m, y_m) + "><name>" + name + "</name></rtept>\n";
    };
    EXPECT_EQ(read(), head("Mere &amp; more") + "<rte><name>Where to sound next</name>\n" +
                          point(-1, -2, "launch") + point(20, 5, "1 start") +
                          point(100, 7, "1 end") + point(100, 7, "2 start") +
                          point(20, 50, "2 end") + point(10, 30, "turn") + point(-1, -2, "launch") +
                          "</rte>\n</gpx>\n");
}

TEST_F(GpxMembers, SaysWhereItCannotWrite) {
    const auto nowhere = folder.path() / "no" / "such.gpx";
    for (const auto& written : {outputs::writeMarksGpx(nowhere, {}, frame, ""),
                                outputs::writeTripGpx(nowhere, {}, frame, "")}) {
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
        EXPECT_NE(written.error().sentence().find(nowhere.string()), std::string::npos);
    }
}

} // namespace
