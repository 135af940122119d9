// SPDX-License-Identifier: GPL-3.0-or-later
// The order of the day against all orders.
#include "core/marks/order_day.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using marks::DayInput;

const units::Moment seven =
    units::Moment(std::chrono::sys_days(std::chrono::year(2026) / 10 / 3)) + 7h;

/// One to seven marks anywhere, with hours, and marks in hours, of any worth; every third day has
/// no launch.
DayInput anyDay(unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> place(-1500.0, 1500.0);
    std::uniform_real_distribution<double> worth(0.1, 2.0);
    DayInput input;
    std::vector<geo::WaterPoint> places(1 + seed % 7);
    const geo::WaterPoint launch{place(random), place(random)};
    for (geo::WaterPoint& one : places) {
        one = {place(random), place(random)};
        input.stops.push_back({static_cast<int>(input.stops.size()) + 1, worth(random)});
        if (seed % 3 != 0) {
            input.fromLaunch_m.push_back(geo::distance_m(launch, one));
        }
    }
    for (const geo::WaterPoint one : places) {
        std::vector<double>& row = input.between_m.emplace_back();
        for (const geo::WaterPoint other : places) {
            row.push_back(geo::distance_m(one, other));
        }
    }
    input.start = seven;
    input.end = seven + 12h;
    std::vector<double> ofHour(13);
    std::ranges::generate(ofHour, [&] { return worth(random); });
    input.hourWeight = [ofHour](units::Moment moment) {
        const auto hour = std::chrono::floor<std::chrono::hours>(moment - seven).count();
        return ofHour[static_cast<std::size_t>(std::clamp<std::int64_t>(hour, 0, 12))];
    };
    if (seed % 2 == 0) {
        std::vector<std::pair<double, double>> ofStop(places.size());
        std::ranges::generate(ofStop, [&] { return std::pair(worth(random), worth(random)); });
        input.stopWeight = [ofStop](std::size_t stop, units::Moment moment) {
            return moment < seven + 6h ? ofStop[stop].first : ofStop[stop].second;
        };
    }
    return input;
}

TEST(OrderOfTheDay, IsTheBestOfAllOrdersOnTwoHundredDays) {
    for (unsigned seed = 1; seed <= 200; ++seed) {
        const DayInput input = anyDay(seed);
        std::vector<std::size_t> order(input.stops.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        double best = -INFINITY;
        do {
            best = std::max(best, marks::worthOf(input, order));
        } while (std::ranges::next_permutation(order).found);
        base::Progress progress;
        const auto plan = marks::orderDay(input, {}, progress);
        ASSERT_TRUE(plan) << "seed " << seed;
        ASSERT_TRUE(plan->leftOut.empty()) << "seed " << seed;
        std::vector<std::size_t> found;
        for (const marks::DayStop& stop : plan->stops) {
            found.push_back(static_cast<std::size_t>(stop.rank - 1));
        }
        EXPECT_NEAR(marks::worthOf(input, found), best, 1e-9) << "seed " << seed;
    }
}

} // namespace
