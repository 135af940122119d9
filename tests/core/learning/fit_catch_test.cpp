// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/fit_catch.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include <gtest/gtest.h>

namespace {

using learning::CatchModel;
using learning::Features;
using learning::FitSettings;
using learning::Group;
using learning::Observation;

CatchModel fitted(const std::vector<Observation>& stays, const FitSettings& settings = {}) {
    base::Progress progress;
    return learning::fitCatch(stays, settings, progress).value().model();
}

Features section(int number) {
    return {{Group::section, number, 1.0}};
}

/// `trips` days of one stay of `rodHours` in each of two sections, the first with `fish` a stay.
std::vector<Observation> twoSections(int trips, int fish, double rodHours = 4.0) {
    std::vector<Observation> stays;
    for (int day = 0; day < trips; ++day) {
        stays.push_back({section(0), rodHours, fish, day});
        stays.push_back({section(1), rodHours, 0, day});
    }
    return stays;
}

base::Error errorOf(const Observation& stay) {
    base::Progress progress;
    const auto fit = learning::fitCatch({stay}, {}, progress);
    return fit ? base::Error{} : fit.error();
}

/// A step of the equations solved by hand: one stay, no features. What is sought makes the slope of
/// the log likelihood and both priors nought.
TEST(FittedCatch, OfOneStayIsWhereItsOwnSlopeVanishes) {
    const std::vector<Observation> stays{{{}, 5.0, 3, 0}};
    FitSettings settings;
    settings.enough = 1e-10;
    const CatchModel model = fitted(stays, settings);
    const double theta = model.weights()[0];
    const double luck = theta * 0.36 / 0.64; // Both share the slope by their prior variances.
    const double eta = std::log(0.1) - 0.5 * (0.64 + 0.36) + theta + luck;
    const double variance = 1.0 / (1.0 / (0.64 + 0.36) + (3.0 - theta / 0.64));
    // The curvature at the fit is the expectation there, which is fish - slope of the prior.
    EXPECT_NEAR(5.0 * std::exp(eta + 0.5 * variance), 3.0 - theta / 0.64, 2e-2);
    const double expected = 5.0 * std::exp(eta + 0.5 * variance);
    EXPECT_NEAR(model.covariance().at(0, 0), 0.64 - 0.64 * 0.64 / (0.64 + 0.36 + 1.0 / expected),
                2e-3);
}

/// Beside a belief the slopes vanish elsewhere, with the variances of the log alone.
TEST(CatchFit, BesideABeliefIsWhereTheSlopeVanishesWithIt) {
    base::Progress quiet;
    FitSettings settings;
    settings.enough = 1e-10;
    const learning::CatchFit fit = learning::fitCatch({{{}, 5.0, 3, 0}}, settings, quiet).value();
    const double before = fit.model().weights()[0];
    const double variance = 1.0 / (1.0 / (0.64 + 0.36) + (3.0 - before / 0.64));
    for (const double belief : {-1.2, -0.1, 0.3, 2.0}) {
        const double theta = fit.besideBeliefs(std::array{belief}).weights()[0];
        const double eta =
            std::log(0.1) - 0.5 * (0.64 + 0.36) + belief + theta * (1.0 + 0.36 / 0.64);
        EXPECT_NEAR(5.0 * std::exp(eta + 0.5 * variance), 3.0 - theta / 0.64, 2e-2) << belief;
    }
}

TEST(CatchFit, TakesBackWhatTheLogDoesNotBearOut) {
    base::Progress quiet;
    const auto stays = twoSections(30, 1);
    const learning::CatchFit fit = learning::fitCatch(stays, {}, quiet).value();
    // The first section is held for better by a fifth, and was better before that.
    std::vector<double> beliefs;
    for (std::size_t i = 0; i < stays.size(); ++i) {
        beliefs.push_back(i % 2 == 0 ? 0.2 : 0.0);
    }
    const CatchModel beside = fit.besideBeliefs(beliefs);
    const double alone = fit.model().expect(section(0)).rate();
    const double believed = beside.expect(section(0)).rate() * std::exp(0.2);
    EXPECT_GT(believed, alone);
    EXPECT_LT(believed, 1.05 * alone) << "thirty trips know better";
    EXPECT_EQ(beside.expect(section(0)).variance, fit.model().expect(section(0)).variance);
}

TEST(CatchFit, WithoutBeliefsIsTheLogAlone) {
    base::Progress quiet;
    const learning::CatchFit fit = learning::fitCatch(twoSections(3, 2), {}, quiet).value();
    const CatchModel beside = fit.besideBeliefs(std::vector<double>(6, 0.0));
    EXPECT_TRUE(std::ranges::equal(beside.weights(), fit.model().weights()));
    EXPECT_TRUE(learning::CatchFit().besideBeliefs({}).isEmpty());
}

TEST(FittedCatch, OfNothingIsTheEmptyModel) {
    EXPECT_TRUE(fitted({}).isEmpty());
    EXPECT_FALSE(fitted(twoSections(1, 0)).isEmpty());
}

TEST(FittedCatch, ExpectsMoreWhereMoreWasCaughtAndTheMeanWhereNobodyFished) {
    const CatchModel model = fitted(twoSections(12, 3));
    const double good = model.expect(section(0)).rate();
    const double untried = model.expect(section(7)).rate();
    const double blank = model.expect(section(1)).rate();
    EXPECT_GT(good, 1.5 * untried);
    EXPECT_GT(untried, 1.5 * blank);
    EXPECT_NEAR(untried, model.mean().rate(), 1e-12);
}

TEST(FittedCatch, ComesNearTheTrueRateAfterManyTrips) {
    // 3 fish in 4 rod-hours, trip after trip.
    EXPECT_NEAR(fitted(twoSections(120, 3)).expect(section(0)).rate(), 0.75, 0.06);
    EXPECT_NEAR(fitted(twoSections(120, 12)).expect(section(0)).rate(), 3.0, 0.2);
}

TEST(FittedCatch, GrowsSurerWithEveryTrip) {
    double width = INFINITY;
    for (const int trips : {1, 3, 10, 30, 100}) {
        const double now = fitted(twoSections(trips, 2)).expect(section(0)).variance;
        EXPECT_LT(now, width) << trips;
        width = now;
    }
}

TEST(FittedCatch, CountsBlanksAsMuchAsCatches) {
    const double before = fitted(twoSections(4, 1)).expect(section(1)).rate();
    auto stays = twoSections(4, 1);
    for (int day = 4; day < 10; ++day) {
        stays.push_back({section(1), 4.0, 0, day});
    }
    EXPECT_LT(fitted(stays).expect(section(1)).rate(), before);
}

TEST(FittedCatch, DoesNotDependOnTheOrderOfTheStays) {
    auto stays = twoSections(9, 2);
    const double rate = fitted(stays).expect(section(0)).rate();
    std::ranges::reverse(stays);
    EXPECT_NEAR(fitted(stays).expect(section(0)).rate(), rate, 1e-9);
    EXPECT_EQ(fitted(stays).expect(section(0)).rate(), fitted(stays).expect(section(0)).rate());
}

TEST(FittedCatch, PutsALuckyDayDownToTheDay) {
    // All stays of one day do well, in whatever section: that says little of the section.
    std::vector<Observation> oneDay;
    std::vector<Observation> manyDays;
    for (int k = 0; k < 6; ++k) {
        oneDay.push_back({section(0), 2.0, 2, 0});
        manyDays.push_back({section(0), 2.0, 2, k});
    }
    EXPECT_LT(fitted(oneDay).expect(section(0)).rate(), fitted(manyDays).expect(section(0)).rate());
    EXPECT_GT(fitted(oneDay).expect(section(0)).variance,
              fitted(manyDays).expect(section(0)).variance);
}

TEST(FittedCatch, TakesSizesOfEffectsFromTheLogFromFiveTripsOn) {
    EXPECT_EQ(fitted(twoSections(4, 3)).sizes(), learning::EffectSizes());
    EXPECT_GT(fitted(twoSections(40, 4)).sizes().of(Group::section), 0.5);
    // Where all sections give alike, they are held for alike.
    std::vector<Observation> alike;
    for (int day = 0; day < 60; ++day) {
        alike.push_back({section(day % 10), 8.0, 1 + day % 2, day});
    }
    EXPECT_LT(fitted(alike).sizes().of(Group::section), 0.5);
}

TEST(FittedCatch, RefusesWhatNobodyCanHaveFished) {
    for (const Observation& stay :
         {Observation{{}, 0.0, 0, 0}, Observation{{}, -1.0, 0, 0}, Observation{{}, NAN, 0, 0},
          Observation{{}, 1e7, 0, 0}, Observation{{}, 1.0, -1, 0}, Observation{{}, 1.0, 0, -1},
          Observation{{{Group::wind, 0, NAN}}, 1.0, 0, 0}}) {
        const base::Error error = errorOf(stay);
        EXPECT_EQ(error.kind, base::ErrorKind::wrongUse);
        EXPECT_EQ(error.where, "stay 1");
        EXPECT_FALSE(error.whatToDo.empty());
    }
    base::Progress progress;
    FitSettings settings;
    settings.renewals = -1;
    EXPECT_FALSE(learning::fitCatch({}, settings, progress));
}

TEST(FittedCatch, StaysFiniteWithAnAbsurdCatch) {
    auto stays = twoSections(6, 1);
    stays.push_back({section(0), 0.01, 900'000, 3});
    EXPECT_TRUE(std::isfinite(fitted(stays).expect(section(0)).rate()));
    EXPECT_TRUE(std::isfinite(fitted(stays).expect(section(1)).rate()));
}

TEST(FittedCatch, StopsWhenAsked) {
    class Stopped : public base::Progress {
        [[nodiscard]] bool stopAsked() const override { return true; }
    } stopped;
    const auto fit = learning::fitCatch(twoSections(3, 1), {}, stopped);
    ASSERT_FALSE(fit);
    EXPECT_EQ(fit.error().kind, base::ErrorKind::cancelled);
}

TEST(FittedCatch, HoldsTheTruthInItsIntervalAsOftenAsItSays) {
    // Rates drawn from the prior itself: then the interval has to be right on average.
    std::mt19937 random(20261127);
    std::normal_distribution<double> normal;
    int held = 0;
    int asked = 0;
    for (int water = 0; water < 60; ++water) {
        std::vector<double> log;
        for (int k = 0; k < 8; ++k) {
            log.push_back(0.5 * normal(random) - 0.125);
        }
        const double base = std::log(0.1) + 0.8 * normal(random) - 0.32;
        std::vector<Observation> stays;
        for (int day = 0; day < 20; ++day) {
            const double luck = 0.6 * normal(random) - 0.18;
            for (int k = 0; k < 4; ++k) {
                const int s = (day + 2 * k) % 8;
                std::poisson_distribution<int> fish(
                    4.5 * std::exp(base + log[static_cast<std::size_t>(s)] + luck));
                stays.push_back({section(s), 4.5, fish(random), day});
            }
        }
        const CatchModel model = fitted(stays);
        for (int s = 0; s < 8; ++s) {
            const auto [low, high] = model.expect(section(s)).interval80();
            const double truth = std::exp(base + log[static_cast<std::size_t>(s)]);
            held += truth >= low && truth <= high ? 1 : 0;
            ++asked;
        }
    }
    EXPECT_GT(held, 0.75 * asked);
    EXPECT_LT(held, 0.93 * asked);
}

} // namespace
