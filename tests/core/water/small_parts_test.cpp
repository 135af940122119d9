// SPDX-License-Identifier: GPL-3.0-or-later
// Notes, shores, files and rings at the edge of what they take.
#include "core/water/questions/soundings_within.h"
#include "core/water/steps/check_section_change.h"
#include "core/water/steps/derive.h"
#include "core/water/steps/look_at_file.h"
#include "core/water/steps/reshape_shore.h"

#include "tests/support/full_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <string>
#include <string_view>

namespace {

using namespace water;

geo::Ring square(double west_m, double south_m, double side_m) {
    return {{west_m, south_m},
            {west_m + side_m, south_m},
            {west_m + side_m, south_m + side_m},
            {west_m, south_m + side_m}};
}

TEST(SoundingsWithin, ListsEachDaysPositionsAscendingForARingAnywhere) {
    reduction::ReducedSurvey survey;
    survey.days.resize(3);
    survey.days[0].points = {{-50.0, -50.0}, {-70.0, -50.0}, {-50.0, -70.1}};
    survey.days[2].points = {{-60.0, -60.0}, {-41.0, -60.0}, {-39.0, -60.0}, {-60.0, -41.0}};
    EXPECT_EQ(soundingsWithin(survey, square(-60.5, -60.5, 20.0)),
              (SoundingChoice{{0}, {}, {0, 1, 3}}));
}

const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();

/// Two ponds of 400 m and 100 m, each with an island.
Shoreline twoPonds() {
    return {{frame.toEarth(square(0.0, 0.0, 400.0)), {frame.toEarth(square(50.0, 50.0, 40.0))}},
            {frame.toEarth(square(500.0, 0.0, 100.0)),
             {frame.toEarth(square(510.0, 10.0, 20.0)), frame.toEarth(square(560.0, 60.0, 20.0))}}};
}

TEST(ReshapeShore, EveryRingOfEveryPieceCanBeReshaped) {
    for (std::size_t piece = 0; piece < 2; ++piece) {
        for (std::size_t ring = 0; ring <= twoPonds()[piece].islands.size(); ++ring) {
            Shoreline wanted = twoPonds();
            geo::LonLatRing& of = ring == 0 ? wanted[piece].outer : wanted[piece].islands[ring - 1];
            const geo::WaterPoint corner = frame.toWater(of[3]);
            const geo::WaterPoint to{corner.x_m + 1.5, corner.y_m - 1.0};
            of[3] = frame.toEarth(to);
            EXPECT_EQ(withCornerMoved(twoPonds(), frame, {piece, ring, 3}, to).value(), wanted);
            of[3] = frame.toEarth(corner);
            of.insert(of.begin() + 3, frame.toEarth(to));
            wanted = twoPonds();
            geo::LonLatRing& more =
                ring == 0 ? wanted[piece].outer : wanted[piece].islands[ring - 1];
            const geo::WaterPoint between{frame.toWater(more[2]).x_m - 5.0,
                                          frame.toWater(more[2]).y_m + 0.5};
            more.insert(more.begin() + 3, frame.toEarth(between));
            EXPECT_EQ(withCornerAdded(twoPonds(), frame, {piece, ring, 2}, between).value(),
                      wanted);
            EXPECT_EQ(withoutCorner(wanted, frame, {piece, ring, 3}).value(), twoPonds());
        }
    }
}

TEST(ReshapeShore, RefusesEachCornerThatIsNotThereInItsWords) {
    for (const ShoreCorner corner :
         {ShoreCorner{2, 0, 0}, {0, 2, 0}, {1, 3, 0}, {0, 0, 4}, {0, 1, 4}}) {
        for (const auto& result : {withCornerMoved(twoPonds(), frame, corner, {1.0, 1.0}),
                                   withCornerAdded(twoPonds(), frame, corner, {1.0, 1.0}),
                                   withoutCorner(twoPonds(), frame, corner)}) {
            ASSERT_FALSE(result);
            EXPECT_EQ(result.error().kind, base::ErrorKind::wrongUse);
            EXPECT_EQ(result.error().what, "the shore has no such corner");
        }
    }
    Shoreline shoreline = twoPonds();
    shoreline[0].outer.pop_back();
    shoreline[0].islands[0].pop_back();
    const auto shore = withoutCorner(shoreline, frame, {0, 0, 1});
    ASSERT_FALSE(shore);
    EXPECT_EQ(shore.error().what, "a shore needs three corners");
    EXPECT_EQ(shore.error().whatToDo, "move the corner instead");
    EXPECT_EQ(withoutCorner(shoreline, frame, {0, 1, 1}).error().whatToDo,
              "take the whole island away instead");
}

TEST(ReshapeShore, NothingIsAddedTakenOrMovedSoThatTheShoreCrossesItself) {
    EXPECT_FALSE(withCornerAdded(twoPonds(), frame, {0, 0, 0}, {200.0, 500.0}));
    EXPECT_FALSE(withCornerMoved(twoPonds(), frame, {1, 0, 0}, {390.0, 20.0})) << "the other pond";
    EXPECT_FALSE(tracedAnew({}, frame, {{0, 0}, {100, 100}, {100, 0}, {0, 100}}));
    Shoreline notched = twoPonds();
    notched[0].outer =
        frame.toEarth(geo::Ring{{0, 0}, {60, 0}, {70, 100}, {45, 100}, {40, 20}, {0, 400}});
    notched[0].islands = {frame.toEarth(square(46.0, 60.0, 10.0))};
    EXPECT_FALSE(withoutCorner(notched, frame, {0, 0, 3}))
        << "the shore would run through the island";
}

TEST(ReshapeShore, AnIslandGoesIntoThePondThatHoldsItAndIsTakenFromThere) {
    const geo::Ring holm = square(530.0, 40.0, 10.0);
    const auto more = withIsland(twoPonds(), frame, holm);
    ASSERT_TRUE(more) << more.error().sentence();
    Shoreline wanted = twoPonds();
    wanted[1].islands.push_back(frame.toEarth(holm));
    EXPECT_EQ(*more, wanted);
    EXPECT_EQ(withoutIslandAt(*more, frame, {535.0, 45.0}).value(), twoPonds());
    Shoreline one = twoPonds();
    one[1].islands.erase(one[1].islands.begin());
    EXPECT_EQ(withoutIslandAt(twoPonds(), frame, {520.0, 20.0}).value(), one);
    const auto nowhere = withoutIslandAt(twoPonds(), frame, {585.0, 20.0});
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().what, "there is no island at that place");
    const auto onLand = withIsland(twoPonds(), frame, square(420.0, 10.0, 20.0));
    ASSERT_FALSE(onLand);
    EXPECT_EQ(onLand.error().what, "an island lies in the water, all of it");
    EXPECT_FALSE(withIsland(twoPonds(), frame, square(40.0, 40.0, 60.0)))
        << "round an island that is there";
}

TEST(ReshapeShore, TracedAnewItKeepsTheIslandsOfAllPondsThatAreWhollyInside) {
    const geo::Ring round{{-10, -10}, {650, -10}, {650, 55}, {480, 55}, {480, 450}, {-10, 450}};
    const auto traced = tracedAnew(twoPonds(), frame, round);
    ASSERT_TRUE(traced) << traced.error().sentence();
    const Shoreline wanted{
        {frame.toEarth(round), {twoPonds()[0].islands[0], twoPonds()[1].islands[0]}}};
    EXPECT_EQ(*traced, wanted);
}

struct LookRow {
    std::string_view text;
    FileContent content;
};

TEST(LookAtFileRules, KnowsEachKindByWhatTellsItFromTheOthers) {
    const support::ScratchFolder folder;
    const auto shape = [](char type) {
        std::string head("\x00\x00\x27\x0a", 4);
        head.resize(100, '\0');
        head[32] = type;
        return head;
    };
    const std::string lines = shape(3), areas = shape(5), points = shape(1), areasZ = shape(15);
    const LookRow rows[] = {
        {"{\"rods_per_boat\": 4}", FileContent::houseRules},
        {"{\"season\": {}}", FileContent::houseRules},
        {"{\"closed_waters\": []}", FileContent::houseRules},
        {"{\"type\": \"Feature\", \"geometry\": {\"type\": \"MultiPolygon\"}}",
         FileContent::shoreline},
        {"{\"type\":\"LineString\",\"coordinates\":[]}", FileContent::shoreline},
        {"{\"type\":\"MultiPoint\",\"coordinates\":[]}", FileContent::soundings},
        {"{\"name\": \"Mere\"}", FileContent::waterFacts},
        {"<kml><Polygon/></kml>", FileContent::shoreline},
        {"<kml><LineString/></kml>", FileContent::shoreline},
        {"<kml><Point/></kml>", FileContent::soundings},
        {"<GPX><ele>-4.2</ele></GPX>", FileContent::soundings},
        {"<gpx><ele>4.2</ele></gpx>", FileContent::line},
        {"<gpx><x:depth>4</x:depth></gpx>", FileContent::soundings},
        {"stay,kind\n", FileContent::log},
        {"kind\n", FileContent::soundings},
        {"file,day\n", FileContent::surveyDayFacts},
        {"file,draft_m\n", FileContent::surveyDayFacts},
        {"file,water_level_m\n", FileContent::surveyDayFacts},
        {"file,size\n", FileContent::soundings},
        {"day,draft_m\n", FileContent::soundings},
        {"lat\tlon\tkind\n", FileContent::weedNotes},
        {"lat,kind\n", FileContent::soundings},
        {"lon;lat;depth_m;bottom\r\n", FileContent::leadLine},
        {"lon;lat;depth_m\n", FileContent::soundings},
        {"\" lon \",\"lat\",\"depth_m\", bottom\n", FileContent::leadLine},
        {"  \n LON,LAT,KIND\n", FileContent::weedNotes},
        {"SQLite format 3", FileContent::soundings},
        {lines, FileContent::shoreline},
        {areas, FileContent::shoreline},
        {areasZ, FileContent::shoreline},
        {points, FileContent::soundings},
        {std::string_view(lines).substr(0, 35), FileContent::soundings}};
    for (const LookRow& row : rows) {
        const auto content = lookAtFile(folder.file("any", row.text));
        ASSERT_TRUE(content) << row.text;
        EXPECT_EQ(static_cast<int>(*content), static_cast<int>(row.content)) << row.text;
    }
}

TEST(LookAtFileRules, LooksAtTheFirst64KilobytesAndNoFolder) {
    const support::ScratchFolder folder;
    const std::string head = "{\"name\": \"";
    const std::string key = "\"rods_per_boat\"";
    const std::string near(65536 - head.size() - key.size(), 'x');
    EXPECT_EQ(lookAtFile(folder.file("a", head + near + key)).value(), FileContent::houseRules);
    EXPECT_EQ(lookAtFile(folder.file("b", head + near + "x" + key)).value(),
              FileContent::waterFacts);
    EXPECT_EQ(lookAtFile(folder.path()).error().what, "there is no such file");
}

TEST(CheckSectionChange, AsksForTheSectionsOfTodayAndSaysWhyNot) {
    Water w = support::fullWater();
    w.sectionChanges.clear();
    base::Progress silent;
    const Derived d = derive(w, {}, Step::sections, silent).value();
    using Kind = sections::SectionChange::Kind;
    const sections::SectionChange good{Kind::split, {}, {{3.0950, 55.2003}, {3.1050, 55.2003}}};
    const sections::SectionChange bad{Kind::split, {}, {{3.2, 55.2}, {3.21, 55.2}}};
    EXPECT_TRUE(checkSectionChange(w, d, good));
    const auto refused = checkSectionChange(w, d, bad);
    ASSERT_FALSE(refused);
    EXPECT_FALSE(refused.error().what.empty());
    EXPECT_NE(refused.error().kind, base::ErrorKind::cancelled);
    Water newer = w;
    newer.sectionNames.push_back({{3.1, 55.2}, "Neck"});
    for (const auto& early :
         {checkSectionChange(newer, d, good), checkSectionChange(w, {}, good)}) {
        ASSERT_FALSE(early);
        EXPECT_EQ(early.error().kind, base::ErrorKind::wrongUse);
        EXPECT_EQ(early.error().what, "the sections are just being worked out");
    }
    // What is too small a piece goes by the size that was chosen for a section.
    const sections::SectionChange sliver{Kind::split, {}, {{3.0950, 55.1983}, {3.1050, 55.1983}}};
    Water vast = w;
    vast.settings.sectionArea = units::Area::hectares(900.0);
    const Derived whole = derive(vast, {}, Step::sections, silent).value();
    EXPECT_FALSE(checkSectionChange(vast, whole, sliver)) << "less than 4.5 ha";
}

} // namespace
