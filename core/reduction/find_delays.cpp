// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/find_delays.h"

#include "core/reduction/normal_equations.h"
#include "core/reduction/robust.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace reduction {

namespace {

using Kept = soundings::KeptSounding;

/// The depth along the pass of a sounding at some time, and how fast it changes there.
struct Along {
    double depth_m = 0.0;
    double rate_m_s = 0.0;
};

class Passes {
public:
    explicit Passes(std::span<const Kept> kept) : kept_(kept) {}

    /// Time of the place between a sounding and the next.
    [[nodiscard]] double timeAt_s(std::size_t sounding, double share) const {
        return std::lerp(kept_[sounding].time_s, kept_[sounding + 1].time_s, share);
    }

    /// Straight between soundings; nothing beyond the ends of the pass or over a gap.
    [[nodiscard]] std::optional<Along> at(std::size_t sounding, double time_s) const {
        std::size_t i = sounding;
        while (i > 0 && kept_[i - 1].pass == kept_[i].pass && kept_[i].time_s > time_s) {
            --i;
        }
        while (i + 1 < kept_.size() && kept_[i + 1].pass == kept_[i].pass &&
               kept_[i + 1].time_s < time_s) {
            ++i;
        }
        if (i + 1 >= kept_.size() || kept_[i + 1].pass != kept_[i].pass) {
            return std::nullopt;
        }
        const double length_s = kept_[i + 1].time_s - kept_[i].time_s;
        const double share = (time_s - kept_[i].time_s) / length_s;
        constexpr double longestGap_s = 10.0;
        if (!(length_s > 0.0 && length_s <= longestGap_s && share >= 0.0 && share <= 1.0)) {
            return std::nullopt;
        }
        return Along{std::lerp(kept_[i].depth_m, kept_[i + 1].depth_m, share), rateNear(i)};
    }

private:
    /// Over some seconds, so that the steps of the sounder's display even out.
    [[nodiscard]] double rateNear(std::size_t i) const {
        constexpr double reach_s = 2.0;
        std::size_t first = i;
        std::size_t last = i + 1;
        while (first > 0 && kept_[first - 1].pass == kept_[i].pass &&
               kept_[i].time_s - kept_[first].time_s < reach_s) {
            --first;
        }
        while (last + 1 < kept_.size() && kept_[last + 1].pass == kept_[i].pass &&
               kept_[last].time_s - kept_[i + 1].time_s < reach_s) {
            ++last;
        }
        const double length_s = kept_[last].time_s - kept_[first].time_s;
        return length_s > 0.0 ? (kept_[last].depth_m - kept_[first].depth_m) / length_s : 0.0;
    }

    std::span<const Kept> kept_;
};

/// Two passes at a crossing with their delays taken out.
struct Misfit {
    std::size_t dayA = 0;
    std::size_t dayB = 0;
    double difference_m = 0.0; ///< B minus A.
    double rateA_m_s = 0.0;
    double rateB_m_s = 0.0;
};

std::vector<Misfit> misfitsAt(const Passes& passes, std::span<const Crossing> crossings,
                              const std::vector<double>& delays_s) {
    std::vector<Misfit> misfits;
    for (const Crossing& crossing : crossings) {
        const auto dayA = static_cast<std::size_t>(crossing.dayA);
        const auto dayB = static_cast<std::size_t>(crossing.dayB);
        const auto a =
            passes.at(crossing.soundingA,
                      passes.timeAt_s(crossing.soundingA, crossing.shareA) - delays_s[dayA]);
        const auto b =
            passes.at(crossing.soundingB,
                      passes.timeAt_s(crossing.soundingB, crossing.shareB) - delays_s[dayB]);
        if (a && b) {
            misfits.push_back({dayA, dayB, b->depth_m - a->depth_m, a->rate_m_s, b->rate_m_s});
        }
    }
    return misfits;
}

std::vector<double> differences(const std::vector<Misfit>& misfits,
                                const std::vector<double>& offsets_m) {
    std::vector<double> left_m;
    for (const Misfit& misfit : misfits) {
        left_m.push_back(misfit.difference_m + offsets_m[misfit.dayB] - offsets_m[misfit.dayA]);
    }
    return left_m;
}

double huberWeight(double misfit_m, double sigma_m) {
    constexpr double huber = 1.5;
    const double size = std::fabs(misfit_m) / (huber * sigma_m);
    return size > 1.0 ? 1.0 / size : 1.0;
}

/// Delays and offsets of the days, moved step by step to where the crossings agree best.
class Fit {
public:
    Fit(const Passes& passes, std::span<const Crossing> crossings, std::size_t days)
        : passes_(&passes), crossings_(crossings), delays_s(days, 0.0), offsets_m(days, 0.0),
          errors_s(days, 0.0) {}

    /// One delay for all days, the best of a row: so that the steps begin near enough.
    void startFrom(double longest_s) {
        constexpr double step_s = 0.25;
        const auto steps = static_cast<int>(std::floor(longest_s / step_s));
        double best = 1e300;
        double bestDelay_s = 0.0;
        for (int k = -steps; k <= steps; ++k) {
            const std::vector<double> all(delays_s.size(), step_s * k);
            const auto misfits = misfitsAt(*passes_, crossings_, all);
            // Ends of passes drop out with long delays; a figure from few crossings is none.
            if (misfits.size() * 2 < crossings_.size() || misfits.empty()) {
                continue;
            }
            const auto left_m = differences(misfits, offsets_m);
            const double spread_m = robustSigma(left_m, medianOf(left_m));
            if (spread_m < best - 1e-9) {
                best = spread_m;
                bestDelay_s = step_s * k;
            }
        }
        std::ranges::fill(delays_s, bestDelay_s);
    }

    void settle(double longest_s) {
        constexpr int most = 20;
        constexpr double still_s = 1e-3;
        for (int n = 0; n < most && step(longest_s) > still_s; ++n) {
        }
    }

    [[nodiscard]] double sigma_m() const {
        const auto left_m = differences(misfitsAt(*passes_, crossings_, delays_s), offsets_m);
        return left_m.empty() ? 0.0 : robustSigma(left_m, 0.0);
    }

private:
    /// Moves the unknowns; gives the largest move of a delay.
    double step(double longest_s) {
        const auto misfits = misfitsAt(*passes_, crossings_, delays_s);
        if (misfits.empty()) {
            return 0.0;
        }
        const auto left_m = differences(misfits, offsets_m);
        constexpr double least_m = 0.01;
        const double spread_m = std::fmax(least_m, robustSigma(left_m, 0.0));
        const std::size_t days = delays_s.size();
        NormalEquations equations(2 * days);
        for (std::size_t d = 0; d < days; ++d) {
            // What no crossing tells stays where it is.
            constexpr double freely_s = 3.0;
            constexpr double freely_m = 3.0;
            equations.add({{d, 1.0}}, 0.0, spread_m * spread_m / (freely_s * freely_s));
            equations.add({{days + d, 1.0}}, 0.0, spread_m * spread_m / (freely_m * freely_m));
        }
        for (std::size_t i = 0; i < misfits.size(); ++i) {
            const Misfit& one = misfits[i];
            std::vector<NormalEquations::Term> terms{{one.dayA, one.rateA_m_s},
                                                     {one.dayB, -one.rateB_m_s}};
            if (one.dayA == one.dayB) {
                terms = {{one.dayA, one.rateA_m_s - one.rateB_m_s}};
            } else {
                terms.push_back({days + one.dayA, -1.0});
                terms.push_back({days + one.dayB, 1.0});
            }
            equations.add(terms, -left_m[i], huberWeight(left_m[i], spread_m));
        }
        const auto solution = equations.solve();
        double largest_s = 0.0;
        for (std::size_t d = 0; d < days; ++d) {
            const double move_s = std::clamp(solution.values[d], -1.0, 1.0);
            delays_s[d] = std::clamp(delays_s[d] + move_s, -longest_s, longest_s);
            offsets_m[d] += solution.values[days + d];
            errors_s[d] = spread_m * solution.errors[d];
            largest_s = std::fmax(largest_s, std::fabs(move_s));
        }
        return largest_s;
    }

    const Passes* passes_;
    std::span<const Crossing> crossings_;

public:
    std::vector<double> delays_s;
    std::vector<double> offsets_m;
    std::vector<double> errors_s;
};

/// Crossings of the day that lie on a slope on at least one of its passes: only these tell.
std::vector<std::size_t> tellingOf(const std::vector<Misfit>& misfits, std::size_t days) {
    constexpr double least_m_s = 0.02;
    std::vector<std::size_t> counts(days, 0);
    for (const Misfit& one : misfits) {
        const bool isOneDay = one.dayA == one.dayB;
        if (isOneDay) {
            counts[one.dayA] += std::fabs(one.rateA_m_s - one.rateB_m_s) > least_m_s ? 1U : 0U;
        } else {
            counts[one.dayA] += std::fabs(one.rateA_m_s) > least_m_s ? 1U : 0U;
            counts[one.dayB] += std::fabs(one.rateB_m_s) > least_m_s ? 1U : 0U;
        }
    }
    return counts;
}

} // namespace

base::Result<std::vector<PositionDelay>> findDelays(std::span<const Kept> kept,
                                                    std::span<const Crossing> crossings,
                                                    std::size_t days, const DelaySettings& settings,
                                                    base::Progress& progress) {
    if (settings.leastCrossings < 5 || settings.leastCrossings > 1000 ||
        !(settings.longest_s >= 1.0 && settings.longest_s <= 30.0)) {
        return base::fail(base::ErrorKind::wrongUse, "a setting is out of its range",
                          "leastCrossings or longest_s", "choose 5 to 1000, and 1 to 30 s");
    }
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    std::vector<PositionDelay> found(days);
    const Passes passes(kept);
    const std::vector<double> none(days, 0.0);
    const auto asTheyAre = misfitsAt(passes, crossings, none);
    if (asTheyAre.empty()) {
        return found;
    }
    Fit fit(passes, crossings, days);
    fit.startFrom(settings.longest_s);
    fit.settle(settings.longest_s);
    const auto counts = tellingOf(asTheyAre, days);
    const auto left_m = differences(asTheyAre, fit.offsets_m);
    const double before_m = robustSigma(left_m, 0.0);
    const double after_m = fit.sigma_m();
    constexpr double mostError_s = 0.5;
    for (std::size_t d = 0; d < days; ++d) {
        found[d].crossings = counts[d];
        found[d].delay_s = fit.delays_s[d];
        found[d].error_s = fit.errors_s[d];
        found[d].rmsBefore_m = before_m;
        found[d].rmsAfter_m = after_m;
        found[d].isKnown = counts[d] >= settings.leastCrossings && fit.errors_s[d] < mostError_s;
    }
    return found;
}

} // namespace reduction
