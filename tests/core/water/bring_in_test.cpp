// SPDX-License-Identifier: GPL-3.0-or-later
// Files brought into a water: every figure of the file lands in the member that it names.
#include "core/water/steps/bring_in.h"
#include "core/water/steps/bring_in_log.h"

#include "tests/support/full_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

using namespace water;
using namespace std::chrono_literals;

base::Progress silent;

Water plainWater() {
    Water w;
    w.clock = units::Clock::inZone("Europe/London").value();
    w.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    w.log.push_back({});
    w.log.edit(w.log.size() - 1).id = logbook::StayId(40);
    return w;
}

units::Moment utc(unsigned month, unsigned day, std::chrono::milliseconds since) {
    return std::chrono::sys_days(std::chrono::year(2026) / std::chrono::month(month) /
                                 std::chrono::day(day)) +
           since;
}

constexpr const char* timedTable = "lon,lat,depth,time\n"
                                   "3.1000,55.2000,4.5,2026-09-05T23:30:00Z\n"
                                   "3.1001,55.2000,4.6,2026-09-05T23:30:05Z\n"
                                   "x,55.2000,4.6,2026-09-05T23:30:06Z\n";

TEST(BringInDay, NamesTheDayByItsDateAtTheWaterAndKeepsWhatTheFileTells) {
    const support::ScratchFolder folder;
    const auto brought =
        bringInDay(plainWater(), folder.file("evening.csv", timedTable), {}, silent);
    ASSERT_TRUE(brought) << brought.error().sentence();
    EXPECT_EQ(brought->day.name, "2026-09-06") << "half past midnight by the water's clock";
    EXPECT_EQ(brought->day.source, "evening.csv");
    ASSERT_EQ(brought->day.soundings.size(), 2U);
    EXPECT_EQ(brought->day.soundings[1].place, (geo::LonLat{3.1001, 55.2}));
    EXPECT_EQ(brought->day.soundings[1].shown, units::Depth::metres(4.6));
    EXPECT_EQ(brought->day.soundings[1].time, utc(9, 5, 23h + 30min + 5s));
    EXPECT_EQ(brought->day.passStarts, std::vector<std::size_t>{0});
    EXPECT_EQ(brought->kind, readers::SoundingFileKind::table);
    EXPECT_EQ(brought->report.used, 2U);
    EXPECT_EQ(brought->report.refusedCount(), 1U);
    EXPECT_FALSE(brought->day.id.isGiven());
    EXPECT_EQ(brought->day.sounder, soundings::Sounder());
}

TEST(BringInDay, KeepsTheWaterTemperatureThatTheLogTells) {
    const support::ScratchFolder folder;
    const auto brought = bringInDay(
        {},
        folder.file("day.nmea",
                    "$GPRMC,235959.50,A,5330.1234,N,00805.4321,W,1.2,270.0,311224,,,D*44\r\n"
                    "$SDDPT,4.20,0.35,100.0*54\r\n$SDMTW,12.4,C*03\r\n"
                    "$GPRMC,000000.50,A,5330.1230,N,00805.4330,W,1.2,270.0,010125,,,D*41\r\n"),
        {}, silent);
    ASSERT_TRUE(brought) << brought.error().sentence();
    ASSERT_TRUE(brought->day.waterTemperature.has_value());
    EXPECT_NEAR(brought->day.waterTemperature->inCelsius(), 12.4, 1e-9);
}

TEST(BringInDay, TakesTheStemForADayWithoutTimesAndTheWatersClockForTimesWithoutAZone) {
    const support::ScratchFolder folder;
    const auto untimed = bringInDay(
        plainWater(), folder.file("north.csv", "lon,lat,depth\n3.1,55.2,4\n"), {}, silent);
    ASSERT_TRUE(untimed) << untimed.error().sentence();
    EXPECT_EQ(untimed->day.name, "north");
    readers::SoundingFileSettings settings;
    settings.clock = units::Clock(); // the water's own counts
    const auto local =
        bringInDay(plainWater(),
                   folder.file("local.csv", "lon,lat,depth,time\n3.1,55.2,4,2026-09-05 08:00:00\n"),
                   settings, silent);
    ASSERT_TRUE(local) << local.error().sentence();
    EXPECT_EQ(local->day.soundings.at(0).time, utc(9, 5, 7h));
}

TEST(BringInDay, TellsLongitudeFromLatitudeByTheWaterAndKeepsTheUnitSaid) {
    const support::ScratchFolder folder;
    readers::SoundingFileSettings feet;
    feet.unit = readers::DepthUnit::feet;
    const auto path = folder.file("plain.csv", "55.2,3.1,30\n55.2001,3.1,31\n");
    Water shored = plainWater();
    shored.shoreline = support::bowlShore();
    for (const Water& w : {shored, [] {
                               Water sounded = plainWater();
                               sounded.days = {support::bowlDay()};
                               return sounded;
                           }()}) {
        const auto brought = bringInDay(w, path, feet, silent);
        ASSERT_TRUE(brought) << brought.error().sentence();
        EXPECT_EQ(brought->day.soundings.at(0).place, (geo::LonLat{3.1, 55.2}));
        EXPECT_NEAR(brought->day.soundings.at(0).shown.inMetres(), 9.144, 1e-9);
    }
}

TEST(BringInDay, RefusesWhatCannotBelongToTheWater) {
    const support::ScratchFolder folder;
    Water w = plainWater();
    w.shoreline = support::bowlShore();
    const auto far =
        bringInDay(w, folder.file("far.csv", "lon,lat,depth\n3.6,55.2,4\n"), {}, silent);
    ASSERT_FALSE(far);
    EXPECT_EQ(far.error().what, "the file lies 32 km from the rest of the water");
    EXPECT_TRUE(far.error().where.ends_with("far.csv"));
}

TEST(BringInShoreline, IsReadAndRefusedWhereItCannotBeTheShore) {
    const support::ScratchFolder folder;
    const auto polygon = [&folder](const char* name, const std::string& ring) {
        return folder.file(name, R"({"type":"Polygon","coordinates":[[)" + ring + "]]}");
    };
    const auto good = bringInShoreline(
        {}, polygon("a.geojson", "[3.1,55.2],[3.11,55.2],[3.11,55.21],[3.1,55.2]"), {}, silent);
    ASSERT_TRUE(good) << good.error().sentence();
    EXPECT_EQ(good->at(0).outer.size(), 3U);
    EXPECT_EQ(good->at(0).outer[1], (geo::LonLat{3.11, 55.2}));
    EXPECT_FALSE(bringInShoreline(
        {}, polygon("b.geojson", "[3.1,55.2],[3.11,55.21],[3.11,55.2],[3.1,55.21],[3.1,55.2]"), {},
        silent));
    EXPECT_FALSE(bringInShoreline(
        support::fullWater(),
        polygon("c.geojson", "[4.1,55.2],[4.11,55.2],[4.11,55.21],[4.1,55.2]"), {}, silent));
}

TEST(ApplyFacts, FillsWhatIsKnownAndLeavesTheRest) {
    const soundings::SurveyDay before = support::timedBowlDay();
    soundings::SurveyDay day = before;
    applyFacts({}, day);
    EXPECT_EQ(day, before);
    readers::SurveyDayFacts facts;
    facts.day = "2026-09-19";
    facts.level = units::WaterLevel::metresOnGauge(-0.35);
    facts.waterTemperature = units::Temperature::celsius(15.9);
    facts.draft = units::Depth::metres(0.25);
    facts.assumedSoundSpeed = units::Speed::metresPerSecond(1480.0);
    applyFacts(facts, day);
    soundings::SurveyDay wanted = before;
    wanted.name = "2026-09-19";
    wanted.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(-0.35));
    wanted.waterTemperature = units::Temperature::celsius(15.9);
    wanted.sounder.draft = units::Depth::metres(0.25);
    wanted.sounder.assumedSoundSpeed = units::Speed::metresPerSecond(1480.0);
    EXPECT_EQ(day, wanted);
}

TEST(BringInFacts, FillsWhatTheFileTellsAndLeavesTheRest) {
    const support::ScratchFolder folder;
    Water w = support::fullWater();
    ASSERT_TRUE(bringInFacts(w, folder.file("w.json", R"({"name": "Mere",
"time_zone": "Europe/Dublin", "chart_level_m": 12.5, "secchi_depth_m": 2.25,
"launch": {"lon": 3.11, "lat": 55.21}, "places": [{"name": "Bar", "lon": 3.12, "lat": 55.22}]})")));
    Water wanted = support::fullWater();
    wanted.name = "Mere";
    wanted.clock = units::Clock::inZone("Europe/Dublin").value();
    wanted.chartLevel = units::WaterLevel::metresOnGauge(12.5);
    wanted.settings.secchi = units::Depth::metres(2.25);
    wanted.plan.launch = geo::LonLat{3.11, 55.21};
    wanted.places = {{"Bar", {3.12, 55.22}}};
    EXPECT_EQ(w, wanted);
    ASSERT_TRUE(bringInFacts(w, folder.file("n.json", R"({"name": "Tarn"})")));
    wanted.name = "Tarn";
    wanted.clock = units::Clock();
    EXPECT_EQ(w, wanted);
    EXPECT_FALSE(bringInFacts(w, folder.file("b.json", "[]")));
    EXPECT_EQ(w, wanted);
}

TEST(BringInNotes, GiveFreshIdsOneAfterTheOther) {
    const support::ScratchFolder folder;
    const auto notes = bringInWeedNotes(
        plainWater(),
        folder.file("n.csv", "lon,lat,kind,height_m\n3.1,55.2,thick,1.7\n3.2,55.3,none,\n"),
        silent);
    ASSERT_TRUE(notes) << notes.error().sentence();
    EXPECT_EQ(
        notes->notes,
        (std::vector<weed::WeedNote>{
            {weed::WeedNoteId(41), {3.1, 55.2}, weed::Growth::thick, units::Length::metres(1.7)},
            {weed::WeedNoteId(42), {3.2, 55.3}, weed::Growth::none, {}}}));
    const auto leads = bringInLeadLine(
        plainWater(),
        folder.file("l.csv", "lon,lat,depth_m,bottom\n3.1,55.2,4.5,gravel\n3.2,55.3,7,\n"), silent);
    ASSERT_TRUE(leads) << leads.error().sentence();
    EXPECT_EQ(leads->soundings,
              (std::vector<soundings::LeadLineSounding>{
                  {soundings::LeadLineId(41),
                   {3.1, 55.2},
                   units::Depth::metres(4.5),
                   soundings::Bottom::gravel},
                  {soundings::LeadLineId(42), {3.2, 55.3}, units::Depth::metres(7.0), {}}}));
    EXPECT_EQ(notes->report.refusedCount() + leads->report.refusedCount(), 0U);
}

TEST(BringInNotes, TellWhichRowsCouldNotBeUsed) {
    const support::ScratchFolder folder;
    const auto notes = bringInWeedNotes(
        plainWater(),
        folder.file(
            "n.csv",
            "lon,lat,kind,height_m\n3.1,55.2,thick,tall\n3.2,551.3,none,\n3.2,55.3,none,\n"),
        silent);
    ASSERT_TRUE(notes) << notes.error().sentence();
    EXPECT_EQ(notes->notes.size(), 1U);
    EXPECT_EQ(notes->report.refused.at("not_a_number").firstLine, 2U);
    EXPECT_EQ(notes->report.refused.at("no_position").firstLine, 3U);
    const auto leads = bringInLeadLine(
        plainWater(),
        folder.file("l.csv", "lon,lat,depth_m,bottom\n3.1,55.2,4.5,gravel\n3.2,55.3,deep,\n"),
        silent);
    ASSERT_TRUE(leads) << leads.error().sentence();
    EXPECT_EQ(leads->soundings.size(), 1U);
    EXPECT_EQ(leads->report.refusedCount(), 1U);
}

constexpr const char* logTable =
    "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,bait_depth_m,wind_from_"
    "deg,wind_speed_m_s,water_temperature_c,note\n"
    "stay,1,2026-09-05 08:00,2026-09-05 10:00,,3.1,55.2,3,worm,,,,,20,3.5,15.9,\n"
    "fish,1,,,2026-09-05 09:00,3.1,55.2,,corn,pike,2.5,700,5.5,,,,\n"
    "stay,2,2026-09-05 11:00,2026-09-05 12:00,,3.1,55.2,2,roach,,,,,,,,\n";

TEST(BringInLog, KeepsNumbersThatAreFreeAndLeavesOutTheStaysThatAreThereAlready) {
    const support::ScratchFolder folder;
    Water w = plainWater();
    const auto path = folder.file("log.csv", logTable);
    const auto first = bringInLog(w, path, silent);
    ASSERT_TRUE(first) << first.error().sentence();
    ASSERT_EQ(first->stays.size(), 2U);
    EXPECT_EQ(first->known, 0U);
    EXPECT_EQ(first->report.used, 3U);
    EXPECT_EQ(first->stays[0].id, logbook::StayId(1));
    EXPECT_EQ(first->stays[0].runs.at(0).id, logbook::FishId(41));
    EXPECT_EQ(first->stays[0].runs[0].baitPlace, std::nullopt) << "the boat's own place once more";
    EXPECT_EQ(first->stays[1].id, logbook::StayId(2));
    EXPECT_EQ(first->stays[0].start, utc(9, 5, 7h)) << "by the water's clock";
    for (const logbook::Stay& stay : first->stays) {
        w.log.push_back(stay);
    }
    const auto again = bringInLog(w, path, silent);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->stays.empty());
    EXPECT_EQ(again->known, 2U);
    w.log.edit(1).runs[0].weight =
        units::Weight::kilograms(3.0); // the user changed it: another stay
    const auto changed = bringInLog(w, path, silent);
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->known, 1U);
    ASSERT_EQ(changed->stays.size(), 1U);
    EXPECT_EQ(changed->stays[0].id, logbook::StayId(42)) << "above the fish of the log";
}

/// A boat that lies still at 3.1 E 55.2 N for `minutes`, then sails away to the east.
std::string trackText(int minutes) {
    std::string text = R"(<gpx version="1.1"><trk><trkseg>)";
    for (int i = 0; i < 6 * minutes + 60; ++i) {
        const int sailed = std::max(0, i - 6 * minutes);
        text += "<trkpt lat=\"55.2\" lon=\"" + std::to_string(3.1 + 0.0003 * sailed) + "\"><time>" +
                units::isoText(utc(9, 5, 8h) + std::chrono::seconds(10 * i)) + "</time></trkpt>";
    }
    return text + "</trkseg></trk></gpx>";
}

TEST(BringInTrack, ItsStaysAreBlankWithTheRodsAndPlaceOfTheHalt) {
    const support::ScratchFolder folder;
    const auto path = folder.file("day.gpx", trackText(40));
    const auto track = bringInTrack(plainWater(), path, silent);
    ASSERT_TRUE(track) << track.error().sentence();
    EXPECT_EQ(track->size(), 300U);
    EXPECT_EQ(track->front().time, utc(9, 5, 8h));
    EXPECT_NEAR(track->front().place.x_m, 0.0, 1e-6);
    EXPECT_GT(track->back().place.x_m, 1000.0);
    const auto found = bringInTrackStays(plainWater(), path, 3, silent);
    ASSERT_TRUE(found) << found.error().sentence();
    EXPECT_EQ(found->known, 0U);
    ASSERT_EQ(found->stays.size(), 1U);
    const logbook::Stay& stay = found->stays.front();
    EXPECT_EQ(stay.id, logbook::StayId(41));
    EXPECT_EQ(stay.rods, 3);
    EXPECT_TRUE(stay.runs.empty());
    EXPECT_NEAR(stay.place.lon_deg, 3.1, 1e-4);
    EXPECT_NEAR(stay.place.lat_deg, 55.2, 1e-6);
    EXPECT_EQ(stay.start, utc(9, 5, 8h));
    EXPECT_LT(std::chrono::abs(stay.end - utc(9, 5, 8h + 40min)), 60s);
    Water bare;
    EXPECT_EQ(bringInTrack(bare, path, silent).error().kind, base::ErrorKind::wrongUse);
    EXPECT_FALSE(bringInTrackStays(bare, path, 3, silent));
}

TEST(BringInTrack, LeavesOutAStayThatTheLogHoldsWithItsFishFilledIn) {
    const support::ScratchFolder folder;
    const auto path = folder.file("day.gpx", trackText(40));
    Water w = plainWater();
    logbook::Stay stay = bringInTrackStays(w, path, 3, silent)->stays.front();
    stay.start += 10min; // corrected by hand since
    stay.rods = 2;
    stay.runs.resize(1);
    w.log.push_back(stay);
    const auto again = bringInTrackStays(w, path, 3, silent);
    ASSERT_TRUE(again) << again.error().sentence();
    EXPECT_TRUE(again->stays.empty());
    EXPECT_EQ(again->known, 1U);
    w.log.edit(w.log.size() - 1).end = utc(9, 5, 8h); // over before the halt began
    EXPECT_EQ(bringInTrackStays(w, path, 3, silent)->stays.size(), 1U);
    w.log.edit(w.log.size() - 1).end = stay.end;
    w.log.edit(w.log.size() - 1).place.lat_deg += 0.01; // a kilometre off: one of them is wrong
    const auto elsewhere = bringInTrackStays(w, path, 3, silent);
    EXPECT_TRUE(elsewhere->stays.empty());
    ASSERT_EQ(elsewhere->doubtful.size(), 1U);
    EXPECT_EQ(elsewhere->doubtful[0].meets, stay.id);
}

TEST(BringInRules, AndPreviewsComeFromTheirReaders) {
    const support::ScratchFolder folder;
    const auto rules = bringInHouseRules(folder.file("r.json", R"({"rods_per_boat": 3})"));
    ASSERT_TRUE(rules) << rules.error().sentence();
    EXPECT_EQ(rules->rodLimit, 3);
    const auto days = bringInDayFacts(folder.file("d.csv", "day,file,draft_m\nd1,a.csv,0.3\n"));
    ASSERT_TRUE(days) << days.error().sentence();
    EXPECT_EQ(days->at(0).draft, units::Depth::metres(0.3));
    const auto preview = previewOf(folder.file("t.csv", timedTable), {});
    ASSERT_TRUE(preview && *preview);
    EXPECT_EQ((*preview)->columns, (std::vector<std::string>{"lon", "lat", "depth", "time"}));
    const auto none = previewOf(folder.file("t.gpx", trackText(1)), {});
    ASSERT_TRUE(none);
    EXPECT_FALSE(*none) << "no delimited text";
    EXPECT_FALSE(previewOf(folder.path() / "missing.csv", {}));
}

} // namespace
