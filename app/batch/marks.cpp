// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/marks_report.h"
#include "app/batch/number_between.h"
#include "app/batch/option_values.h"
#include "app/batch/output_paths.h"
#include "app/batch/picture_file.h"
#include "app/batch/report.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/water_file.h"
#include "app/wording/planned_words.h"
#include "app/wording/reasons.h"
#include "core/acts/bans.h"
#include "core/acts/facts.h"
#include "core/acts/plan.h"
#include "core/acts/profiles.h"
#include "core/marks/overnight.h"
#include "core/outputs/write_gpx.h"
#include "core/water/steps/plan_day.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <memory>

namespace batch {

using base::Result;
using std::filesystem::path;

namespace {

struct MarksOptions {
    path water, report, gpx, sheet, picture;
    std::string date, start, end, ashoreBy, windLaterAt, launch, weights, profile, paper;
    std::vector<std::string> keep, ban;
    std::optional<double> windFrom_deg, windSpeed_m_s, windLaterFrom_deg, windLaterSpeed_m_s,
        boatSpeed_m_s, levelChange_m, limit_m, cast_m, bowRope_m, sternRope_m, scope, temperature_c,
        tryNew, stay_h, overDepth_m;
    std::optional<int> rods, count, anchors;
    bool pictures = false;
};

units::Day tomorrow(const units::Clock& clock) {
    const auto now =
        std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
    return units::Day(std::chrono::sys_days(clock.dayOf(now)) + std::chrono::days(1));
}

Result<void> applyTimes(const MarksOptions& o, const units::Clock& clock, marks::ExpectedDay& day) {
    day.day = tomorrow(clock);
    if (!o.date.empty()) {
        const auto date = dayFrom("--date", o.date);
        if (!date) {
            return std::unexpected(date.error());
        }
        day.day = *date;
    }
    std::chrono::seconds ashoreBy = day.end;
    for (const auto& taken :
         {takeTime("--start", o.start, day.start), takeTime("--end", o.end, day.end),
          takeTime("--ashore-by", o.ashoreBy, ashoreBy)}) {
        if (!taken) {
            return taken;
        }
    }
    if (!o.ashoreBy.empty()) {
        marks::ExpectedDay ashore = day;
        ashore.end = ashoreBy;
        day.end = std::min(marks::overnight(day).end, marks::overnight(ashore).end);
    }
    if (!o.end.empty()) {
        day = marks::overnight(day); // Nobody fishes till the next day unless he says so.
    }
    if (o.stay_h) {
        day.stay = std::chrono::seconds(std::llround(*o.stay_h * 3600.0));
    }
    if (day.end <= day.start) {
        return base::fail(base::ErrorKind::wrongUse, "the day ends before it starts", "--end",
                          "give a later time than --start");
    }
    return {};
}

logbook::Wind windOf(const std::optional<double>& from_deg,
                     const std::optional<double>& speed_m_s) {
    logbook::Wind wind;
    if (from_deg) {
        wind.from = units::Bearing::degrees(*from_deg);
    }
    if (speed_m_s) {
        wind.speed = units::Speed::metresPerSecond(*speed_m_s);
    }
    return wind;
}

/// What is not said is not known; a wind that the file holds is of another day.
Result<void> applyWinds(const MarksOptions& o, marks::ExpectedDay& day) {
    day.wind = windOf(o.windFrom_deg, o.windSpeed_m_s);
    day.windLater.reset();
    const bool isLaterSaid = o.windLaterFrom_deg || o.windLaterSpeed_m_s;
    if (isLaterSaid && o.windLaterAt.empty()) {
        return base::fail(base::ErrorKind::wrongUse, "nobody said from when the later wind blows",
                          "--wind-later-at", "give the hour at which the wind turns");
    }
    if (o.windLaterAt.empty()) {
        return {};
    }
    const auto at = timeOfDayFrom("--wind-later-at", o.windLaterAt);
    if (!at) {
        return std::unexpected(at.error());
    }
    if (!isLaterSaid) {
        return base::fail(base::ErrorKind::wrongUse, "nobody said what wind blows later",
                          "--wind-later-at", "give --wind-later-from, --wind-later-speed, or both");
    }
    day.windLater = marks::LaterWind{*at, windOf(o.windLaterFrom_deg, o.windLaterSpeed_m_s)};
    return {};
}

void applyTackle(const MarksOptions& o, marks::Tackle& tackle) {
    if (o.boatSpeed_m_s) {
        tackle.boatSpeed = units::Speed::metresPerSecond(*o.boatSpeed_m_s);
    }
    if (o.cast_m) {
        tackle.cast = units::Length::metres(*o.cast_m);
    }
    if (o.bowRope_m) {
        tackle.bowRope = units::Length::metres(*o.bowRope_m);
    }
    if (o.sternRope_m) {
        tackle.sternRope = units::Length::metres(*o.sternRope_m);
    }
    tackle.scope = o.scope.value_or(tackle.scope);
    tackle.rods = o.rods.value_or(tackle.rods);
    if (o.anchors) {
        tackle.toOneAnchor = *o.anchors == 1;
    }
    if (o.overDepth_m) {
        tackle.overDepth = units::Length::metres(*o.overDepth_m);
    }
}

Result<marks::Plan> planOf(const MarksOptions& o, const water::Water& water) {
    marks::Plan plan = water.plan;
    if (auto applied = applyWinds(o, plan.day); !applied) {
        return std::unexpected(applied.error());
    }
    plan.day.levelChange = units::Length::metres(o.levelChange_m.value_or(0.0));
    if (o.temperature_c) {
        plan.day.waterTemperature = units::Temperature::celsius(*o.temperature_c);
    }
    if (auto applied = applyTimes(o, water.clock, plan.day); !applied) {
        return std::unexpected(applied.error());
    }
    applyTackle(o, plan.tackle);
    plan.count = o.count.value_or(plan.count);
    plan.tryNew = o.tryNew.value_or(plan.tryNew);
    if (!o.launch.empty()) {
        const auto launch = placeFrom("--launch", o.launch);
        if (!launch) {
            return std::unexpected(launch.error());
        }
        plan.launch = *launch;
    }
    if (!o.profile.empty()) {
        const auto believed = acts::takeProfile(water, o.profile);
        if (!believed) {
            return std::unexpected(believed.error());
        }
        plan.weights = believed->plan.weights;
    }
    const auto weights = o.weights.empty() ? Result<marks::Weights>(plan.weights)
                                           : weightsFrom(o.weights, plan.weights);
    if (!weights) {
        return std::unexpected(weights.error());
    }
    plan.weights = *weights;
    return plan;
}

/// With the bans and the own marks of this plan; an own mark that is named goes before a ban.
Result<water::Water> withOwnPlaces(const MarksOptions& o, water::Water water) {
    Result<water::Water> asked = std::move(water);
    for (const std::string& banned : o.ban) {
        const auto ban = banFrom("--ban", banned);
        if (!ban) {
            return std::unexpected(ban.error());
        }
        asked =
            acts::banRound(*asked, ban->place,
                           ban->radius.value_or(asked->plan.tackle.cast * water::castsBanned), {});
        if (!asked) {
            return asked;
        }
    }
    for (const std::string& kept : o.keep) {
        const auto mark = keptMarkFrom("--keep", kept);
        if (!mark) {
            return std::unexpected(mark.error());
        }
        asked = acts::pinMark(*asked, mark->place, *mark);
        if (!asked) {
            return asked;
        }
    }
    return asked;
}

Result<void> writeOutputs(const MarksOptions& o, const OpenedWater& opened,
                          const std::shared_ptr<const water::PlannedDay>& planned) {
    if (!o.gpx.empty()) {
        if (auto written = outputs::writeDayGpx(o.gpx, wording::told(planned->marks), planned->day,
                                                *opened.water.frame, opened.water.name);
            !written) {
            return written;
        }
    }
    if (!o.sheet.empty()) {
        if (auto written =
                writeSheet(o.sheet, opened.water, opened.derived, planned, {o.paper, o.pictures});
            !written) {
            return written;
        }
    }
    if (!o.picture.empty()) {
        if (auto written = writePicture(o.picture, opened.water, opened.derived, planned);
            !written) {
            return written;
        }
    }
    return writeReport(o.report, marksReport(opened.water, *planned));
}

Result<void> marksVerb(const MarksOptions& o) {
    TerminalProgress progress;
    if (auto checked = checkOutputs({{"--report", o.report},
                                     {"--gpx", o.gpx},
                                     {"--sheet", o.sheet},
                                     {"--picture", o.picture}},
                                    {{"the water", o.water}});
        !checked) {
        return checked;
    }
    auto opened = openWater(o.water, progress);
    if (!opened) {
        return std::unexpected(opened.error());
    }
    water::Settings settings = opened->water.settings;
    if (auto bands = takeBands("", o.limit_m, settings); !bands) {
        return bands;
    }
    const auto plan = planOf(o, opened->water);
    if (!plan) {
        return std::unexpected(plan.error());
    }
    auto asked = acts::setSettings(opened->water, settings);
    if (asked) {
        asked = acts::setPlan(*asked, *plan);
    }
    if (asked) {
        asked = withOwnPlaces(o, std::move(*asked));
    }
    if (!asked) {
        return std::unexpected(asked.error());
    }
    opened->water = std::move(*asked);
    // Sheet and picture show the contours as well.
    const Needed needed = o.sheet.empty() && o.picture.empty() ? Needed::plan : Needed::all;
    if (auto derived = deriveOpened(*opened, progress, needed); !derived) {
        return derived;
    }
    auto planned = water::planDay(opened->water, opened->derived, *plan, progress);
    if (!planned) {
        return std::unexpected(planned.error());
    }
    if (const QString said = wording::windNotSaid(*planned, wording::Words()); !said.isEmpty()) {
        std::cerr << "meremark-batch: " << said.toStdString() << '\n';
    }
    return writeOutputs(o, *opened, std::make_shared<const water::PlannedDay>(std::move(*planned)));
}

void layConditions(CLI::App& verb, MarksOptions& o) {
    verb.add_option("water", o.water, "Water file")->required()->type_name("WATER.gpkg");
    verb.add_option("--wind-from", o.windFrom_deg,
                    "Where the wind comes from, degrees true; without it: from any side")
        ->type_name("DEG")
        ->check(numberBetween(0.0, 360.0));
    verb.add_option("--wind-speed", o.windSpeed_m_s,
                    "Metres per second; without it waves and shelter are not counted")
        ->type_name("M/S")
        ->check(numberBetween(0.0, 60.0));
    verb.add_option("--wind-later-at", o.windLaterAt, "When it turns or gets up")
        ->type_name("HH:MM");
    verb.add_option("--wind-later-from", o.windLaterFrom_deg,
                    "Where it comes from then; without it: from any side")
        ->type_name("DEG")
        ->check(numberBetween(0.0, 360.0));
    verb.add_option("--wind-later-speed", o.windLaterSpeed_m_s,
                    "How strong it is then, metres per second")
        ->type_name("M/S")
        ->check(numberBetween(0.0, 60.0));
    verb.add_option("--date", o.date, "Day (default tomorrow)")->type_name("DATE");
    verb.add_option("--start", o.start, "Local time (default 08:00)")->type_name("HH:MM");
    verb.add_option("--end", o.end, "Local time (default 16:00); before --start: on the next day")
        ->type_name("HH:MM");
    verb.add_option("--ashore-by", o.ashoreBy, "Be ashore by; the earlier of this and --end")
        ->type_name("HH:MM");
    verb.add_option("--stay-hours", o.stay_h, "On each mark (default: the day shared out)")
        ->type_name("H")
        ->check(numberBetween(0.1, 12.0));
    verb.add_option("--level-change", o.levelChange_m, "Water above chart level, metres")
        ->type_name("M")
        ->check(numberBetween(-100.0, 100.0));
    verb.add_option("--water-temperature", o.temperature_c, "Degrees Celsius")
        ->type_name("C")
        ->check(numberBetween(-3.0, 50.0));
    verb.add_option("--limit-depth", o.limit_m, "Deepest depth worth fishing, metres")
        ->type_name("M");
}

void layBoat(CLI::App& verb, MarksOptions& o) {
    verb.add_option("--launch", o.launch, "Where the boat starts")->type_name("LON,LAT");
    verb.add_option("--boat-speed", o.boatSpeed_m_s, "Between marks, metres per second")
        ->type_name("M/S")
        ->check(numberBetween(0.3, 8.0));
    verb.add_option("--rods", o.rods, "Never more than the house rules allow")
        ->type_name("N")
        ->check(CLI::Range(1, 8));
    verb.add_option("--cast", o.cast_m, "Farthest bait, metres")
        ->type_name("M")
        ->check(numberBetween(5.0, 100.0));
    verb.add_option("--bow-rope", o.bowRope_m, "Rope on board, metres")
        ->type_name("M")
        ->check(numberBetween(5.0, 200.0));
    verb.add_option("--stern-rope", o.sternRope_m, "Rope on board, metres")
        ->type_name("M")
        ->check(numberBetween(5.0, 200.0));
    verb.add_option("--scope", o.scope, "Rope over depth at the bow anchor")
        ->type_name("N")
        ->check(numberBetween(1.5, 10.0));
    verb.add_option("--anchors", o.anchors,
                    "2: bow and stern (default), 1: one at the bow, to which she swings")
        ->type_name("N")
        ->check(CLI::Range(1, 2));
    verb.add_option("--over-depth", o.overDepth_m, "Stop knot deeper than the water by, metres")
        ->type_name("M")
        ->check(numberBetween(0.0, 3.0));
    verb.add_option("--keep", o.keep, "A mark of your own for this plan, ranked and never dropped")
        ->type_name("LON,LAT[,NAME]")
        ->take_all();
    verb.add_option("--ban", o.ban,
                    "No mark in this plan so near to here; the radius is two casts if not given")
        ->type_name("LON,LAT[,RADIUS_M]")
        ->take_all();
    verb.add_option("--count", o.count, "Marks wanted")->type_name("N")->check(CLI::Range(1, 40));
    verb.add_option("--weights", o.weights, "What matters to you")->type_name("factor=W,...");
    verb.add_option("--profile", o.profile, "Beliefs that lie in the water under this name")
        ->type_name("NAME");
    verb.add_option("--try", o.tryNew, "From 0, fish what is known, to 1, try new water")
        ->type_name("0..1")
        ->check(numberBetween(0.0, 1.0));
    verb.add_option("--report", o.report, "Report; to standard output if not given")
        ->type_name("OUT.json");
    verb.add_option("--gpx", o.gpx, "Marks as waypoints, and the way of the day")
        ->type_name("OUT.gpx");
    verb.add_option("--sheet", o.sheet, "Day sheet for the boat")->type_name("OUT.pdf");
    verb.add_option("--paper", o.paper, "Of the sheet: a4 (default), letter, or a5 for the pocket")
        ->type_name("SIZE")
        ->check(CLI::IsMember({"a4", "letter", "a5"}));
    verb.add_flag("--pictures", o.pictures, "The sheet at length, the first marks drawn to scale");
    verb.add_option("--picture", o.picture, "Chart with the marks")->type_name("OUT.png");
}

} // namespace

void layMarks(CLI::App& app, Run& run) {
    CLI::App* verb =
        app.add_subcommand("marks", "Tomorrow's anchor marks with reasons, anchors and rods");
    verb->footer("Example: meremark-batch marks mere.gpkg --wind-from 300 --wind-speed 6 --sheet "
                 "tomorrow.pdf");
    const auto options = std::make_shared<MarksOptions>();
    layConditions(*verb, *options);
    layBoat(*verb, *options);
    verb->callback([options, &run] { run = [options] { return marksVerb(*options); }; });
}

} // namespace batch
