// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/trip.h"
#include "core/water/document/water.h"

#include <memory>
#include <string>

namespace autumn {

inline units::Moment at(const std::string& text) {
    return units::momentFrom(text, units::Clock()).value_or(units::Moment());
}

inline logbook::Fish fishAt(const std::string& time, const std::string& species, double kilograms) {
    logbook::Fish fish;
    fish.time = at(time);
    fish.species = species;
    if (kilograms > 0.0) {
        fish.weight = units::Weight::kilograms(kilograms);
    }
    return fish;
}

inline logbook::Stay stayAt(const std::string& from, const std::string& to, int rods,
                            const std::string& bait) {
    logbook::Stay stay;
    stay.start = at(from);
    stay.end = at(to);
    stay.rods = rods;
    stay.bait = bait;
    stay.place = {3.1, 55.2};
    return stay;
}

/// Three stays on two days in two months: one rod and blank, two rods with a pike, a lost run and a
/// fish of no name, three rods with a perch.
inline logbook::Log log() {
    logbook::Log log{stayAt("2026-09-30 08:00", "2026-09-30 10:00", 1, "roach"),
                     stayAt("2026-10-03 08:10", "2026-10-03 10:00", 2, "smelt"),
                     stayAt("2026-10-03 11:00", "2026-10-03 13:00", 3, "")};
    log[1].runs = {fishAt("2026-10-03 08:30", "pike", 5.669904625),
                   fishAt("2026-10-03 09:00", "zander", 0.0), fishAt("2026-10-03 09:30", "", 0.0)};
    log[1].runs[1].landed = false;
    log[1].runs[2].bait = "eel";
    log[2].runs = {fishAt("2026-10-03 12:00", "perch", 0.5)};
    std::int64_t id = 1;
    for (logbook::Stay& stay : log) {
        stay.id = logbook::StayId(id++);
        for (logbook::Fish& fish : stay.runs) {
            fish.id = logbook::FishId(id++);
        }
    }
    return log;
}

/// A water with a log and nothing else.
inline std::shared_ptr<const water::Water> waterWith(logbook::KeptLog log,
                                                     const units::Clock& clock = {}) {
    auto water = std::make_shared<water::Water>();
    water->log = std::move(log);
    water->clock = clock;
    return water;
}

} // namespace autumn
