// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/day_cautions.h"

#include "core/wind/beaufort.h"

#include <fmt/format.h>

namespace water {

namespace {

constexpr double coldWater_c = 15.0;
constexpr double warmWater_c = 21.0;

void takeWind(const PlannedDay& planned, std::vector<std::string>& out) {
    const int force = wind::beaufortForce(planned.plan.day.wind.speed);
    if (force >= 6) {
        out.push_back(
            fmt::format("Force {} is no weather for a small open boat: stay ashore.", force));
    } else if (force == 5) {
        out.emplace_back("Force 5: white horses. Keep to sheltered water, pay out more rope, be "
                         "ready to go in.");
    }
}

void takeTemperature(const PlannedDay& planned, std::vector<std::string>& out) {
    const auto& water = planned.plan.day.waterTemperature;
    if (!water || water->inCelsius() < coldWater_c) {
        out.emplace_back(water ? "The water is cold (below 15 °C): the shock of falling in can "
                                 "kill within a minute. Wear the lifejacket, "
                                 "float first."
                               : "Below 15 °C water is cold: the shock of falling in can kill "
                                 "within a minute. Wear the lifejacket, float "
                                 "first.");
    }
    if (water && water->inCelsius() >= warmWater_c) {
        out.emplace_back("The water is 21 °C or warmer: pike do not survive being caught well. "
                         "Leave them alone.");
    }
}

void takeRules(const Water& water, const PlannedDay& planned, std::vector<std::string>& out) {
    const logbook::HouseRules& rules = water.houseRules;
    if (rules.season && !rules.season->holds(planned.plan.day.day)) {
        out.emplace_back("By the house rules that day lies outside the season.");
    }
    if (rules.rodLimit) {
        out.push_back(fmt::format("House rules: {} rods in a boat.", *rules.rodLimit));
    }
    for (const logbook::ClosedWater& closed : rules.closed) {
        out.push_back(fmt::format("Closed water: {}.", closed.name));
    }
    out.insert(out.end(), rules.notes.begin(), rules.notes.end());
}

} // namespace

std::vector<std::string> dayCautions(const Water& water, const PlannedDay& planned) {
    std::vector<std::string> out;
    takeWind(planned, out);
    takeTemperature(planned, out);
    out.insert(out.end(), planned.day.cautions.begin(), planned.day.cautions.end());
    takeRules(water, planned, out);
    if (planned.plan.tackle.scope < 5.0) {
        out.push_back(fmt::format("Rope at {:.1f} times the depth is for settled weather only; "
                                  "boating courses ask for 5 to 10.",
                                  planned.plan.tackle.scope));
    }
    out.emplace_back("Never lie to the stern anchor alone, and be able to let both ropes go at "
                     "once: a knife within reach.");
    out.emplace_back(
        "Wear a lifejacket. Tell somebody ashore where you are and when you will be back.");
    out.emplace_back("Drawn from your own soundings: not for navigation. Local rules and the "
                     "fishery's staff go first.");
    return out;
}

} // namespace water
