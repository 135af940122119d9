// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/count_hour_rates.h"

#include "core/base/number_text.h"
#include "core/rates/chance.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace rates {

namespace {

using std::chrono::milliseconds;

constexpr milliseconds slice = std::chrono::minutes(5); // of a stay: far below any kernel
/// Of more trips several are drawn together, which says as much of their scatter in far less time.
constexpr std::size_t mostDrawnApart = 400;

/// Weighted fish and effort at each point of the day. `effortSquares` is the effort weighted by the
/// kernel squared, which says how much independent effort the weighted one is worth.
struct Sums {
    std::vector<double> fish;
    std::vector<double> rodHours;
    std::vector<double> effortSquares;
    std::vector<double> spent; ///< Effort nearest to each point, through no kernel.

    explicit Sums(std::size_t points)
        : fish(points), rodHours(points), effortSquares(points), spent(points) {}
    void add(const Sums& other) {
        for (std::size_t i = 0; i < fish.size(); ++i) {
            fish[i] += other.fish[i];
            rodHours[i] += other.rodHours[i];
            effortSquares[i] += other.effortSquares[i];
            spent[i] += other.spent[i];
        }
    }
};

/// A bell round the clock, 1 at its peak, at every point of the day.
class Kernel {
public:
    Kernel(double width_h, std::size_t points)
        : width_h_(width_h), points_(points), step_(hourOf(1) / width_h) {
        for (std::size_t k = 0; k <= points / 2; ++k) {
            const double apart = step_ * static_cast<double>(k);
            away_.push_back(std::exp(-0.5 * apart * apart));
        }
        weights_.resize(points);
    }
    [[nodiscard]] double hourOf(std::size_t point) const {
        return 24.0 * static_cast<double>(point) / static_cast<double>(points_);
    }
    [[nodiscard]] std::size_t pointAt(double hour) const { return nearest(hour) % points_; }
    /// The weight of an hour, 0 <= hour <= 24, at each point; until the next call.
    const std::vector<double>& at(double hour) {
        // From point to point exp(-(d - ks)^2 / 2) = exp(-d^2 / 2) exp(ds)^k exp(-(ks)^2 / 2), so
        // that two exponentials give them all: a log of many years has millions of slices.
        const std::size_t middle = nearest(hour);
        const double off = (hour - hourOf(middle)) / width_h_;
        const double here = std::exp(-0.5 * off * off);
        const double up = std::exp(off * step_);
        double later = here;
        double earlier = here;
        weights_[middle % points_] = here;
        for (std::size_t k = 1; 2 * k < points_; ++k) {
            later *= up;
            earlier /= up;
            weights_[(middle + k) % points_] = later * away_[k];
            weights_[(middle + points_ - k) % points_] = earlier * away_[k];
        }
        if (points_ % 2 == 0) { // The point across the day is reached by the shorter way.
            weights_[(middle + points_ / 2) % points_] =
                std::max(later * up, earlier / up) * away_.back();
        }
        return weights_;
    }

private:
    [[nodiscard]] std::size_t nearest(double hour) const {
        return static_cast<std::size_t>(std::lround(hour * static_cast<double>(points_) / 24.0));
    }
    double width_h_;
    std::size_t points_;
    double step_;              ///< From point to point, in widths.
    std::vector<double> away_; ///< So many points from the peak.
    std::vector<double> weights_;
};

/// \param spread fish without a time: they may have come at any time of the stay.
void addEffort(Sums& sums, const logbook::Stay& stay, int spread, const units::Clock& clock,
               Kernel& kernel) {
    const double perRodHour = spread / stay.rodHours().value_or(HUGE_VAL);
    for (units::Moment from = stay.start; from < stay.end; from += slice) {
        const milliseconds length = std::min(slice, stay.end - from);
        const double hour = clock.hourOfDay(from + length / 2);
        const double rodHours =
            stay.rods.value_or(0) * std::chrono::duration<double, std::ratio<3600>>(length).count();
        sums.spent[kernel.pointAt(hour)] += rodHours;
        const std::vector<double>& weights = kernel.at(hour);
        for (std::size_t i = 0; i < weights.size(); ++i) {
            const double seen = rodHours * weights[i];
            sums.rodHours[i] += seen;
            sums.effortSquares[i] += seen * weights[i];
            sums.fish[i] += perRodHour * seen;
        }
    }
}

Sums sumsOf(const logbook::Trip& trip, const units::Clock& clock, Kernel& kernel,
            const HourSettings& settings) {
    Sums sums(static_cast<std::size_t>(settings.points));
    const std::string species = base::lowerCase(base::trimmed(settings.species));
    for (const logbook::Stay* stay : trip.stays) {
        if (!stay->rodHours()) {
            continue; // fish over an effort that nobody knows
        }
        int withoutTime = 0;
        for (const logbook::Fish& run : stay->runs) {
            if (!run.landed ||
                (!species.empty() && base::lowerCase(base::trimmed(run.species)) != species)) {
                continue;
            }
            if (!run.time) {
                ++withoutTime;
                continue;
            }
            const double hour = clock.hourOfDay(std::clamp(*run.time, stay->start, stay->end));
            const std::vector<double>& weights = kernel.at(hour);
            for (std::size_t i = 0; i < weights.size(); ++i) {
                sums.fish[i] += weights[i];
            }
        }
        addEffort(sums, *stay, withoutTime, clock, kernel);
    }
    return sums;
}

/// The rate with the limits that chance alone gives it.
Rate byChance(double fish, double rodHours, double effortSquares) {
    const double worth = rodHours / effortSquares; // Kish's effective size
    const CountLimits limits = countLimits(fish * worth);
    const double tens = rodHours * worth / 10.0;
    return {10.0 * fish / rodHours, limits.low / tens, limits.high / tens};
}

/// How much higher the kernel makes the rate at each point than it finds it, fish per 10 rod-hours:
/// what it does to the curve that it has made.
std::vector<double> flattening(const Sums& all, Kernel& kernel) {
    const std::size_t points = all.fish.size();
    std::vector<double> off(points, 0.0);
    for (std::size_t i = 0; i < points; ++i) {
        double fish = 0.0;
        double rodHours = 0.0;
        const std::vector<double>& weights = kernel.at(kernel.hourOf(i)); // as far to as fro
        for (std::size_t j = 0; j < points; ++j) {
            if (all.spent[j] > 0.0 && all.rodHours[j] > 0.0) {
                const double seen = weights[j] * all.spent[j];
                fish += seen * all.fish[j] / all.rodHours[j];
                rodHours += seen;
            }
        }
        if (rodHours > 0.0 && all.rodHours[i] > 0.0) {
            off[i] = 10.0 * (fish / rodHours - all.fish[i] / all.rodHours[i]);
        }
    }
    return off;
}

/// Farther from any effort than half the kernel's width nothing is known, only drawn on.
bool isFished(const Sums& all, std::size_t point, double width_h) {
    const std::size_t points = all.spent.size();
    const auto reach = static_cast<std::size_t>(0.5 * width_h * static_cast<double>(points) / 24.0);
    for (std::size_t away = 0; away <= reach; ++away) {
        if (all.spent[(point + away) % points] > 0.0 ||
            all.spent[(point + points - away) % points] > 0.0) {
            return true;
        }
    }
    return false;
}

double quantileOf(std::vector<double>& values, double share) {
    const auto rank =
        static_cast<std::ptrdiff_t>(std::lround(share * static_cast<double>(values.size() - 1)));
    std::nth_element(values.begin(), values.begin() + rank, values.end());
    return values[static_cast<std::size_t>(rank)];
}

/// Rates at each point in `draws` logs made of whole trips drawn with replacement.
base::Result<std::vector<std::vector<double>>>
drawnRates(const std::vector<Sums>& trips, const HourSettings& settings, base::Progress& progress) {
    std::mt19937 chance(settings.seed);
    const auto points = static_cast<std::size_t>(settings.points);
    std::vector<std::vector<double>> drawn(points);
    for (int draw = 0; draw < settings.draws; ++draw) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        progress.tell(static_cast<double>(draw) / settings.draws);
        Sums sums(points);
        for (std::size_t k = 0; k < trips.size(); ++k) {
            sums.add(trips[chance() % trips.size()]);
        }
        for (std::size_t i = 0; i < points; ++i) {
            if (sums.rodHours[i] > 0.5 * settings.leastRodHours) {
                drawn[i].push_back(10.0 * sums.fish[i] / sums.rodHours[i]);
            }
        }
    }
    return drawn;
}

base::Result<void> checkSettings(const HourSettings& settings) {
    const bool isFine = settings.width_h >= 0.25 && settings.width_h <= 6.0 &&
                        settings.points >= 24 && settings.points <= 288 && settings.draws >= 100 &&
                        settings.draws <= 10000 && settings.leastRodHours > 0.0;
    if (!isFine) {
        return base::fail(base::ErrorKind::wrongUse, "a setting for the hours is out of its range",
                          "", "set it between the limits that its setting names");
    }
    return {};
}

} // namespace

base::Result<HourRates> countHourRates(const logbook::Log& log, const units::Clock& clock,
                                       const HourSettings& settings, base::Progress& progress) {
    if (const auto fine = checkSettings(settings); !fine) {
        return std::unexpected(fine.error());
    }
    const auto points = static_cast<std::size_t>(settings.points);
    Kernel kernel(settings.width_h, points);
    std::vector<Sums> trips;
    std::size_t count = 0;
    Sums all(points);
    for (const logbook::Trip& trip : logbook::tripsOf(log, clock)) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        const Sums sums = sumsOf(trip, clock, kernel, settings);
        all.add(sums);
        if (trips.size() < mostDrawnApart) {
            trips.push_back(sums);
        } else {
            trips[count % mostDrawnApart].add(sums);
        }
        ++count;
    }
    auto drawn = drawnRates(trips, settings, progress);
    if (!drawn) {
        return std::unexpected(drawn.error());
    }
    const std::vector<double> off = flattening(all, kernel);
    HourRates out;
    out.trips = static_cast<int>(count);
    for (std::size_t i = 0; i < points; ++i) {
        HourRate point{kernel.hourOf(i), all.rodHours[i], std::nullopt};
        std::vector<double>& rates = (*drawn)[i];
        if (all.rodHours[i] >= settings.leastRodHours && isFished(all, i, settings.width_h)) {
            point.rate = byChance(all.fish[i], all.rodHours[i], all.effortSquares[i]);
            if (!rates.empty()) {
                point.rate->low = std::min(point.rate->low, quantileOf(rates, 0.025));
                point.rate->high = std::max(point.rate->high, quantileOf(rates, 0.975));
            }
            point.rate->low = std::max(0.0, point.rate->low - std::max(0.0, off[i]));
            point.rate->high += std::max(0.0, -off[i]);
        }
        out.points.push_back(point);
    }
    return out;
}

} // namespace rates
