// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/stiffness_choice.h"

#include "core/surface/solver/held_out.h"
#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace surface::solver {

namespace {

constexpr std::size_t leastSoundings = 60;
constexpr int stretch = 60;
constexpr int folds = 6;
constexpr std::array<int, 2> foldsTried{1, 4};

/// One fold made ready: its trend on the coarse cells, its samples, and what draws it.
struct Trial {
    BottomDrawer drawer;
    Field trend;
    std::vector<Sample> kept;
    std::vector<Sample> heldOut;
    std::optional<Bottom> best; ///< Of the tries so far; the next one starts there.
    Bottom last;
};

std::vector<double> errorsOf(const Trial& trial, const Bottom& bottom) {
    std::vector<double> errors;
    errors.reserve(trial.heldOut.size());
    for (const Sample& sample : trial.heldOut) {
        errors.push_back(std::abs(std::max(0.0, sample.at.of(bottom.depth_m)) - sample.depth_m));
    }
    return errors;
}

HeldOutError summed(std::vector<double> errors) {
    HeldOutError error;
    error.soundings = static_cast<int>(errors.size());
    if (!errors.empty()) {
        error.mean_m =
            std::accumulate(errors.begin(), errors.end(), 0.0) / static_cast<double>(errors.size());
        const auto middle = errors.begin() + static_cast<std::ptrdiff_t>(errors.size() / 2);
        std::nth_element(errors.begin(), middle, errors.end());
        error.median_m = *middle;
    }
    return error;
}

/// The folds made ready, and what each pair of settings leaves there.
class Trials {
public:
    Trials(const Ground& coarse, const TrendGround& trendGround, const geo::Outline& outline,
           std::span<const soundings::KeptSounding> soundings,
           std::span<const std::size_t> positions, const BottomSettings& settings,
           base::Progress& progress)
        : threads_(settings.threads), settings_(settings), progress_(&progress) {
        settings_.threads = 1; // on such cells a thread for each fold is worth more
        for (const int which : foldsTried) {
            const Fold fold = foldOf(soundings, positions, stretch, folds, which);
            trials_.push_back(
                {BottomDrawer(coarse.cells, shorePullsOf(outline, coarse.cells, coarse.frame()), 1),
                 trendGround.onto(coarse, trendGround.trendFrom(soundings, fold.kept, progress)),
                 mergedSamplesOf(coarse, soundings, fold.kept),
                 samplesOf(coarse, soundings, fold.heldOut),
                 std::nullopt,
                 {}});
        }
    }

    /// Draws with these settings and keeps them in `choice` where they are clearly the best so far.
    /// \return whether they are.
    bool isBetter(double stiffness, double contourStiffness, StiffnessChoice& choice) {
        settings_.stiffness = stiffness;
        settings_.contourStiffness = contourStiffness;
        parallelFor(threads_, trials_.size(), 1, [&](std::size_t first, std::size_t last) {
            for (Trial& trial : std::span(trials_).subspan(first, last - first)) {
                trial.last =
                    trial.drawer.draw(trial.trend, trial.kept, settings_, trial.best, *progress_);
            }
        });
        choice.wasStopped =
            std::ranges::any_of(trials_, [](const Trial& one) { return one.last.wasStopped; });
        if (choice.wasStopped) {
            return false; // What was stopped before its first pass holds no depths at all.
        }
        std::vector<double> errors;
        for (const Trial& trial : trials_) {
            const std::vector<double> more = errorsOf(trial, trial.last);
            errors.insert(errors.end(), more.begin(), more.end());
        }
        constexpr double usual = 6.0; // Tries.
        progress_->tell(std::min(1.0, ++tried_ / usual));
        const HeldOutError error = summed(std::move(errors));
        constexpr double clearly = 0.995; // Less is chance.
        if (choice.heldOut && error.mean_m >= clearly * choice.heldOut->mean_m) {
            return false;
        }
        choice.stiffness = stiffness;
        choice.contourStiffness = contourStiffness;
        choice.heldOut = error;
        for (Trial& trial : trials_) {
            trial.best = std::move(trial.last);
        }
        return true;
    }

private:
    std::vector<Trial> trials_;
    int threads_;
    BottomSettings settings_;
    base::Progress* progress_;
    double tried_ = 0.0;
};

} // namespace

StiffnessChoice chooseStiffness(const Ground& coarse, const TrendGround& trendGround,
                                const geo::Outline& outline,
                                std::span<const soundings::KeptSounding> soundings,
                                std::span<const std::size_t> positions,
                                std::optional<double> stiffness,
                                std::optional<double> contourStiffness,
                                const BottomSettings& settings, base::Progress& progress) {
    StiffnessChoice choice;
    choice.stiffness = stiffness.value_or(choice.stiffness);
    choice.contourStiffness = contourStiffness.value_or(choice.contourStiffness);
    if (positions.size() < leastSoundings) {
        return choice;
    }
    Trials trials(coarse, trendGround, outline, soundings, positions, settings, progress);
    trials.isBetter(choice.stiffness, choice.contourStiffness, choice);
    // one after the other as long as it gets better, towards soft, and if that is no good towards
    // stiff
    const auto goOn = [&](std::initializer_list<double> values, const auto& isBetter) {
        for (const double value : values) {
            if (choice.wasStopped || !isBetter(value)) {
                return value != *values.begin();
            }
        }
        return true;
    };
    if (!stiffness) {
        const auto isBetter = [&](double a) {
            return trials.isBetter(a, choice.contourStiffness, choice);
        };
        if (!goOn({100.0, 30.0}, isBetter)) {
            goOn({1000.0, 3000.0}, isBetter);
        }
    }
    if (!contourStiffness) {
        const auto isBetter = [&](double b) {
            return trials.isBetter(choice.stiffness, b, choice);
        };
        if (!goOn({100.0}, isBetter)) {
            goOn({10.0}, isBetter);
        }
    }
    return choice;
}

} // namespace surface::solver
