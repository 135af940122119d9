// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/check_by_lines.h"

#include "core/surface/solver/held_out.h"
#include "core/surface/solver/spikes.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>

#include <fmt/format.h>

namespace surface {

namespace {

/// Drawn less sounded at every sounding held out that has water drawn under it.
void compare(const grid::DepthGrid& depth, std::span<const soundings::KeptSounding> soundings,
             const std::vector<std::size_t>& heldOut, std::vector<double>& errors_m) {
    for (const std::size_t i : heldOut) {
        if (const auto drawn = depth.at(geo::WaterPoint{soundings[i].x_m, soundings[i].y_m})) {
            errors_m.push_back(drawn->inMetres() - soundings[i].depth_m);
        }
    }
}

LineCheck summed(std::vector<double> errors_m, std::size_t stretches) {
    const auto count = static_cast<double>(errors_m.size());
    LineCheck check;
    check.soundings = errors_m.size();
    check.stretches = stretches;
    check.bias =
        units::Length::metres(std::accumulate(errors_m.begin(), errors_m.end(), 0.0) / count);
    double squares = 0.0;
    double sum = 0.0;
    for (double& error : errors_m) {
        error = std::abs(error);
        sum += error;
        squares += error * error;
    }
    check.meanAbsolute = units::Length::metres(sum / count);
    check.rootMeanSquare = units::Length::metres(std::sqrt(squares / count));
    const auto at = errors_m.begin() + static_cast<std::ptrdiff_t>(0.95 * (count - 1.0));
    std::nth_element(errors_m.begin(), at, errors_m.end());
    check.p95 = units::Length::metres(*at);
    return check;
}

std::size_t stretchesIn(const std::vector<std::size_t>& heldOut) {
    std::size_t stretches = 0;
    for (std::size_t k = 0; k < heldOut.size(); ++k) {
        stretches += k == 0 || heldOut[k] != heldOut[k - 1] + 1 ? 1 : 0;
    }
    return stretches;
}

std::vector<soundings::KeptSounding> picked(std::span<const soundings::KeptSounding> soundings,
                                            const std::vector<std::size_t>& positions) {
    std::vector<soundings::KeptSounding> some;
    some.reserve(positions.size());
    for (const std::size_t i : positions) {
        some.push_back(soundings[i]);
    }
    return some;
}

} // namespace

std::vector<std::string> problemsIn(const LineCheckSettings& settings) {
    std::vector<std::string> problems = problemsIn(settings.draw);
    if (settings.stretch < 1 || settings.stretch > 100'000) {
        problems.emplace_back("a stretch must be 1 to 100000 soundings");
    }
    if (settings.folds < 2 || settings.folds > 50) {
        problems.emplace_back("there must be 2 to 50 folds");
    }
    return problems;
}

base::Result<LineCheck> checkByLines(const geo::Outline& outline,
                                     std::span<const soundings::KeptSounding> soundings,
                                     const LineCheckSettings& settings, base::Progress& progress) {
    if (const std::vector<std::string> problems = problemsIn(settings); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, problems.front(), "checking by lines",
                          "choose a value in its range");
    }
    if (soundings.size() < static_cast<std::size_t>(settings.folds)) {
        return base::fail(base::ErrorKind::unusableInput,
                          fmt::format("{} soundings cannot be held out in {} parts",
                                      soundings.size(), settings.folds),
                          "checking by lines", "sound more, or choose fewer parts");
    }
    const std::vector<std::size_t> spikes = solver::spikesIn(soundings);
    std::vector<std::size_t> all(soundings.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    std::vector<std::size_t> positions;
    std::set_difference(all.begin(), all.end(), spikes.begin(), spikes.end(),
                        std::back_inserter(positions));
    DrawSettings draw = settings.draw;
    draw.withTrust = false;
    std::vector<double> errors_m;
    std::size_t stretches = 0;
    for (int k = 0; k < settings.folds; ++k) {
        const solver::Fold fold =
            solver::foldOf(soundings, positions, settings.stretch, settings.folds, k);
        const base::Result<DrawnWater> drawn =
            drawWater(outline, picked(soundings, fold.kept), draw, progress);
        if (!drawn) {
            return std::unexpected(drawn.error());
        }
        compare(drawn->depth, soundings, fold.heldOut, errors_m);
        stretches += stretchesIn(fold.heldOut);
    }
    if (errors_m.empty()) {
        return base::fail(base::ErrorKind::unusableInput, "no sounding held out lies in the water",
                          "checking by lines", "check the shore");
    }
    return summed(std::move(errors_m), stretches);
}

} // namespace surface
