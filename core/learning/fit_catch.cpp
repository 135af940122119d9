// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/learning/fit_catch.h"

#include "core/learning/fit_state.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace learning {

namespace {

constexpr int outerRounds = 3;
constexpr int mostSteps = 30;
/// Beliefs are laid beside the log until no logarithm moves by this,
constexpr double enoughBesideBeliefs = 1e-4;
/// by its own curvature as long as each step is by so much shorter than the one before.
constexpr double quickBelow = 0.5;
/// Beyond these a stay is a slip of the pen, and one is enough to drown all others.
constexpr double mostRodHours = 1e5;
constexpr int mostFish = 1'000'000;

std::optional<std::string> problemIn(const Observation& one) {
    if (!(one.rodHours > 0.0 && one.rodHours <= mostRodHours)) {
        return fmt::format("an effort of {} rod-hours", one.rodHours);
    }
    if (one.fish < 0 || one.fish > mostFish) {
        return fmt::format("{} fish", one.fish);
    }
    if (one.day < 0) {
        return fmt::format("day {}", one.day);
    }
    for (const Feature& feature : one.features) {
        if (!std::isfinite(feature.value)) {
            return std::string("a value that is no number");
        }
    }
    return std::nullopt;
}

base::Result<void> check(const std::vector<Observation>& observations,
                         const FitSettings& settings) {
    if (settings.renewals < 0 || settings.renewals > 20 || settings.renewFromDays < 1 ||
        !(settings.sizesCountFor > 0.0) || !(settings.enough > 0.0)) {
        return base::fail(base::ErrorKind::wrongUse, "the log cannot be learned from so",
                          "settings",
                          "choose 0 to 20 renewals from the first day up, and a step above 0");
    }
    for (std::size_t i = 0; i < observations.size(); ++i) {
        if (const auto problem = problemIn(observations[i])) {
            return base::fail(base::ErrorKind::wrongUse,
                              "a stay cannot be learned from: " + *problem,
                              fmt::format("stay {}", i + 1), "leave it out");
        }
    }
    return {};
}

/// One round of means and variances. \return cancelled.
base::Result<void> settle(FitState& state, int rounds, double enough, base::Progress& progress) {
    for (int outer = 0; outer < rounds; ++outer) {
        for (int step = 0; step < mostSteps; ++step) {
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            if (state.step() < enough) {
                break;
            }
        }
        state.findVariances();
    }
    return {};
}

} // namespace

CatchFit::CatchFit(std::shared_ptr<const FitState> state)
    : state_(std::move(state)), model_(state_->model()) {}

CatchModel CatchFit::besideBeliefs(std::span<const double> beliefs) const {
    if (!state_ || std::ranges::all_of(beliefs, [](double one) { return one == 0.0; })) {
        return model_;
    }
    FitState state = *state_;
    state.believe(beliefs);
    double before = INFINITY;
    bool isQuick = true;
    for (int step = 0; step < mostSteps; ++step) {
        const double now = isQuick ? state.glide() : state.step();
        if (now < enoughBesideBeliefs) {
            break;
        }
        isQuick = now < quickBelow * before;
        before = now;
    }
    return state.model();
}

base::Result<CatchFit> fitCatch(const std::vector<Observation>& observations,
                                const FitSettings& settings, base::Progress& progress) {
    if (auto checked = check(observations, settings); !checked) {
        return std::unexpected(checked.error());
    }
    if (observations.empty()) {
        return CatchFit();
    }
    FitState state(observations, settings.sizes);
    const int renewals =
        state.days() >= static_cast<std::size_t>(settings.renewFromDays) ? settings.renewals : 0;
    for (int round = 0; round <= renewals; ++round) {
        progress.tell(static_cast<double>(round) / (renewals + 1));
        // The rounds between the first and the last only carry the sizes on.
        const bool isWhole = round == 0 || round == renewals;
        if (auto settled = settle(state, isWhole ? outerRounds : 1, settings.enough, progress);
            !settled) {
            return std::unexpected(settled.error());
        }
        if (round < renewals) {
            state.renewSizes(settings.sizes, settings.sizesCountFor, settings.renewDay);
        }
    }
    return CatchFit(std::make_shared<const FitState>(std::move(state)));
}

} // namespace learning
