// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/count_hour_rates.h"
#include "core/rates/count_rates.h"

#include <cmath>
#include <functional>
#include <numbers>
#include <random>
#include <string>
#include <vector>

namespace support {

/// A season made up by known rates: each trip some stays, in the month that it falls in or in
/// sections by lot.
struct Season {
    std::vector<double> perRodHour; ///< By row.
    bool isByMonth = true;
    double dayShape = 0.0; ///< Of the gamma factor of a day; 0: no day effect.
    int trips = 30;
};

inline units::Day dayOfSeason(int number) {
    return std::chrono::sys_days(std::chrono::year(2026) / 4 / 1) + std::chrono::days(number);
}

/// A factor of mean 1 that all fish of one day have in common.
inline double luckOfDay(double dayShape, std::mt19937& chance) {
    if (!(dayShape > 0.0)) {
        return 1.0;
    }
    std::gamma_distribution<double> luck(dayShape, 1.0 / dayShape);
    return luck(chance);
}

/// The rows' names lead back to their numbers.
inline rates::RateTable countedSeason(const Season& season, std::mt19937& chance) {
    const auto rows = static_cast<int>(season.perRodHour.size());
    logbook::Log log;
    std::vector<int> rowOf;
    for (int trip = 0; trip < season.trips; ++trip) {
        const double factor = luckOfDay(season.dayShape, chance);
        const int stays = 2 + static_cast<int>(chance() % 4);
        for (int k = 0; k < stays; ++k) {
            logbook::Stay stay;
            stay.rods = 3;
            stay.start =
                std::chrono::sys_days(dayOfSeason(7 * trip)) + std::chrono::hours(6 + 2 * k);
            stay.end = stay.start + std::chrono::minutes(40 + chance() % 100);
            rowOf.push_back(season.isByMonth ? std::min(rows - 1, trip * rows / season.trips)
                                             : static_cast<int>(chance() % rows));
            std::poisson_distribution<int> fish(
                factor * season.perRodHour[static_cast<std::size_t>(rowOf.back())] *
                stay.rodHours().value());
            stay.runs.resize(static_cast<std::size_t>(fish(chance)));
            log.push_back(stay);
        }
    }
    std::vector<rates::GroupedStay> parts;
    for (std::size_t i = 0; i < log.size(); ++i) {
        parts.push_back(rates::wholeStay(log[i], std::to_string(rowOf[i])));
    }
    base::Progress quiet;
    return rates::countRates(parts, {}, quiet).value();
}

/// Shares of the intervals that hold the truth, and of seasons in which some row is told apart.
struct Held {
    double exact = 0.0;
    double steadied = 0.0;
    double toldApart = 0.0;
};

inline Held heldIn(const std::function<Season(std::mt19937&)>& make, int seasons,
                   unsigned seed = 20261127) {
    std::mt19937 chance(seed);
    Held held;
    int rows = 0;
    for (int k = 0; k < seasons; ++k) {
        const Season season = make(chance);
        const rates::RateTable table = countedSeason(season, chance);
        bool isTold = false;
        for (const rates::RateRow& row : table.rows) {
            const double truth = 10.0 * season.perRodHour[std::stoul(row.name)];
            held.exact += row.rate->low <= truth && truth <= row.rate->high ? 1.0 : 0.0;
            held.steadied += row.shrunk->low <= truth && truth <= row.shrunk->high ? 1.0 : 0.0;
            isTold = isTold || row.pAgainstTheRest.value_or(1.0) < 0.05;
            ++rows;
        }
        held.toldApart += isTold ? 1.0 : 0.0;
    }
    return {held.exact / rows, held.steadied / rows, held.toldApart / seasons};
}

inline Season alikeSeason(bool isByMonth, double dayShape, int rows = 7) {
    return {std::vector<double>(static_cast<std::size_t>(rows), 0.25), isByMonth, dayShape, 30};
}

/// Thirty trips from 6 to 18 o'clock with two rods, at a rate that peaks at some hour.
struct HourlyRate {
    double peak = 9.0;
    double base = 0.05;   ///< Fish per rod-hour.
    double height = 0.35; ///< Added to it at the peak.
    double width_h = 1.5;

    [[nodiscard]] double at(double hour) const {
        const double off = std::remainder(hour - peak, 24.0) / width_h;
        return base + height * std::exp(-0.5 * off * off);
    }
};

inline logbook::Log logOfHours(const HourlyRate& rate, int trips, double dayShape,
                               std::mt19937& chance) {
    logbook::Log log;
    std::uniform_real_distribution<double> even(0.0, 1.0);
    for (int trip = 0; trip < trips; ++trip) {
        logbook::Stay stay;
        stay.rods = 2;
        stay.start = std::chrono::sys_days(dayOfSeason(7 * trip)) + std::chrono::hours(6);
        stay.end = stay.start + std::chrono::hours(12);
        const double factor = luckOfDay(dayShape, chance);
        for (int minute = 0; minute < 720; ++minute) {
            if (even(chance) < 2.0 * factor * rate.at(6.0 + minute / 60.0) / 60.0) {
                logbook::Fish fish;
                fish.time = stay.start + std::chrono::minutes(minute);
                stay.runs.push_back(fish);
            }
        }
        log.push_back(stay);
    }
    return log;
}

/// Share of logs whose best hour is within half an hour of the truth, and of fished hours at which
/// the band covers the true rate.
struct HoursHeld {
    double peak = 0.0;
    double covered = 0.0;
    double wholeCurve = 0.0; ///< Share of logs whose band covers 90 % of the fished hours.
};

inline HoursHeld hoursHeldIn(int logs, double dayShape, unsigned seed = 20261127) {
    std::mt19937 chance(seed);
    std::uniform_real_distribution<double> hour(7.5, 16.5);
    HoursHeld held;
    double points = 0.0;
    for (int k = 0; k < logs; ++k) {
        HourlyRate truth;
        truth.peak = hour(chance);
        base::Progress quiet;
        const auto found =
            rates::countHourRates(logOfHours(truth, 30, dayShape, chance), {}, {}, quiet).value();
        double inside = 0.0;
        double fished = 0.0;
        for (const rates::HourRate& point : found.points) {
            if (!point.rate || point.hour < 6.0 || point.hour > 18.0) {
                continue;
            }
            const double rate = 10.0 * truth.at(point.hour);
            inside += point.rate->low <= rate && rate <= point.rate->high ? 1.0 : 0.0;
            fished += 1.0;
        }
        held.peak += std::abs(found.peakHour().value_or(-24.0) - truth.peak) <= 0.5 ? 1.0 : 0.0;
        held.wholeCurve += inside >= 0.9 * fished ? 1.0 : 0.0;
        held.covered += inside;
        points += fished;
    }
    return {held.peak / logs, held.covered / points, held.wholeCurve / logs};
}

} // namespace support
