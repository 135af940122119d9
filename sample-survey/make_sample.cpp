// SPDX-License-Identifier: GPL-3.0-or-later
// Makes the sample water and all its files: make_sample OUT_DIR writes OUT_DIR/files and
// OUT_DIR/expected. Everything is invented; the same files come out on every run.
#include "sample-survey/bottom.h"
#include "sample-survey/day_track.h"
#include "sample-survey/expected.h"
#include "sample-survey/notes.h"
#include "sample-survey/season.h"
#include "sample-survey/survey_day.h"
#include "sample-survey/survey_plan.h"
#include "sample-survey/text.h"
#include "sample-survey/write_survey.h"

#include <exception>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

namespace sample {

namespace {

constexpr double foot_m = 0.3048;

std::vector<SurveyDay> plannedDays() {
    std::vector<SurveyDay> days(3);
    days[0].facts = {.date = "2026-09-05",
                     .file = "survey-2026-09-05.nmea",
                     .start_s = secondsOf(2026, 9, 5, 7, 42),
                     .level_m = 0.30,
                     .levelRead = true,
                     .waterTemperature_c = 17.6,
                     .draft_m = 0.30,
                     .assumedSoundSpeed_m_s = 1500.0,
                     .boatSpeed_m_s = 2.5,
                     .unit_m = 1.0,
                     .everySeconds = 1};
    days[1].facts = {.date = "2026-09-12",
                     .file = "survey-2026-09-12.gpx",
                     .start_s = secondsOf(2026, 9, 12, 7, 15),
                     .level_m = -0.10,
                     .levelRead = false,
                     .waterTemperature_c = 16.8,
                     .draft_m = 0.30,
                     .assumedSoundSpeed_m_s = 1500.0,
                     .boatSpeed_m_s = 2.1,
                     .unit_m = 1.0,
                     .everySeconds = 3};
    days[2].facts = {.date = "2026-09-19",
                     .file = "survey-2026-09-19.csv",
                     .start_s = secondsOf(2026, 9, 19, 7, 58),
                     .level_m = -0.35,
                     .levelRead = true,
                     .waterTemperature_c = 15.9,
                     .draft_m = 0.25,
                     .assumedSoundSpeed_m_s = 1500.0,
                     .boatSpeed_m_s = 2.2,
                     .unit_m = foot_m,
                     .everySeconds = 1};
    return days;
}

std::vector<FaultWish> faultsWished() {
    return {{.spikes = 22,
             .zeroDepths = 5,
             .noDepths = 6,
             .stuck = 1,
             .positionJumps = 1,
             .doubleEchoes = 5,
             .badChecksums = 9,
             .truncated = 1,
             .voidFixes = 3},
            {.spikes = 14,
             .zeroDepths = 3,
             .noDepths = 4,
             .stuck = 1,
             .positionJumps = 1,
             .doubleEchoes = 3},
            {.spikes = 19,
             .zeroDepths = 6,
             .noDepths = 4,
             .stuck = 1,
             .positionJumps = 2,
             .doubleEchoes = 4,
             .truncated = 1}};
}

std::vector<SurveyDay> surveyAll(const Bottom& bottom, const Waterway& waterway) {
    std::vector<SurveyDay> days = plannedDays();
    const std::vector<FaultWish> wishes = faultsWished();
    for (std::size_t i = 0; i < days.size(); ++i) {
        Chance chance(20260905 + 7 * i);
        const Line way = surveyWay(bottom, waterway, static_cast<int>(i) + 1);
        days[i].fixes = sail(way, bottom, days[i].facts, chance);
        putFaultsIn(days[i].fixes, wishes[i], days[i].facts, chance);
    }
    return days;
}

std::string surveyDaysText(const std::vector<SurveyDay>& days) {
    std::string text =
        "day,file,water_level_m,water_temperature_c,draft_m,assumed_sound_speed_m_s,depth_unit\n";
    for (const SurveyDay& day : days) {
        text += day.facts.date + "," + day.facts.file + "," +
                (day.facts.levelRead ? fixed(day.facts.level_m, 2) : "") + "," +
                fixed(day.facts.waterTemperature_c, 1) + "," + fixed(day.facts.draft_m, 2) + "," +
                fixed(day.facts.assumedSoundSpeed_m_s, 0) + "," +
                (day.facts.unit_m == 1.0 ? "m" : "ft") + "\n";
    }
    return text;
}

void makeAll(const std::filesystem::path& out) {
    std::filesystem::create_directories(out / "files");
    std::filesystem::create_directories(out / "expected");
    const auto keep = [&out](const std::string& name, const std::string& text) {
        writeFile((out / name).string(), text);
    };

    const Shore shore;
    const Bottom bottom(shore);
    const Waterway waterway(bottom, 13.0, 1.0);
    const std::vector<SurveyDay> days = surveyAll(bottom, waterway);
    Chance chance(55231);
    keep("files/" + days[0].facts.file, nmeaText(days[0].fixes, days[0].facts, chance));
    keep("files/" + days[1].facts.file, gpxText(days[1].fixes, days[1].facts));
    keep("files/" + days[2].facts.file, tableText(days[2].fixes));
    keep("files/survey-days.csv", surveyDaysText(days));
    keep("files/shoreline.geojson", shorelineText(bottom));
    keep("files/water.json", waterText(bottom));
    keep("files/house-rules.json", houseRulesText(bottom));
    Chance notes(314);
    keep("files/weed-notes.csv", weedNotesText(bottom, notes));
    keep("files/lead-line.csv", leadLineText(bottom, notes));
    Chance seasons(1929);
    const std::vector<LoggedStay> stays = fishSeasons(bottom, seasons);
    keep("files/log.csv", logText(stays));
    Chance track(77);
    const DayTrack day = fishOneDay(bottom, waterway, track);
    keep("files/day-track.gpx", trackText(day));

    Chance checks(60);
    keep("expected/water.json", expectedWaterText(bottom));
    keep("expected/check-points.json", expectedCheckPointsText(bottom, days, checks));
    keep("expected/soundings.json", expectedSoundingsText(days));
    keep("expected/crossings.json", expectedCrossingsText(days));
    keep("expected/faults.csv", faultsText(days));
    keep("expected/structure.json", expectedStructureText(bottom));
    keep("expected/log.json", expectedLogText(stays));
    keep("expected/stays.json", expectedStaysText(day));
}

} // namespace

} // namespace sample

int main(int count, char** words) {
    if (count != 2) {
        std::cerr << "usage: make_sample OUT_DIR\n";
        return 2;
    }
    try {
        sample::makeAll(words[1]);
    } catch (const std::exception& problem) {
        std::cerr << "make_sample: " << problem.what()
                  << "; check that the folder can be written\n";
        return 4;
    }
    return 0;
}
