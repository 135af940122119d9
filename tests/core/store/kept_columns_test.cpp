// SPDX-License-Identifier: GPL-3.0-or-later
// What the columns of a water file hold, as another program reads them: each figure in the unit
// that its name says, under its own name, with its own sign.
#include "core/store/water_store.h"

#include "core/store/geometry_blob.h"
#include "core/store/kept_values.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

using support::rowsOf;
using support::ScratchFolder;
using testing::Test;
using Rows = std::vector<std::string>;

base::Progress quiet;

std::string hexOf(geo::LonLat place) {
    std::string hex = "X'";
    for (const std::byte b : store::blobOf(place)) {
        constexpr std::string_view digits = "0123456789ABCDEF";
        hex += digits[std::to_integer<std::size_t>(b) >> 4U];
        hex += digits[std::to_integer<std::size_t>(b) & 15U];
    }
    return hex + "'";
}

units::Moment at(const char* text) {
    return units::momentFrom(text, units::Clock()).value();
}

const geo::LonLat here{3.1234567, 55.7654321};
const geo::LonLat there{-3.0000001, 55.25};
const std::string thereText = "-3.0000001|55.25";

soundings::SurveyDay windyDay() {
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(7);
    day.name = "windy";
    day.source = "a.nmea";
    day.sounder = {units::Depth::metres(0.25), units::Speed::metresPerSecond(1463.5), false};
    day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(-1.125));
    day.waterTemperature = units::Temperature::celsius(11.5);
    day.agreedOffset = units::Length::metres(-0.0625);
    day.agreedDelay_s = 1.75;
    day.soundings = {{here, units::Depth::metres(4.001), at("2026-09-05T08:11:00.250Z")},
                     {there, units::Depth::metres(12.5), std::nullopt},
                     {here, units::Depth::metres(0.5), at("1969-12-31T23:59:59.999Z")}};
    day.passStarts = {0, 2};
    day.setAsideByHand = {1};
    day.keptByHand = {2};
    return day;
}

class KeptColumns : public Test {
protected:
    void save(const water::Water& water) {
        const auto saved = store_->save(water, water::allParts, quiet);
        ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
    }
    [[nodiscard]] Rows rows(std::string_view columns, std::string_view from) const {
        return rowsOf(folder_.path() / "water.gpkg", columns, from);
    }

    const ScratchFolder folder_;
    const std::unique_ptr<store::WaterStore> store_ =
        store::create(folder_.path() / "water.gpkg").value();
};

TEST_F(KeptColumns, OfASurveyDay) {
    water::Water water;
    soundings::SurveyDay second;
    second.id = soundings::SurveyDayId(2);
    second.gauge = soundings::Gauge::table(
        {{at("2026-09-05T08:00:00Z"), units::WaterLevel::metresOnGauge(12.5)},
         {at("2026-09-05T09:00:00Z"), units::WaterLevel::metresOnGauge(-12.75)}});
    water.days = {windyDay(), second};
    save(water);
    EXPECT_EQ(rows("id, position, name, source, draft_m, assumed_sound_speed_m_s, "
                   "measures_by_sound, gauge_level_m, water_temperature_c, agreed_offset_m, "
                   "agreed_delay_s, sounding_count, reduction_stamp",
                   "survey_days ORDER BY position"),
              (Rows{"7|0|'windy'|'a.nmea'|0.25|1463.5|0|-1.125|11.5|-0.0625|1.75|3|NULL",
                    "2|1|''|''|0.0|1500.0|1|NULL|NULL|NULL|NULL|0|NULL"}));
    EXPECT_EQ(rows("day_id, time, level_m", "gauge_readings ORDER BY id"),
              (Rows{"2|'2026-09-05T08:00:00.000Z'|12.5", "2|'2026-09-05T09:00:00.000Z'|-12.75"}));
    EXPECT_EQ(rows("day_id, first_sounding", "passes ORDER BY id"), (Rows{"7|0", "7|2"}));
    EXPECT_EQ(rows("day_id, sounding, is_kept", "verdicts_by_hand ORDER BY id"),
              (Rows{"7|1|0", "7|2|1"}));
    EXPECT_EQ(rows("day_id, geom, time, shown_depth_m, reduced_depth_m, set_aside",
                   "soundings ORDER BY fid"),
              (Rows{"7|" + hexOf(here) + "|'2026-09-05T08:11:00.250Z'|4.001|NULL|NULL",
                    "7|" + hexOf(there) + "|NULL|12.5|NULL|NULL",
                    "7|" + hexOf(here) + "|'1969-12-31T23:59:59.999Z'|0.5|NULL|NULL"}));
}

TEST_F(KeptColumns, OfTheFacts) {
    water::Water water;
    water.name = "Quernholt";
    water.clock = units::Clock::inZone("Europe/London").value();
    water.chartLevel = units::WaterLevel::metresOnGauge(-0.5);
    water.frame = geo::WaterFrame::centredOn({3.25, 55.5}).value();
    water.places = {{"jetty", here}};
    water.settings.cell = units::Length::metres(2.5);
    water.settings.bands =
        contours::Bands::make({units::Depth::metres(2.0), units::Depth::metres(4.5)},
                              units::Depth::metres(9.25))
            .value();
    water.settings.sectionArea = units::Area::squareMetres(40'500.0);
    water.settings.secchi = units::Depth::metres(3.5);
    water.settings.weedLeft = 0.75;
    water.settings.structure = {units::Length::metres(5.5), units::Length::metres(60.5), 17.5,
                                units::Length::metres(0.5), units::Area::squareMetres(250.0)};
    save(water);
    EXPECT_EQ(rows("key, value", "settings ORDER BY key"),
              (Rows{"'band_edges_m'|'2 4.5'", "'cell_m'|'2.5'", "'chart_level_m'|'-0.5'",
                    "'clock_zone'|'Europe/London'", "'drop_off_from_percent'|'17.5'",
                    "'frame_centre_lat_deg'|'55.5'", "'frame_centre_lon_deg'|'3.25'",
                    "'high_ground_m'|'0.5'", "'least_zone_area_m2'|'250'", "'limit_depth_m'|'9.25'",
                    "'name'|'Quernholt'", "'secchi_depth_m'|'3.5'", "'section_area_m2'|'40500'",
                    "'structure_broad_scale_m'|'60.5'", "'structure_fine_scale_m'|'5.5'",
                    "'weed_left'|'0.75'"}));
    EXPECT_EQ(rows("name, geom", "places"), (Rows{"'jetty'|" + hexOf(here)}));
    EXPECT_EQ(rows("srs_name, organization, organization_coordsys_id, definition",
                   "gpkg_spatial_ref_sys WHERE srs_id = 900001"),
              (Rows{"'Frame of this water'|'NONE'|900001|'" + water.frame->wkt() + "'"}));
}

TEST_F(KeptColumns, OfThePlan) {
    water::Water water;
    marks::Plan& plan = water.plan;
    plan.day = {
        units::dayFrom("2027-02-28").value(),
        std::chrono::seconds(30'600),
        std::chrono::seconds(61'200),
        {units::Bearing::degrees(237.5), units::Speed::metresPerSecond(6.25)},
        marks::LaterWind{std::chrono::seconds(46'800),
                         {units::Bearing::degrees(190.5), units::Speed::metresPerSecond(8.75)}},
        units::Length::metres(-0.375),
        units::Temperature::celsius(7.5),
        std::chrono::seconds(4'500)};
    plan.tackle = {units::Speed::metresPerSecond(2.25),
                   units::Length::metres(4.5),
                   units::Length::metres(0.75),
                   units::Length::metres(61.0),
                   units::Length::metres(43.0),
                   3.5,
                   2,
                   units::Length::metres(22.5),
                   units::Length::metres(0.625)};
    plan.launch = there;
    plan.count = 13;
    plan.tryNew = 0.875;
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        plan.weights.set(kind, 1.0 + static_cast<int>(kind));
    }
    water.pinnedMarks = {{"faithful", here}};
    water.plan.tackle.toOneAnchor = true;
    save(water);
    EXPECT_EQ(rows("key, value", "plan ORDER BY key"), (Rows{"'boat_length_m'|'4.5'",
                                                             "'boat_speed_m_s'|'2.25'",
                                                             "'bow_height_m'|'0.75'",
                                                             "'bow_rope_m'|'61'",
                                                             "'cast_m'|'22.5'",
                                                             "'count'|'13'",
                                                             "'day'|'2027-02-28'",
                                                             "'end_s'|'61200'",
                                                             "'launch_lat_deg'|'55.25'",
                                                             "'launch_lon_deg'|'-3.0000001'",
                                                             "'level_change_m'|'-0.375'",
                                                             "'over_depth_m'|'0.625'",
                                                             "'rods'|'2'",
                                                             "'scope'|'3.5'",
                                                             "'start_s'|'30600'",
                                                             "'stay_s'|'4500'",
                                                             "'stern_rope_m'|'43'",
                                                             "'to_one_anchor'|'1'",
                                                             "'try_new'|'0.875'",
                                                             "'water_temperature_c'|'7.5'",
                                                             "'weight_depth'|'1'",
                                                             "'weight_drop_off'|'2'",
                                                             "'weight_feature'|'4'",
                                                             "'weight_less_tried'|'8'",
                                                             "'weight_record'|'7'",
                                                             "'weight_shelter'|'6'",
                                                             "'weight_trust'|'9'",
                                                             "'weight_weed_edge'|'3'",
                                                             "'weight_windward'|'5'",
                                                             "'wind_from_deg'|'237.5'",
                                                             "'wind_later_at_s'|'46800'",
                                                             "'wind_later_from_deg'|'190.5'",
                                                             "'wind_later_speed_m_s'|'8.75'",
                                                             "'wind_speed_m_s'|'6.25'"}));
    EXPECT_EQ(rows("name, geom", "pinned_marks"), (Rows{"'faithful'|" + hexOf(here)}));
}

TEST_F(KeptColumns, OfWhatTheUserLaidOfHisMarks) {
    water::Water water;
    const geo::LonLat third{3.5, 55.5};
    water.pinnedMarks = {{"plain", here},
                         {"laid", there, {here, std::nullopt, {third, there}, {}}},
                         {"bow and stern", third, {there, here, {}, units::Bearing::degrees(240)}}};
    save(water);
    EXPECT_EQ(rows("mark, part, wind_from_deg, geom", "laid_by_hand ORDER BY fid"),
              (Rows{"2|'bow'|NULL|" + hexOf(here), "2|'bait'|NULL|" + hexOf(third),
                    "2|'bait'|NULL|" + hexOf(there), "3|'bow'|240.0|" + hexOf(there),
                    "3|'stern'|240.0|" + hexOf(here)}));
}

TEST_F(KeptColumns, OfWhatTheUserWantsOfThePlan) {
    water::Water water;
    water.banned = {{"snags", {here, there, {3.5, 55.5}}}};
    water.beliefProfiles = {{"autumn", {}}, {"spring", {}}};
    water.beliefProfiles[1].weights.set(marks::FactorKind::depth, 0.25);
    water.dayByHand = {{there, here}, {{here, std::chrono::minutes(50)}}};
    save(water);
    EXPECT_EQ(rows("name", "banned_water"), (Rows{"'snags'"}));
    EXPECT_EQ(rows("number, name, weight", "belief_profiles WHERE factor='depth' ORDER BY id"),
              (Rows{"1|'autumn'|1.0", "2|'spring'|0.25"}));
    EXPECT_EQ(rows("count(*)", "belief_profiles"), (Rows{"18"}));
    EXPECT_EQ(
        rows("geom, turn, stay_s", "day_by_hand ORDER BY fid"),
        (Rows{hexOf(there) + "|1|NULL", hexOf(here) + "|2|NULL", hexOf(here) + "|NULL|3000"}));
}

TEST_F(KeptColumns, OfNotesRulesAndSections) {
    water::Water water;
    using std::chrono::day;
    using std::chrono::month;
    water.leadLine = {
        {soundings::LeadLineId(9), here, units::Depth::metres(6.125), soundings::Bottom::rock},
        {soundings::LeadLineId(4), there, units::Depth::metres(1.5), std::nullopt}};
    water.weedNotes = {
        {weed::WeedNoteId(5), there, weed::Growth::thick, units::Length::metres(0.625)},
        {weed::WeedNoteId(6),
         here,
         weed::Growth::none,
         std::nullopt,
         units::dayFrom("2025-08-20"),
         weed::Extent::line,
         {here, there}},
        {weed::WeedNoteId(7),
         there,
         weed::Growth::thin,
         std::nullopt,
         std::nullopt,
         weed::Extent::area,
         {there, here, {3.0, 55.0}}}};
    water.houseRules.rodLimit = 3;
    water.houseRules.season = logbook::Season{month(10) / day(1), month(3) / day(14)};
    water.houseRules.notes = {"barbless", "life jacket"};
    water.houseRules.closed = {{"reeds", {}}};
    water.sectionNames = {{here, "Heron Bay", 3}};
    const std::vector<geo::LonLatPiece> pieces{{{here, there, {3.0, 55.0}}, {}}};
    water.numbering = {{{2, false, pieces}, {3, true, pieces}}, {pieces}, units::Area::hectares(2)};
    water.sectionChanges = {{sections::SectionChange::Kind::join, {here, there}, {}},
                            {sections::SectionChange::Kind::split, {}, {there, here}},
                            {sections::SectionChange::Kind::border, {here, there}, {there, there}}};
    save(water);
    EXPECT_EQ(rows("number, geom, depth_m, bottom", "lead_line ORDER BY fid"),
              (Rows{"9|" + hexOf(here) + "|6.125|'rock'", "4|" + hexOf(there) + "|1.5|NULL"}));
    EXPECT_EQ(rows("fid, number, geom, growth, height_m, seen", "weed_notes ORDER BY fid"),
              (Rows{"1|5|" + hexOf(there) + "|'thick'|0.625|NULL",
                    "2|6|" + hexOf(here) + "|'none'|NULL|'2025-08-20'",
                    "3|7|" + hexOf(there) + "|'thin'|NULL|NULL"}));
    // Header and box, 40 bytes; then well-known binary: a line of two, a polygon of a closed ring.
    EXPECT_EQ(rows("note, length(geom)", "weed_lines"), (Rows{"2|81"}));
    EXPECT_EQ(rows("note, length(geom)", "weed_areas"), (Rows{"3|117"}));
    EXPECT_EQ(rows("key, value", "house_rules ORDER BY key"),
              (Rows{"'note_0001'|'barbless'", "'note_0002'|'life jacket'", "'rod_limit'|'3'",
                    "'season_first_month_day'|'1001'", "'season_last_month_day'|'314'"}));
    EXPECT_EQ(rows("name", "closed_water"), (Rows{"'reeds'"}));
    EXPECT_EQ(rows("name, geom, number", "section_names"),
              (Rows{"'Heron Bay'|" + hexOf(here) + "|3"}));
    EXPECT_EQ(rows("number, is_on_map", "numbered_water ORDER BY fid"),
              (Rows{"2|0", "3|1", "0|0"}));
    EXPECT_EQ(rows("wanted_area_m2", "division"), (Rows{"20000.0"}));
    EXPECT_EQ(rows("id, kind", "section_changes ORDER BY id"),
              (Rows{"1|'join'", "2|'split'", "3|'border'"}));
    EXPECT_EQ(rows("change_id, is_on_line, geom", "section_change_points ORDER BY fid"),
              (Rows{"1|0|" + hexOf(here), "1|0|" + hexOf(there), "2|1|" + hexOf(there),
                    "2|1|" + hexOf(here), "3|0|" + hexOf(here), "3|0|" + hexOf(there),
                    "3|1|" + hexOf(there), "3|1|" + hexOf(there)}));
}

TEST_F(KeptColumns, OfTheLog) {
    water::Water water;
    logbook::Stay stay;
    stay.id = logbook::StayId(4);
    stay.start = at("2026-10-03T08:10:00Z");
    stay.end = at("2026-10-03T10:40:30.500Z");
    stay.place = here;
    stay.rods = 3;
    stay.bait = "roach";
    stay.note = "calm";
    stay.conditions = {units::Bearing::degrees(230.5), units::Speed::metresPerSecond(4.5),
                       units::Temperature::celsius(9.5), units::WaterLevel::metresOnGauge(31.25),
                       "overcast"};
    stay.who = "Anna";
    stay.baitPlace = there;
    stay.photograph = "a.jpg";
    stay.others = {{"moon", "full"}};
    logbook::Fish fish{logbook::FishId(8),
                       at("2026-10-03T09:00:01Z"),
                       true,
                       "pike",
                       "smelt",
                       units::Weight::kilograms(5.25),
                       units::Length::metres(0.875),
                       units::Depth::metres(4.125),
                       "barbless",
                       "Ben",
                       "scissors",
                       true,
                       there,
                       "pike.jpg",
                       {{"moon", "new"}}};
    logbook::Fish lost;
    lost.id = logbook::FishId(9);
    lost.landed = false;
    logbook::Stay blank;
    blank.id = logbook::StayId(6);
    blank.start = blank.end = stay.end;
    blank.place = there;
    water.log = {blank, stay};
    water.log.edit(1).runs = {fish, lost};
    save(water);
    EXPECT_EQ(
        rows("fid, geom, number, start_time, end_time, rods, bait, wind_from_deg, "
             "wind_speed_m_s, water_temperature_c, note, level_m, sky, who, bait_lon, bait_lat, "
             "photograph, other_fields",
             "stays ORDER BY fid"),
        (Rows{"1|" + hexOf(there) +
                  "|6|'2026-10-03T10:40:30.500Z'|'2026-10-03T10:40:30.500Z'|NULL|''|NULL|NULL|"
                  "NULL|''|NULL|''|''|NULL|NULL|''|''",
              "2|" + hexOf(here) +
                  "|4|'2026-10-03T08:10:00.000Z'|'2026-10-03T10:40:30.500Z'|3|'roach'|230.5|"
                  "4.5|9.5|'calm'|31.25|'overcast'|'Anna'|" +
                  thereText + "|'a.jpg'|'[[\"moon\",\"full\"]]'"}));
    EXPECT_EQ(rows("geom, stay_fid, number, time, landed, species, bait, weight_kg, length_m, "
                   "bait_depth_m, note, who, hooked, returned, bait_lon, bait_lat, photograph, "
                   "other_fields",
                   "fish ORDER BY fid"),
              (Rows{hexOf(here) +
                        "|2|8|'2026-10-03T09:00:01.000Z'|1|'pike'|'smelt'|5.25|0.875|"
                        "4.125|'barbless'|'Ben'|'scissors'|1|" +
                        thereText + "|'pike.jpg'|'[[\"moon\",\"new\"]]'",
                    hexOf(here) + "|2|9|NULL|0|''|''|NULL|NULL|NULL|''|''|''|NULL|NULL|NULL|''|"
                                  "''"}));
}

TEST(KeptTime, IsWrittenToTheMillisecondBeforeAndAfterTheEpoch) {
    for (const char* text :
         {"2026-09-05T08:11:00.000Z", "1970-01-01T00:00:00.000Z", "1969-12-31T23:59:59.999Z",
          "2028-02-29T23:59:59.001Z", "0999-03-04T05:06:07.089Z"}) {
        EXPECT_EQ(store::keptTime(at(text)), text);
    }
}

} // namespace
