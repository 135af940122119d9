// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/stiffness_choice.h"

#include "core/surface/solver/held_out.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace surface::solver {

namespace {

constexpr std::size_t leastSoundings = 60;
constexpr int stretch = 60;
constexpr int folds = 6;
constexpr std::array<int, 2> foldsTried{1, 4};

/// One fold made ready: its trend on the coarse cells and its samples.
struct Trial {
    Field trend;
    std::vector<Sample> kept;
    std::vector<Sample> heldOut;
    std::optional<Bottom> last;
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
    std::vector<Trial> trials;
    for (const int which : foldsTried) {
        const Fold fold = foldOf(soundings, positions, stretch, folds, which);
        Trial& trial = trials.emplace_back();
        trial.trend =
            trendGround.onto(coarse, trendGround.trendFrom(soundings, fold.kept, progress));
        trial.kept = samplesOf(coarse, soundings, fold.kept);
        trial.heldOut = samplesOf(coarse, soundings, fold.heldOut);
    }
    const std::vector<double> as =
        stiffness ? std::vector{*stiffness} : std::vector{300.0, 100.0, 1000.0, 3000.0};
    const std::vector<double> bs =
        contourStiffness ? std::vector{*contourStiffness} : std::vector{30.0, 10.0, 100.0};
    BottomDrawer drawer(coarse.cells, shorePullsOf(outline, coarse.cells, coarse.frame()),
                        settings.threads);
    std::size_t done = 0;
    for (const double a : as) {
        for (const double b : bs) {
            BottomSettings tried = settings;
            tried.stiffness = a;
            tried.contourStiffness = b;
            std::vector<double> errors;
            for (Trial& trial : trials) {
                Bottom bottom = drawer.draw(trial.trend, trial.kept, tried,
                                            trial.last ? &*trial.last : nullptr, progress);
                if (bottom.wasStopped) {
                    choice.wasStopped = true;
                    return choice;
                }
                const std::vector<double> more = errorsOf(trial, bottom);
                errors.insert(errors.end(), more.begin(), more.end());
                trial.last = std::move(bottom);
            }
            const HeldOutError error = summed(std::move(errors));
            if (!choice.heldOut || error.mean_m < choice.heldOut->mean_m) {
                choice.stiffness = a;
                choice.contourStiffness = b;
                choice.heldOut = error;
            }
            progress.tell(static_cast<double>(++done) / static_cast<double>(as.size() * bs.size()));
        }
    }
    return choice;
}

} // namespace surface::solver
