// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/grouping.h"

#include "core/base/number_text.h"
#include "core/units/written.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include <fmt/format.h>

namespace rates {

namespace {

using logbook::Fish;
using logbook::Stay;
using std::chrono::milliseconds;

constexpr const char* calm = "calm";
constexpr units::Speed calmBelow = units::Speed::knots(0.5);
constexpr std::array eighths = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};
constexpr std::array months = {"January",   "February", "March",    "April",
                               "May",       "June",     "July",     "August",
                               "September", "October",  "November", "December"};

/// The parts of one stay, one for each group that it touches.
class Parts {
public:
    explicit Parts(const Stay& stay) : stay_(stay) {}

    GroupedStay& of(const std::string& group) {
        const auto found = std::ranges::find(parts_, group, &GroupedStay::group);
        if (found != parts_.end()) {
            return *found;
        }
        return parts_.emplace_back(GroupedStay{&stay_, group, 0.0, {}});
    }
    void giveTo(std::vector<GroupedStay>& out) {
        std::ranges::move(parts_, std::back_inserter(out));
    }

private:
    const Stay& stay_;
    std::vector<GroupedStay> parts_;
};

double hoursIn(milliseconds time) {
    return std::chrono::duration<double, std::ratio<3600>>(time).count();
}

/// When the block that holds `moment` ends by the clock.
units::Moment endOfBlock(units::Moment moment, const units::Clock& clock, int hours) {
    const double hour = clock.hourOfDay(moment);
    const double left = (std::floor(hour / hours) + 1.0) * hours - hour;
    return moment + std::max(milliseconds(1), milliseconds(std::llround(left * 3.6e6)));
}

/// The moment of a run, brought into its stay, so that its block has effort.
units::Moment within(const Stay& stay, units::Moment moment) {
    const units::Moment last = std::max(stay.start, stay.end - milliseconds(1));
    return std::clamp(moment, stay.start, last);
}

bool haveTimes(const std::vector<Fish>& runs) {
    return std::ranges::all_of(runs, [](const Fish& run) { return run.time.has_value(); });
}

std::vector<std::string> baitsIn(const std::string& text) {
    std::vector<std::string> out;
    std::size_t from = 0;
    while (from <= text.size()) {
        const std::size_t to = std::min(text.find_first_of(",;+/", from), text.size());
        std::string bait = base::lowerCase(base::trimmed(text.substr(from, to - from)));
        if (!bait.empty() && std::ranges::find(out, bait) == out.end()) {
            out.push_back(std::move(bait));
        }
        from = to + 1;
    }
    return out;
}

std::string baitOf(const Fish& fish) {
    return base::lowerCase(base::trimmed(fish.bait));
}

std::string windGroup(const logbook::Conditions& conditions) {
    if (conditions.windSpeed && *conditions.windSpeed < calmBelow) {
        return calm;
    }
    return conditions.windFrom ? windEighth(*conditions.windFrom) : std::string(notNoted);
}

constexpr int stepOfWarmth_c = 3;

int stepOf(units::Temperature water) {
    return static_cast<int>(std::floor(water.inCelsius() / stepOfWarmth_c));
}

std::string stepName(int step) {
    return fmt::format("{} to {} °C", step * stepOfWarmth_c, (step + 1) * stepOfWarmth_c);
}

} // namespace

GroupedStay wholeStay(const Stay& stay, std::string group) {
    GroupedStay whole{&stay, std::move(group), stay.rodHours().value_or(0.0), {}};
    for (const Fish& run : stay.runs) {
        whole.runs.push_back(&run);
    }
    return whole;
}

std::string hourBlock(units::Moment moment, const units::Clock& clock, int hours) {
    assert(hours > 0 && 24 % hours == 0);
    // A clock's hour just below a full one, from rounding, belongs to the full one.
    const int first =
        static_cast<int>(std::floor((clock.hourOfDay(moment) + 1e-9) / hours)) * hours;
    return fmt::format("{:02}-{:02}", first, first + hours);
}

std::vector<GroupedStay> byHour(std::span<const Stay> log, const units::Clock& clock, int hours) {
    std::vector<GroupedStay> out;
    for (const Stay& stay : log) {
        const bool isWithinOne = stay.end <= endOfBlock(stay.start, clock, hours);
        if (!isWithinOne && !haveTimes(stay.runs)) {
            out.push_back(wholeStay(stay, std::string(notNoted)));
            continue;
        }
        Parts parts(stay);
        units::Moment from = stay.start;
        do {
            const units::Moment to = std::min(stay.end, endOfBlock(from, clock, hours));
            parts.of(hourBlock(from, clock, hours)).rodHours +=
                stay.rods.value_or(0) * hoursIn(to - from);
            from = to;
        } while (from < stay.end);
        for (const Fish& run : stay.runs) {
            const units::Moment time = within(stay, run.time.value_or(stay.start));
            parts.of(hourBlock(time, clock, hours)).runs.push_back(&run);
        }
        parts.giveTo(out);
    }
    return out;
}

std::vector<GroupedStay> byBait(std::span<const Stay> log) {
    std::vector<GroupedStay> out;
    for (const Stay& stay : log) {
        std::vector<std::string> baits = baitsIn(stay.bait);
        for (const Fish& run : stay.runs) {
            std::string bait = baitOf(run);
            if (!bait.empty() && std::ranges::find(baits, bait) == baits.end()) {
                baits.push_back(std::move(bait));
            }
        }
        if (baits.empty()) {
            baits.emplace_back(notNoted);
        }
        Parts parts(stay);
        for (const std::string& bait : baits) {
            parts.of(bait).rodHours =
                stay.rodHours().value_or(0.0) / static_cast<double>(baits.size());
        }
        for (const Fish& run : stay.runs) {
            const std::string only = baits.size() == 1 ? baits.front() : std::string(notNoted);
            const std::string bait = baitOf(run);
            parts.of(bait.empty() ? only : bait).runs.push_back(&run);
        }
        parts.giveTo(out);
    }
    return out;
}

std::string windEighth(units::Bearing from) {
    const auto nearest = static_cast<std::size_t>(std::lround(from.inDegrees() / 45.0));
    return eighths[nearest % eighths.size()];
}

std::vector<GroupedStay> byWind(std::span<const Stay> log) {
    std::vector<GroupedStay> out;
    for (const Stay& stay : log) {
        out.push_back(wholeStay(stay, windGroup(stay.conditions)));
    }
    return out;
}

std::vector<GroupedStay> byMonth(std::span<const Stay> log, const units::Clock& clock) {
    std::vector<GroupedStay> out;
    for (const Stay& stay : log) {
        const auto month = static_cast<unsigned>(clock.dayOf(stay.start).month());
        out.push_back(wholeStay(stay, months[month - 1]));
    }
    return out;
}

std::vector<std::string> windOrder() {
    std::vector<std::string> order(eighths.begin(), eighths.end());
    order.emplace_back(calm);
    order.emplace_back(notNoted);
    return order;
}

std::vector<std::string> monthOrder() {
    return {months.begin(), months.end()};
}

std::vector<GroupedStay> byTemperature(std::span<const Stay> log) {
    std::vector<GroupedStay> out;
    for (const Stay& stay : log) {
        const auto& water = stay.conditions.waterTemperature;
        out.push_back(wholeStay(stay, water ? stepName(stepOf(*water)) : std::string(notNoted)));
    }
    return out;
}

std::vector<std::string> temperatureOrder() {
    std::vector<std::string> order;
    for (int step = stepOf(units::coldestWater); step <= stepOf(units::warmestWater); ++step) {
        order.push_back(stepName(step));
    }
    order.emplace_back(notNoted);
    return order;
}

} // namespace rates
