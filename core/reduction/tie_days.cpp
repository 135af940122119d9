// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/tie_days.h"

#include "core/reduction/normal_equations.h"
#include "core/reduction/robust.h"

#include <algorithm>
#include <cmath>

namespace reduction {

namespace {

/// The unknown offsets of the days that are tied and not held.
class Adjustment {
public:
    Adjustment(std::span<const Crossing> crossings, const DayTie& tie)
        : column_(tie.isTied.size(), none) {
        for (std::size_t d = 0; d < tie.isTied.size(); ++d) {
            if (tie.isTied[d] && !tie.isHeld[d]) {
                column_[d] = unknowns_++;
            }
        }
        for (const Crossing& crossing : crossings) {
            const auto a = static_cast<std::size_t>(crossing.dayA);
            const auto b = static_cast<std::size_t>(crossing.dayB);
            if (a != b && tie.isTied[a] && tie.isTied[b]) {
                used_.push_back(&crossing);
            }
        }
        offsets_.assign(unknowns_, 0.0);
    }

    void solve(double huber) {
        constexpr int most = 50;
        constexpr double still_m = 1e-6;
        for (int pass = 0; pass < most && unknowns_ > 0; ++pass) {
            if (step(huber) < still_m) {
                break;
            }
        }
    }

    [[nodiscard]] double offset_m(std::size_t day) const {
        return column_[day] == none ? 0.0 : offsets_[column_[day]];
    }
    [[nodiscard]] double error_m(std::size_t day) const {
        return column_[day] == none || errors_.empty() ? 0.0 : errors_[column_[day]];
    }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    [[nodiscard]] double misfit_m(const Crossing& crossing) const {
        return crossing.difference_m() + offset_m(static_cast<std::size_t>(crossing.dayB)) -
               offset_m(static_cast<std::size_t>(crossing.dayA));
    }

    /// One reweighted step of least squares; gives the largest move.
    double step(double huber) {
        std::vector<double> misfits_m;
        for (const Crossing* crossing : used_) {
            misfits_m.push_back(misfit_m(*crossing));
        }
        constexpr double least_m = 0.01; // A sounder's own resolution.
        // At the start the misfits still hold the offsets; their own middle is no reference then.
        const double sigma_m = std::fmax(least_m, robustSigma(misfits_m, 0.0));
        NormalEquations equations(unknowns_);
        for (std::size_t i = 0; i < used_.size(); ++i) {
            const double size = std::fabs(misfits_m[i]) / (huber * sigma_m);
            const double weight = size > 1.0 ? 1.0 / size : 1.0;
            std::vector<NormalEquations::Term> terms;
            if (const auto a = column_[static_cast<std::size_t>(used_[i]->dayA)]; a != none) {
                terms.push_back({a, 1.0});
            }
            if (const auto b = column_[static_cast<std::size_t>(used_[i]->dayB)]; b != none) {
                terms.push_back({b, -1.0});
            }
            equations.add(terms, misfits_m[i], weight);
        }
        const auto solution = equations.solve();
        double largest_m = 0.0;
        errors_.clear();
        for (std::size_t r = 0; r < unknowns_; ++r) {
            offsets_[r] += solution.values[r];
            largest_m = std::fmax(largest_m, std::fabs(solution.values[r]));
            errors_.push_back(sigma_m * solution.errors[r]);
        }
        return largest_m;
    }

    std::vector<std::size_t> column_;
    std::size_t unknowns_ = 0;
    std::vector<const Crossing*> used_;
    std::vector<double> offsets_;
    std::vector<double> errors_;
};

/// Number of crossings between each two days.
std::vector<std::vector<std::size_t>> countsBetween(std::span<const Crossing> crossings,
                                                    std::size_t days) {
    std::vector<std::vector<std::size_t>> counts(days, std::vector<std::size_t>(days, 0));
    for (const Crossing& crossing : crossings) {
        const auto a = static_cast<std::size_t>(crossing.dayA);
        const auto b = static_cast<std::size_t>(crossing.dayB);
        if (a != b) {
            ++counts[a][b];
            ++counts[b][a];
        }
    }
    return counts;
}

void holdAndReach(DayTie& tie, const std::vector<soundings::SurveyDay>& days,
                  const std::vector<std::vector<std::size_t>>& counts, std::size_t least) {
    for (std::size_t d = 0; d < days.size(); ++d) {
        tie.isHeld[d] = days[d].gauge.isKnown();
    }
    if (std::ranges::find(tie.isHeld, true) == tie.isHeld.end()) {
        const auto most = std::ranges::max_element(tie.crossingsWithOthers);
        tie.isHeld[static_cast<std::size_t>(most - tie.crossingsWithOthers.begin())] = true;
    }
    tie.isTied = tie.isHeld;
    for (bool isGrowing = true; isGrowing;) {
        isGrowing = false;
        for (std::size_t d = 0; d < days.size(); ++d) {
            std::size_t reached = 0;
            for (std::size_t e = 0; e < days.size(); ++e) {
                reached += tie.isTied[e] ? counts[d][e] : 0;
            }
            if (!tie.isTied[d] && reached >= least) {
                tie.isTied[d] = true;
                isGrowing = true;
            }
        }
    }
}

} // namespace

base::Result<DayTie> tieDays(std::span<const Crossing> crossings,
                             const std::vector<soundings::SurveyDay>& days,
                             const TieSettings& settings, base::Progress& progress) {
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    DayTie tie;
    tie.offsets.resize(days.size());
    tie.offsetErrors.resize(days.size());
    tie.isHeld.assign(days.size(), false);
    tie.before = checkOf(crossings);
    tie.after = tie.before;
    if (days.empty()) {
        return tie;
    }
    const auto counts = countsBetween(crossings, days.size());
    for (const auto& row : counts) {
        std::size_t sum = 0;
        for (const std::size_t count : row) {
            sum += count;
        }
        tie.crossingsWithOthers.push_back(sum);
    }
    holdAndReach(tie, days, counts, std::max<std::size_t>(settings.leastCrossings, 1));
    Adjustment adjustment(crossings, tie);
    adjustment.solve(settings.huber);
    for (std::size_t d = 0; d < days.size(); ++d) {
        tie.offsets[d] = units::Length::metres(adjustment.offset_m(d));
        tie.offsetErrors[d] = units::Length::metres(adjustment.error_m(d));
    }
    std::vector<Crossing> tied(crossings.begin(), crossings.end());
    for (Crossing& crossing : tied) {
        crossing.depthA_m += adjustment.offset_m(static_cast<std::size_t>(crossing.dayA));
        crossing.depthB_m += adjustment.offset_m(static_cast<std::size_t>(crossing.dayB));
    }
    tie.after = checkOf(tied);
    return tie;
}

} // namespace reduction
