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

TEST_F(GpxMembers, ADayIsNamedToSortInItsOrderAndIsFollowedByItsWay) {
    auto named = markOf(3, "Heron Bay", {3.1, 55.2});
    named.name = "Old & tried";
    auto mill = markOf(1, "Section 7", {3.2, 55.3});
    mill.near = marks::NearPlace{"Mill", Length::metres(120.0), units::Bearing::degrees(45.0)};
    const std::vector marks{mill, markOf(2, "", {3.3, 55.4}), named};
    marks::DayPlan day;
    day.stops = {{3, {}, {}, {}, {{0, 0}, {10, 5}, {20, 5}}}, {1, {}, {}, {}, {{20, 5}, {60, 8}}}};
    day.wayHome = {{60, 8}, {30, 30}, {0, 0}};
    day.leftOut = {2};
    ASSERT_TRUE(outputs::writeDayGpx(path, told(marks), day, frame, "Mere").has_value());
    const std::string text = read();
    std::vector<std::string> names;
    for (std::size_t at = text.find("<wpt "); at != std::string::npos;
         at = text.find("<wpt ", at + 1)) {
        const auto from = text.find("<name>", at) + 6;
        names.push_back(text.substr(from, text.find("</name>", from) - from));
    }
    EXPECT_EQ(names, (std::vector<std::string>{"01 mark 3 Old &amp; tried", "02 mark 1 Mill",
                                               "03 mark 2"}));
    const auto point = [&](double x_m, double y_m, const std::string& name) {
        return "<rtept " + placeText(x_m, y_m) + "><name>" + name + "</name></rtept>\n";
    };
    EXPECT_EQ(text.substr(text.find("<rte>")),
              "<rte><name>The way of the day</name>\n" + point(0, 0, "launch") +
                  point(10, 5, "turn") + point(20, 5, "01 mark 3 Old &amp; tried") +
                  point(60, 8, "02 mark 1 Mill") + point(30, 30, "turn") + point(0, 0, "launch") +
                  "</rte>\n</gpx>\n");
}

TEST_F(GpxMembers, SayWhatIsToBeMindedAndHowToLieBeforeTheReasons) {
    std::vector marks{markOf(1, "", {3.1, 55.2}), markOf(2, "", {3.2, 55.3})};
    marks[1].anchors.stern.reset();
    marks[1].anchors.swing = anchoring::Swing{Length::metres(22.456), 30.0};
    marks::ToldMarks told = ::told(marks);
    told.lieOf = [](const marks::Mark& mark, const marks::DayStop* stop) {
        return "Caution: <" + std::to_string(mark.rank) + ">" +
               (stop != nullptr ? " of a stop" : "");
    };
    marks::DayPlan day;
    day.stops = {{2, {}, {}, {}, {}}};
    ASSERT_TRUE(outputs::writeDayGpx(path, told, day, frame, "Mere").has_value());
    const std::string text = read();
    const auto waypoint = [&](const std::string& name) {
        const auto from = text.find("<name>" + name);
        return text.substr(from, text.find("</wpt>", from) - from);
    };
    const std::string reasons = "\n4 &quot;to&quot; 6 m; 58 m &amp; &lt;more&gt;</desc>";
    EXPECT_NE(waypoint("01 mark 2").find("<desc>Caution: &lt;2&gt; of a stop" + reasons),
              std::string::npos);
    EXPECT_NE(waypoint("02 mark 1").find("<desc>Caution: &lt;1&gt;" + reasons), std::string::npos)
        << "the day leaves it out";
    EXPECT_NE(waypoint("02 mark 1").find("<mm:stern_anchor "), std::string::npos);
    EXPECT_EQ(waypoint("02 mark 1").find("<mm:swing_m>"), std::string::npos);
    EXPECT_EQ(waypoint("01 mark 2").find("<mm:stern_anchor "), std::string::npos);
    EXPECT_NE(waypoint("01 mark 2").find("<mm:swing_m>22.46</mm:swing_m>"), std::string::npos);
}

TEST_F(GpxMembers, ADayWithoutALaunchBeginsAtItsFirstMark) {
    const std::vector marks{markOf(1, "Mill", frame.toEarth({20, 5})),
                            markOf(2, "Weir", frame.toEarth({60, 8}))};
    marks::DayPlan day;
    day.stops = {{1, {}, {}, {}, {}}, {2, {}, {}, {}, {{20, 5}, {60, 8}}}};
    auto placed = marks;
    placed[0].place = {20, 5};
    placed[1].place = {60, 8};
    ASSERT_TRUE(outputs::writeDayGpx(path, told(placed), day, frame, "Mere").has_value());
    const std::string text = read();
    EXPECT_NE(text.find("<rtept " + placeText(20, 5) +
                        "><name>01 mark 1 Mill</name></rtept>\n"
                        "<rtept " +
                        placeText(60, 8) +
                        "><name>02 mark 2 Weir</name></rtept>\n"
                        "</rte>"),
              std::string::npos)
        << text;
    ASSERT_TRUE(outputs::writeDayGpx(path, told(marks), {}, frame, "Mere").has_value());
    EXPECT_EQ(read().find("<rte>"), std::string::npos) << "no day, no way";
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
