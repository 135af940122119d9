// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/learning/season.h"

#include "core/water/steps/plan_day.h"

#include <algorithm>
#include <ctime>
#include <numeric>
#include <optional>

namespace learning_bench {

namespace {

constexpr int rods = 3;

/// A mark that is fished, in its turn.
struct Turn {
    TruthPlace place;
    units::Moment arrive;
    units::Moment leave;
};

class Fishing {
public:
    Fishing(const TruthWater& water, const World& world, Angler angler, std::uint32_t seed)
        : truth_(water), world_(world), angler_(angler), water_(water.water()),
          fish_(seed * 7U + 5U), choose_(seed * 13U + 9U) {
        water_.log = {};
        water_.pinnedMarks.clear();
        water_.plan.count = 4;
        water_.plan.tackle.rods = rods;
        water_.plan.weights = {};
        water_.plan.day.levelChange = {};
    }

    Season run(int trips) {
        for (int t = 0; t < trips && season_.failure.empty(); ++t) {
            goOut(t);
        }
        return std::move(season_);
    }

private:
    void goOut(int t) {
        Trip trip;
        const std::vector<double> rates = world_.rates(t);
        std::vector<double> best;
        for (const std::size_t k : bestFour(truth_, rates)) {
            best.push_back(rates[k]);
        }
        std::vector<double> hours(hourTimes.begin(), hourTimes.end());
        std::ranges::sort(hours, std::greater());
        trip.oracle = std::inner_product(best.begin(), best.end(), hours.begin(), 0.0);
        layDay(t);
        const std::vector<Turn> turns = angler_ == Angler::plan ? planned(t, trip) : chosen();
        for (std::size_t k = 0; k < turns.size(); ++k) {
            const double rate =
                world_.rateAt(turns[k].place, t) * hourTimes[std::min<std::size_t>(k, 3)];
            trip.take += rate;
            stay(turns[k], rate * world_.luck(t), t);
        }
        season_.trips.push_back(std::move(trip));
    }

    void layDay(int t) {
        marks::ExpectedDay& day = water_.plan.day;
        const std::chrono::sys_days first(std::chrono::year(2021 + t / tripsOfSeason) / 9 / 1);
        day.day = units::Day(first + std::chrono::days(3 * (t % tripsOfSeason)));
        day.wind = world_.wind(t);
        day.waterTemperature = units::Temperature::celsius(world_.temperature_c(t));
    }

    std::vector<Turn> planned(int t, Trip& trip) {
        base::Progress quiet;
        const std::clock_t before = std::clock();
        const auto plan = water::planDay(water_, truth_.derived(), water_.plan, quiet);
        season_.planSeconds += static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC;
        if (!plan) {
            season_.failure = plan.error().sentence();
            return {};
        }
        for (const marks::Mark& mark : plan->marks) {
            if (mark.expected) {
                trip.said.push_back({mark.expected->per10RodHours, mark.expected->low,
                                     mark.expected->high,
                                     10.0 * world_.rateAt(truth_.at(mark.place), t)});
            }
        }
        std::vector<Turn> turns;
        for (const marks::DayStop& stop : plan->day.stops) {
            const auto mark = std::ranges::find(plan->marks, stop.rank, &marks::Mark::rank);
            turns.push_back({truth_.at(mark->place), stop.arrive, stop.leave});
        }
        return turns;
    }

    /// The simple peers fish four equal turns.
    std::vector<Turn> chosen() {
        std::uniform_real_distribution<double> any(0.0, 1.0);
        std::vector<double> values;
        for (std::size_t k = 0; k < truth_.places().size(); ++k) {
            const double known =
                angler_ == Angler::bestSoFar && effort_.contains(k) ? caught_[k] / effort_[k] : 0.0;
            values.push_back(known + 1e-9 * any(choose_));
        }
        const units::Moment start = water_.clock.at(water_.plan.day.day, water_.plan.day.start);
        std::vector<Turn> turns;
        for (const std::size_t k : bestFour(truth_, values)) {
            const auto from = start + turns.size() * std::chrono::hours(2);
            turns.push_back({truth_.places()[k], from, from + std::chrono::minutes(100)});
            atPlace_.push_back(k);
        }
        return turns;
    }

    void stay(const Turn& turn, double rate, int t) {
        logbook::Stay stay;
        stay.start = turn.arrive;
        stay.end = turn.leave;
        stay.place = water_.frame->toEarth(turn.place.place);
        stay.rods = rods;
        stay.conditions = {world_.wind(t).from,
                           world_.wind(t).speed,
                           units::Temperature::celsius(world_.temperature_c(t)),
                           std::nullopt,
                           {}};
        const int fish =
            std::poisson_distribution<int>(rate * stay.rodHours().value_or(0.0))(fish_);
        std::uniform_real_distribution<double> when(0.0, 1.0);
        for (int k = 0; k < fish; ++k) {
            logbook::Fish one;
            one.time = stay.start +
                       std::chrono::milliseconds(std::llround(
                           when(fish_) * static_cast<double>((stay.end - stay.start).count())));
            stay.runs.push_back(one);
        }
        std::ranges::sort(stay.runs, {}, &logbook::Fish::time);
        if (!atPlace_.empty()) {
            caught_[atPlace_.front()] += fish;
            effort_[atPlace_.front()] += stay.rodHours().value();
            atPlace_.erase(atPlace_.begin());
        }
        water_.log.push_back(std::move(stay));
    }

    const TruthWater& truth_;
    const World& world_;
    Angler angler_;
    water::Water water_;
    std::mt19937 fish_;
    std::mt19937 choose_;
    Season season_;
    std::map<std::size_t, double> caught_;
    std::map<std::size_t, double> effort_;
    std::vector<std::size_t> atPlace_; ///< Of the stays to come, for the simple peers.
};

} // namespace

Season fish(const TruthWater& water, const World& world, Angler angler, std::uint32_t seed,
            int trips) {
    return Fishing(water, world, angler, seed).run(trips);
}

} // namespace learning_bench
