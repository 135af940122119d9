// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/order_day.h"

#include "core/marks/turns.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace marks {

namespace {

double secondsBetween(units::Moment from, units::Moment to) {
    return std::chrono::duration<double>(to - from).count();
}

units::Moment later(units::Moment from, double seconds) {
    return from + std::chrono::seconds(std::llround(seconds));
}

base::Result<void> check(const DayInput& input, const DaySettings& settings) {
    const auto refuse = [](const char* what, const char* whatToDo) {
        return base::fail(base::ErrorKind::wrongUse, what, "the day", whatToDo);
    };
    if (input.end < input.start) {
        return refuse("the day ends before it starts", "choose a later end");
    }
    if (!(input.boatSpeed.inMetresPerSecond() >= 0.1)) {
        return refuse("the boat would never arrive", "choose a boat speed of 0.3 to 8 m/s");
    }
    if (settings.leastStay < std::chrono::minutes(5) ||
        settings.leastStay > std::chrono::hours(8)) {
        return refuse("the least stay is out of its range", "choose 5 minutes to 8 hours");
    }
    if (settings.atTheRopes < std::chrono::seconds(0) ||
        settings.atTheRopes > std::chrono::hours(2)) {
        return refuse("the time at the ropes is out of its range", "choose 0 to 2 hours");
    }
    const auto isWrong = [](const std::optional<std::chrono::seconds>& stay) {
        return stay && (*stay < std::chrono::minutes(5) || *stay > std::chrono::hours(12));
    };
    if (isWrong(input.stay) || std::ranges::any_of(input.stops, isWrong, &DayInput::Stop::stay)) {
        return refuse("the stay is out of its range", "choose 5 minutes to 12 hours");
    }
    if (settings.exactUpTo < 0 || settings.exactUpTo > 14) {
        return refuse("an exact order of so many stops takes too long", "choose up to 14");
    }
    const std::size_t n = input.stops.size();
    const bool isSquare =
        input.between_m.size() == n &&
        std::ranges::all_of(input.between_m, [n](const auto& row) { return row.size() == n; });
    if (!isSquare || !(input.fromLaunch_m.empty() || input.fromLaunch_m.size() == n)) {
        return refuse("the distances do not fit the marks", "give one for each pair of marks");
    }
    std::vector<std::size_t> all(input.byHand.empty() ? 0 : n);
    std::iota(all.begin(), all.end(), std::size_t{0});
    if (!std::ranges::is_permutation(input.byHand, all)) {
        return refuse("the order by hand does not fit the marks", "give each mark once");
    }
    return {};
}

/// Stops that the boat can get to, best score first: from the launch, or, where there is none, from
/// the best stop.
std::vector<std::size_t> reachable(const DayInput& input) {
    std::vector<std::size_t> order(input.stops.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&input](std::size_t a, std::size_t b) {
        const DayInput::Stop& s = input.stops[a];
        const DayInput::Stop& t = input.stops[b];
        return s.score != t.score ? s.score > t.score : s.rank < t.rank;
    });
    std::vector<std::size_t> going;
    for (const std::size_t k : order) {
        const bool fromLaunch = input.fromLaunch_m.empty() || std::isfinite(input.fromLaunch_m[k]);
        const bool amongThem = std::ranges::all_of(going, [&input, k](std::size_t other) {
            return std::isfinite(input.between_m[other][k]) &&
                   std::isfinite(input.between_m[k][other]);
        });
        if (fromLaunch && amongThem) {
            going.push_back(k);
        }
    }
    return going;
}

double movesOf_m(const DayInput& input, const std::vector<std::size_t>& order) {
    if (order.empty()) {
        return 0.0;
    }
    double sum_m = 0.0;
    for (std::size_t k = 1; k < order.size(); ++k) {
        sum_m += input.between_m[order[k - 1]][order[k]];
    }
    if (!input.fromLaunch_m.empty()) {
        sum_m += input.fromLaunch_m[order.front()] + input.fromLaunch_m[order.back()];
    }
    return sum_m;
}

std::optional<std::chrono::seconds> wantedAt(const DayInput& input, std::size_t stop) {
    return input.stops[stop].stay ? input.stops[stop].stay : input.stay;
}

/// The time of a day for its stops.
struct Shares {
    double wanted_s = 0.0; ///< Of those whose stay is wanted so, the time at the ropes with it.
    double left_s = 0.0;   ///< For the others, once the moves are made as well.
    std::size_t others = 0;

    Shares(const DayInput& input, const DaySettings& settings,
           const std::vector<std::size_t>& order) {
        for (const std::size_t stop : order) {
            const auto wanted = wantedAt(input, stop);
            others += wanted ? 0U : 1U;
            wanted_s += wanted ? static_cast<double>((*wanted + settings.atTheRopes).count()) : 0.0;
        }
        left_s = secondsBetween(input.start, input.end) - wanted_s -
                 movesOf_m(input, order) / input.boatSpeed.inMetresPerSecond();
    }
    [[nodiscard]] bool suffice(std::chrono::seconds leastStop) const {
        return left_s >= static_cast<double>(others) * static_cast<double>(leastStop.count());
    }
    [[nodiscard]] double each_s() const { return left_s / static_cast<double>(others); }
};

/// The day as long as its stops take where the length of all is wanted so; their hours are then
/// weighed.
DayInput heldToStays(const DayInput& input, const DaySettings& settings,
                     const std::vector<std::size_t>& stops) {
    DayInput held = input;
    const Shares shares(input, settings, stops);
    if (shares.others == 0) {
        held.end = std::min(held.end, later(held.start, shares.wanted_s));
    }
    return held;
}

/// Those of the user's order that the boat goes to.
std::vector<std::size_t> byHandAmong(const std::vector<std::size_t>& byHand,
                                     const std::vector<std::size_t>& going) {
    std::vector<std::size_t> order;
    std::ranges::copy_if(byHand, std::back_inserter(order), [&going](std::size_t stop) {
        return std::ranges::find(going, stop) != going.end();
    });
    return order;
}

std::vector<std::size_t> orderFound(const DayInput& input, const DaySettings& settings,
                                    const std::vector<std::size_t>& going) {
    const DayInput held = heldToStays(input, settings, going);
    const Turns turns(held, going);
    return going.size() <= static_cast<std::size_t>(settings.exactUpTo) ? turns.bestOrder(going)
                                                                        : turns.goodOrder(going);
}

DayPlan planOf(const DayInput& input, const DaySettings& settings,
               const std::vector<std::size_t>& order) {
    DayPlan plan;
    plan.moves = units::Length::metres(movesOf_m(input, order));
    if (order.empty()) {
        return plan;
    }
    const Shares shares(input, settings, order);
    const double speed = input.boatSpeed.inMetresPerSecond();
    double clock_s = 0.0;
    for (std::size_t k = 0; k < order.size(); ++k) {
        DayStop stop;
        stop.rank = input.stops[order[k]].rank;
        double move_m = 0.0;
        if (k > 0) {
            move_m = input.between_m[order[k - 1]][order[k]];
        } else if (!input.fromLaunch_m.empty()) {
            move_m = input.fromLaunch_m[order[k]];
        }
        stop.move = units::Length::metres(move_m);
        clock_s += move_m / speed;
        const auto wanted = wantedAt(input, order[k]);
        const double ropes_s = static_cast<double>(settings.atTheRopes.count());
        const double stop_s =
            wanted ? static_cast<double>(wanted->count()) + ropes_s : shares.each_s();
        stop.arrive = later(input.start, clock_s);
        clock_s += stop_s;
        stop.leave = later(input.start, clock_s);
        stop.stay = std::chrono::seconds(std::llround(std::max(0.0, stop_s - ropes_s)));
        stop.isStayByHand = input.stops[order[k]].stay.has_value();
        plan.stops.push_back(stop);
    }
    return plan;
}

void noteDarkHours(const DayInput& input, DayPlan& plan) {
    if (!input.light || plan.stops.empty()) {
        return;
    }
    const light::SunTimes& sun = *input.light;
    const double speed = input.boatSpeed.inMetresPerSecond();
    const double home_m =
        plan.moves.inMetres() - std::accumulate(plan.stops.begin(), plan.stops.end(), 0.0,
                                                [](double sum_m, const DayStop& stop) {
                                                    return sum_m + stop.move.inMetres();
                                                });
    const units::Moment home = later(plan.stops.back().leave, home_m / speed);
    if (sun.civilDawn && input.start < *sun.civilDawn) {
        plan.dark.startsInTheDark = true;
    }
    if (sun.civilDusk && home > *sun.civilDusk) {
        plan.dark.home = DarkHours::Home::inTheDark;
    } else if (sun.sunset && home > *sun.sunset) {
        plan.dark.home = DarkHours::Home::afterSunset;
    }
}

} // namespace

double worthOf(const DayInput& input, const std::vector<std::size_t>& order) {
    return Turns(input, order).worthOf(order);
}

base::Result<DayPlan> orderDay(const DayInput& input, const DaySettings& settings,
                               base::Progress& progress) {
    if (auto fine = check(input, settings); !fine) {
        return std::unexpected(fine.error());
    }
    std::vector<std::size_t> going = reachable(input);
    std::vector<std::size_t> order;
    while (!going.empty()) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        order = input.byHand.empty() ? orderFound(input, settings, going)
                                     : byHandAmong(input.byHand, going);
        if (Shares(input, settings, order).suffice(settings.leastStay + settings.atTheRopes)) {
            break;
        }
        going.pop_back();
        order.clear();
    }
    DayPlan plan = planOf(input, settings, order);
    for (std::size_t k = 0; k < input.stops.size(); ++k) {
        if (std::ranges::find(order, k) == order.end()) {
            plan.leftOut.push_back(input.stops[k].rank);
        }
    }
    std::ranges::sort(plan.leftOut);
    plan.leastStay = input.stay.value_or(settings.leastStay);
    plan.isOrderByHand = !input.byHand.empty();
    noteDarkHours(input, plan);
    return plan;
}

} // namespace marks
