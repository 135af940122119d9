// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/trip.h"
#include "tests/support/given.h"

#include <string>

namespace logs {

inline units::Moment moment(const std::string& text) {
    return support::given(units::momentFrom(text, units::Clock()));
}

/// A stay on one day between two times of day, UTC.
inline logbook::Stay stay(const std::string& day, const std::string& from, const std::string& to,
                          int rods = 1, const std::string& bait = "") {
    static std::int64_t number = 0;
    logbook::Stay made;
    made.id = logbook::StayId(++number);
    made.start = moment(day + " " + from);
    made.end = moment(day + " " + to);
    made.rods = rods;
    made.bait = bait;
    return made;
}

inline logbook::Fish fish(const std::string& time, double kilograms, const std::string& bait = "",
                          const std::string& species = "pike") {
    logbook::Fish made;
    made.time = moment(time);
    made.species = species;
    made.bait = bait;
    made.weight = units::Weight::kilograms(kilograms);
    return made;
}

inline logbook::Fish lost(const std::string& time) {
    logbook::Fish made;
    made.time = moment(time);
    made.landed = false;
    return made;
}

} // namespace logs
