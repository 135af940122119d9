// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/day_cautions.h"

#include "core/anchoring/cautions.h"
#include "core/wind/beaufort.h"

#include <fmt/format.h>

namespace water {

namespace {

constexpr const char* ifYouFallIn =
    "If you fall in, float on your back until your breathing settles.";

/// One sentence of what the water does to somebody who falls in: the lifejacket is named once a
/// list.
std::string lifejacketCaution(const std::optional<units::Temperature>& water) {
    std::string out = coldCaution(water);
    if (out.empty()) {
        out = fmt::format("Wear the lifejacket, do not stow it. {}", ifYouFallIn);
    }
    if (!water || *water < nearIce) {
        out += " Where there is ice, stay ashore: never break out through it.";
    }
    return out;
}

/// Of one or two sentences about the dark, one.
std::string lightCaution(const std::vector<std::string>& sentences) {
    std::string out;
    for (const std::string& sentence : sentences) {
        out += (out.empty() ? "" : " ") + sentence;
    }
    return out;
}

std::string ropeCaution(double scope) {
    std::string out = "Engine in neutral before you fall back: a rope in the propeller holds the "
                      "boat by the stern.";
    if (scope < anchoring::seamanlikeScope) {
        out +=
            fmt::format(" Rope at {:.1f} times depth and bow height is for settled weather only: "
                        "courses teach {:.0f} to 10, and more is safer.",
                        scope, anchoring::seamanlikeScope);
    }
    return out;
}

} // namespace

int forceOf(const PlannedDay& planned) {
    return wind::beaufortForce(planned.plan.day.wind.speed);
}

std::string windCaution(units::Speed wind) {
    const int force = wind::beaufortForce(wind);
    if (force >= ashoreFrom_beaufort) {
        return fmt::format("Force {} is no weather for a small open boat: stay ashore.", force);
    }
    return force == ashoreFrom_beaufort - 1
               ? fmt::format("Force {}: white horses. Keep to sheltered water, pay out more rope, "
                             "and go in if it freshens.",
                             force)
               : std::string();
}

std::string coldCaution(const std::optional<units::Temperature>& water) {
    if (water && *water >= coldWater) {
        return {};
    }
    return fmt::format("{}: the shock of falling in can kill within a minute. Wear the lifejacket, "
                       "do not stow it. {}",
                       water ? "The water is cold (below 15 °C)" : "Water below 15 °C is cold",
                       ifYouFallIn);
}

std::vector<std::string> dayCautions(const PlannedDay& planned) {
    std::vector<std::string> out;
    const auto take = [&out](std::string sentence) {
        if (!sentence.empty()) {
            out.push_back(std::move(sentence));
        }
    };
    take(windCaution(planned.plan.day.wind.speed));
    take(lifejacketCaution(planned.plan.day.waterTemperature));
    take("At the first thunder go ashore: a boat is the highest thing on the water.");
    take(lightCaution(planned.day.cautions));
    take("Wind on the beam of a boat held at both ends can fill her: when it goes round, slip the "
         "stern rope and let her swing to "
         "the bow. Make both ropes fast so that they slip at once, a knife within reach; never lie "
         "to the stern anchor alone.");
    take(ropeCaution(planned.plan.tackle.scope));
    take("Tell somebody ashore where you are and when you will be back.");
    return out;
}

std::vector<std::string> rulesOfTheDay(const Water& water, const PlannedDay& planned) {
    std::vector<std::string> out;
    const logbook::HouseRules& rules = water.houseRules;
    if (rules.season && !rules.season->holds(planned.plan.day.day)) {
        out.emplace_back("That day lies outside the season.");
    }
    if (rules.rodLimit) {
        out.push_back(fmt::format("At most {} rods in a boat.", *rules.rodLimit));
    }
    for (const logbook::ClosedWater& closed : rules.closed) {
        out.push_back(fmt::format("Closed water: {}.", closed.name));
    }
    out.insert(out.end(), rules.notes.begin(), rules.notes.end());
    out.emplace_back("Local rules and the fishery's staff go first.");
    return out;
}

std::vector<std::string> fishCare(const PlannedDay& planned) {
    std::vector<std::string> out;
    const auto& water = planned.plan.day.waterTemperature;
    if (water && *water > warmForFish) {
        out.emplace_back("Above 20 °C pike often die after capture in water this warm: consider "
                         "not fishing for them, or for any "
                         "species that dies of it.");
    }
    out.emplace_back("Fish: wet hands, a wet mat, unhooked in the water where it can be done, and "
                     "a short time in the air.");
    return out;
}

} // namespace water
