// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/support/desk_water.h"

#include "tests/support/lattice_survey.h"

#include <array>
#include <cmath>
#include <random>

namespace support {

namespace {

using namespace std::chrono_literals;

constexpr int staysOfDay = 40;

logbook::Log manyStays(int count, const geo::LonLatRing& shore) {
    static const std::array<std::string, 3> baits{"smelt", "roach", "lamprey"};
    const units::Moment first{std::chrono::sys_days(std::chrono::year(2019) / 3 / 1) + 6h};
    std::mt19937 chance(4711);
    const auto share = [&chance] { return 0.1 + 8e-4 * static_cast<double>(chance() % 1000); };
    logbook::Log log;
    std::int64_t id = 1000;
    for (int i = 0; i < count; ++i) {
        logbook::Stay stay;
        stay.id = logbook::StayId(id++);
        stay.start = first + 24h * (i / staysOfDay) + 15min * (i % staysOfDay);
        stay.end = stay.start + 2h;
        stay.rods = 1 + i % 3;
        stay.bait = baits[chance() % baits.size()];
        stay.place = {std::lerp(shore[0].lon_deg, shore[2].lon_deg, share()),
                      std::lerp(shore[0].lat_deg, shore[2].lat_deg, share())};
        stay.conditions.windFrom = units::Bearing::degrees(45.0 * (i % 8));
        stay.conditions.windSpeed = units::Speed::metresPerSecond(1.0 + i % 7);
        if (chance() % 3 == 0) {
            logbook::Fish fish;
            fish.id = logbook::FishId(id++);
            fish.time = stay.start + 1h;
            fish.species = chance() % 4 == 0 ? "perch" : "pike";
            fish.weight =
                units::Weight::kilograms(0.5 + 0.01 * static_cast<double>(chance() % 900));
            stay.runs.push_back(fish);
        }
        log.push_back(std::move(stay));
    }
    return log;
}

} // namespace

water::Water deskWater(std::size_t soundings, int stays) {
    const LatticeSurvey survey(soundings);
    water::Water water;
    water.name = "Made-up water";
    water.shoreline = survey.shore();
    const geo::LonLatRing shore = water.shoreline.front().outer;
    water.frame = geo::WaterFrame::around(shore).value();
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(1);
    day.name = "2026-06-01";
    day.soundings = survey.soundings();
    day.passStarts = survey.passStarts();
    water.days = {std::move(day)};
    water.settings.cell = units::Length::metres(1.0);
    water.log = manyStays(stays, shore);
    return water;
}

} // namespace support
