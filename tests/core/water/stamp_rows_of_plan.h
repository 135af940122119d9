// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/water/stamp_rows.h"

#include <array>

namespace water {

/// What the user expects of the day and has on board: of the map only level and launch.
inline constexpr std::array planRows{
    StampRow{"plan.day.day", [](Water& w) { w.plan.day.day = std::chrono::year(2026) / 10 / 4; },
             onlyPlan},
    StampRow{"plan.day.start", [](Water& w) { w.plan.day.start = std::chrono::hours(6); },
             onlyPlan},
    StampRow{"plan.day.end", [](Water& w) { w.plan.day.end = std::chrono::hours(17); }, onlyPlan},
    StampRow{"plan.day.wind.from",
             [](Water& w) { w.plan.day.wind.from = units::Bearing::degrees(10.0); }, onlyPlan},
    StampRow{"plan.day.wind.speed",
             [](Water& w) { w.plan.day.wind.speed = units::Speed::metresPerSecond(9.0); },
             onlyPlan},
    StampRow{"plan.day.wind.from, absent", [](Water& w) { w.plan.day.wind.from.reset(); },
             onlyPlan},
    StampRow{"plan.day.wind.speed, absent", [](Water& w) { w.plan.day.wind.speed.reset(); },
             onlyPlan},
    StampRow{"plan.day.wind.speed, calm", [](Water& w) { w.plan.day.wind.speed = units::Speed(); },
             onlyPlan},
    StampRow{"plan.day.windLater, absent", [](Water& w) { w.plan.day.windLater.reset(); },
             onlyPlan},
    StampRow{"plan.day.windLater.at",
             [](Water& w) {
                 w.plan.day.windLater = marks::LaterWind{std::chrono::hours(14), {}};
             },
             onlyPlan},
    StampRow{"plan.day.windLater.wind.from",
             [](Water& w) {
                 w.plan.day.windLater = marks::LaterWind{
                     std::chrono::hours(13), {units::Bearing::degrees(20.0), std::nullopt}};
             },
             onlyPlan},
    StampRow{"plan.day.windLater.wind.speed",
             [](Water& w) {
                 w.plan.day.windLater = marks::LaterWind{
                     std::chrono::hours(13), {std::nullopt, units::Speed::metresPerSecond(20.0)}};
             },
             onlyPlan},
    StampRow{"plan.day.levelChange",
             [](Water& w) { w.plan.day.levelChange = units::Length::metres(0.3); }, levelAndPlan},
    StampRow{"plan.day.levelChange, none", [](Water& w) { w.plan.day.levelChange = {}; },
             levelAndPlan},
    StampRow{"plan.day.waterTemperature", [](Water& w) { w.plan.day.waterTemperature.reset(); },
             onlyPlan},
    StampRow{"plan.day.stay", [](Water& w) { w.plan.day.stay = std::chrono::minutes(75); },
             onlyPlan},
    StampRow{"plan.launch, longitude", [](Water& w) { w.plan.launch->lon_deg += 7.8e-3; },
             fromStructure},
    StampRow{"plan.launch, latitude", [](Water& w) { w.plan.launch->lat_deg += 1.9e-3; },
             fromStructure},
    StampRow{"plan.launch, absent", [](Water& w) { w.plan.launch.reset(); }, fromStructure},
    StampRow{"plan.count", [](Water& w) { w.plan.count = 3; }, onlyPlan},
    StampRow{"plan.tryNew", [](Water& w) { w.plan.tryNew = 0.9; }, onlyPlan},
    StampRow{"tackle.boatSpeed",
             [](Water& w) { w.plan.tackle.boatSpeed = units::Speed::metresPerSecond(2.0); },
             onlyPlan},
    StampRow{"tackle.boatLength",
             [](Water& w) { w.plan.tackle.boatLength = units::Length::metres(6.0); }, onlyPlan},
    StampRow{"tackle.bowHeight",
             [](Water& w) { w.plan.tackle.bowHeight = units::Length::metres(0.8); }, onlyPlan},
    StampRow{"tackle.bowRope",
             [](Water& w) { w.plan.tackle.bowRope = units::Length::metres(40.0); }, onlyPlan},
    StampRow{"tackle.sternRope",
             [](Water& w) { w.plan.tackle.sternRope = units::Length::metres(20.0); }, onlyPlan},
    StampRow{"tackle.scope", [](Water& w) { w.plan.tackle.scope = 4.0; }, onlyPlan},
    StampRow{"tackle.rods", [](Water& w) { w.plan.tackle.rods = 2; }, onlyPlan},
    StampRow{"tackle.cast", [](Water& w) { w.plan.tackle.cast = units::Length::metres(20.0); },
             onlyPlan},
    StampRow{"tackle.overDepth",
             [](Water& w) { w.plan.tackle.overDepth = units::Length::metres(0.1); }, onlyPlan},
    StampRow{"tackle.toOneAnchor", [](Water& w) { w.plan.tackle.toOneAnchor = true; }, onlyPlan}};

/// Stays and fish, on which no map depends; on effort and fish by place and hour the plan does.
inline constexpr std::array logRows{
    StampRow{"stay.id", [](Water& w) { w.log.edit(0).id = logbook::StayId(80); }, noStep},
    StampRow{"stay.start", [](Water& w) { w.log.edit(0).start -= std::chrono::hours(1); },
             onlyPlan},
    StampRow{"stay.end", [](Water& w) { w.log.edit(0).end += std::chrono::hours(1); }, onlyPlan},
    StampRow{"stay.place", [](Water& w) { w.log.edit(0).place.lon_deg += 1e-3; }, onlyPlan},
    StampRow{"stay.rods", [](Water& w) { w.log.edit(0).rods = 3; }, onlyPlan},
    StampRow{"stay without rods", [](Water& w) { w.log.edit(0).rods.reset(); }, onlyPlan},
    StampRow{"stay.bait", [](Water& w) { w.log.edit(0).bait = "corn"; }, noStep},
    StampRow{"stay.conditions.windFrom",
             [](Water& w) { w.log.edit(0).conditions.windFrom.reset(); }, onlyPlan},
    StampRow{"stay.conditions.windSpeed",
             [](Water& w) { w.log.edit(0).conditions.windSpeed.reset(); }, onlyPlan},
    StampRow{"stay.conditions.waterTemperature",
             [](Water& w) { w.log.edit(0).conditions.waterTemperature.reset(); }, onlyPlan},
    StampRow{"stay.level", [](Water& w) { w.log.edit(0).conditions.level.reset(); }, noStep},
    StampRow{"stay.sky", [](Water& w) { w.log.edit(0).conditions.sky = "clear"; }, noStep},
    StampRow{"stay.who", [](Water& w) { w.log.edit(0).who = "Ben"; }, noStep},
    StampRow{"stay.baitPlace", [](Water& w) { w.log.edit(0).baitPlace.reset(); }, noStep},
    StampRow{"stay.photograph", [](Water& w) { w.log.edit(0).photograph.clear(); }, noStep},
    StampRow{"stay.others", [](Water& w) { w.log.edit(0).others.clear(); }, noStep},
    StampRow{"stay.note", [](Water& w) { w.log.edit(0).note = "gusts"; }, noStep},
    StampRow{"fish.id", [](Water& w) { w.log.edit(0).runs[0].id = logbook::FishId(81); }, noStep},
    StampRow{"fish.time", [](Water& w) { *w.log.edit(0).runs[0].time += std::chrono::minutes(3); },
             onlyPlan},
    StampRow{"fish.landed", [](Water& w) { w.log.edit(0).runs[0].landed = false; }, onlyPlan},
    StampRow{"fish.species", [](Water& w) { w.log.edit(0).runs[0].species = "tench"; }, noStep},
    StampRow{"fish.bait", [](Water& w) { w.log.edit(0).runs[0].bait = "bread"; }, noStep},
    StampRow{"fish.weight", [](Water& w) { w.log.edit(0).runs[0].weight.reset(); }, noStep},
    StampRow{"fish.length", [](Water& w) { w.log.edit(0).runs[0].length.reset(); }, noStep},
    StampRow{"fish.baitDepth", [](Water& w) { w.log.edit(0).runs[0].baitDepth.reset(); }, noStep},
    StampRow{"fish without time", [](Water& w) { w.log.edit(0).runs[0].time.reset(); }, onlyPlan},
    StampRow{"fish.who", [](Water& w) { w.log.edit(0).runs[0].who = "Cy"; }, noStep},
    StampRow{"fish.hooked", [](Water& w) { w.log.edit(0).runs[0].hooked = "deep"; }, noStep},
    StampRow{"fish.returned", [](Water& w) { w.log.edit(0).runs[0].returned = false; }, noStep},
    StampRow{"fish.baitPlace", [](Water& w) { w.log.edit(0).runs[0].baitPlace.reset(); }, noStep},
    StampRow{"fish.photograph", [](Water& w) { w.log.edit(0).runs[0].photograph.clear(); }, noStep},
    StampRow{"fish.others", [](Water& w) { w.log.edit(0).runs[0].others.clear(); }, noStep},
    StampRow{"fish.note", [](Water& w) { w.log.edit(0).runs[0].note = "light"; }, noStep},
    StampRow{"stay.runs, none", [](Water& w) { w.log.edit(0).runs.clear(); }, onlyPlan},
    StampRow{"one stay more", [](Water& w) { w.log.push_back(w.log[0]); }, onlyPlan}};

} // namespace water
