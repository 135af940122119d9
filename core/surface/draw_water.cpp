// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/draw_water.h"

#include "core/surface/solver/bottom.h"
#include "core/surface/solver/cell_choice.h"
#include "core/surface/solver/coarse_start.h"
#include "core/surface/solver/deepest_nearby.h"
#include "core/surface/solver/spikes.h"
#include "core/surface/solver/stiffness_choice.h"
#include "core/surface/solver/trust_drawing.h"

#include <algorithm>
#include <chrono>
#include <cmath>

#include <fmt/format.h>

namespace surface {

namespace {

using Clock = std::chrono::steady_clock;

double secondsSince(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

std::optional<base::Error> refusalOf(std::span<const soundings::KeptSounding> soundings,
                                     const DrawSettings& settings) {
    if (const std::vector<std::string> problems = problemsIn(settings); !problems.empty()) {
        return base::Error{base::ErrorKind::wrongUse, problems.front(), "drawing settings",
                           "choose a value in its range"};
    }
    if (soundings.empty()) {
        return base::Error{base::ErrorKind::unusableInput, "there is no sounding to draw from", "",
                           "read at least one survey day, or take soundings back that were set "
                           "aside"};
    }
    for (std::size_t i = 0; i < soundings.size(); ++i) {
        const soundings::KeptSounding& s = soundings[i];
        if (!std::isfinite(s.x_m) || !std::isfinite(s.y_m) || !std::isfinite(s.depth_m)) {
            return base::Error{base::ErrorKind::unusableInput, "the position or depth is no number",
                               fmt::format("sounding {}", i + 1), "set this sounding aside"};
        }
    }
    return std::nullopt;
}

/// Positions of the soundings in the water or within the outline's own error of it.
std::vector<std::size_t> insideOf(const geo::Outline& outline,
                                  std::span<const soundings::KeptSounding> soundings,
                                  double tolerance_m) {
    std::vector<std::size_t> inside;
    for (std::size_t i = 0; i < soundings.size(); ++i) {
        const geo::WaterPoint p{soundings[i].x_m, soundings[i].y_m};
        if (outline.contains(p) || outline.distanceToShore_m(p) <= tolerance_m) {
            inside.push_back(i);
        }
    }
    return inside;
}

solver::BottomSettings bottomSettingsOf(const DrawSettings& settings) {
    solver::BottomSettings bottom;
    bottom.soundingError_m = settings.soundingError.inMetres();
    bottom.soundingErrorShare = settings.soundingErrorShare;
    bottom.shoreOffset_m = settings.shoreOffset.inMetres();
    bottom.threads = settings.threads;
    return bottom;
}

/// What one drawing works with.
struct Job {
    const geo::Outline& outline;
    std::span<const soundings::KeptSounding> soundings;
    const DrawSettings& settings;
    base::Progress& progress;
    solver::BottomSettings bottom;
    const DrawnWater* before;
    std::vector<std::size_t> used; ///< Positions of the soundings drawn from.
    units::Length cell;
    DrawReport report;
};

/// The surface, never above the water and never deeper than the soundings allow.
grid::DepthGrid depthsOf(const Job& job, const solver::Ground& ground,
                         const solver::Bottom& bottom) {
    const solver::Field deepest_m =
        solver::deepestNearby_m(ground, job.soundings, job.used, job.progress);
    grid::DepthGrid depth(ground.frame());
    solver::Field held(ground.cells.places(), 0.0);
    ground.cells.forEach([&](std::size_t p, std::size_t) {
        held[p] = std::clamp(bottom.depth_m[p], 0.0, deepest_m[p]);
    });
    depth.raw_m() = ground.cells.gridOf(held, ground.frame(), NAN).values();
    return depth;
}

/// True where the drawing before was chosen from nearly the same.
bool mayKeepChoice(const Job& job) {
    constexpr double nearly = 0.02;
    if (job.before == nullptr || !job.before->report.trustCurve || !job.settings.withTrust ||
        job.settings.stiffness || job.settings.contourStiffness ||
        job.before->report.cell != job.cell) {
        return false;
    }
    const auto isNear = [](double now, double then) {
        return std::abs(now - then) <= nearly * then;
    };
    return isNear(static_cast<double>(job.used.size()),
                  static_cast<double>(job.before->report.chosenFrom)) &&
           isNear(job.outline.area().inSquareMetres(),
                  job.before->report.chosenOver.inSquareMetres());
}

void keepChoice(Job& job) {
    const DrawReport& before = job.before->report;
    job.report.stiffness = before.stiffness;
    job.report.contourStiffness = before.contourStiffness;
    job.report.heldOut = before.heldOut;
    job.report.trustCurve = before.trustCurve;
    job.report.chosenFrom = before.chosenFrom;
    job.report.chosenOver = before.chosenOver;
    job.report.isChoiceKept = true;
}

/// Stiffness, from trials on larger cells with soundings held out.
base::Result<void> chooseStiffness(Job& job, const solver::TrendGround& trendGround) {
    const auto coarse = solver::groundOf(job.outline, solver::trialCellFor(job.outline, job.cell),
                                         job.bottom.threads, job.progress);
    if (!coarse) {
        return std::unexpected(coarse.error());
    }
    job.progress.begin("choosing the stiffness");
    const solver::StiffnessChoice choice = solver::chooseStiffness(
        *coarse, trendGround, job.outline, job.soundings, job.used, job.settings.stiffness,
        job.settings.contourStiffness, job.bottom, job.progress);
    if (choice.wasStopped || job.progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    job.report.stiffness = choice.stiffness;
    job.report.contourStiffness = choice.contourStiffness;
    job.report.heldOut = choice.heldOut;
    job.report.chosenFrom = job.used.size();
    job.report.chosenOver = job.outline.area();
    return {};
}

/// The trust curve with the stiffness chosen, from more trials.
base::Result<void> judgeTrust(Job& job, const solver::TrendGround& trendGround) {
    const Clock::time_point start = Clock::now();
    const auto coarse = solver::groundOf(job.outline, solver::trustCellFor(job.outline, job.cell),
                                         job.bottom.threads, job.progress);
    if (!coarse) {
        return std::unexpected(coarse.error());
    }
    job.progress.begin("judging the trust");
    solver::BottomSettings chosen = job.bottom;
    chosen.stiffness = job.report.stiffness;
    chosen.contourStiffness = job.report.contourStiffness;
    job.report.trustCurve =
        solver::ErrorGrowth::from(solver::observeErrors(*coarse, trendGround, job.outline,
                                                        job.soundings, job.used, chosen,
                                                        job.progress),
                                  chosen.soundingError_m)
            .curve();
    job.report.trustSeconds = secondsSince(start);
    if (job.progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    return {};
}

base::Result<void> choose(Job& job, const solver::TrendGround& trendGround) {
    auto chosen = chooseStiffness(job, trendGround);
    return chosen && job.settings.withTrust ? judgeTrust(job, trendGround) : chosen;
}

/// The bottom of the drawing before on the cells of this one; the trend where that had none.
solver::Bottom bottomBefore(const Job& job, const solver::Ground& ground,
                            const solver::Field& trend) {
    solver::Bottom before;
    before.depth_m = trend;
    const grid::GridFrame& frame = ground.frame();
    const grid::DepthGrid& drawn = job.before->depth;
    for (const solver::ActiveCells::Run& run : ground.cells.runs()) {
        for (int col = run.begin; col < run.end; ++col) {
            const grid::Cell then = drawn.frame().cellOf(frame.centre(
                {col - solver::ActiveCells::padding, run.row - solver::ActiveCells::padding}));
            if (drawn.frame().holds(then) && drawn.has(then)) {
                before.depth_m[ground.cells.place(col, run.row)] =
                    static_cast<double>(drawn.raw_m()[drawn.frame().index(then)]);
            }
        }
    }
    before.lay = solver::layOf(ground.cells, before.depth_m, solver::lastBlur_m(job.bottom),
                               job.bottom.threads);
    return before;
}

/// What the solver needs, most of all memory, is given back with the bottom, and so is the trend.
base::Result<solver::Bottom> bottomOf(const Job& job, const solver::Ground& ground,
                                      const solver::TrendGround& trendGround) {
    const solver::Field coarseTrend = trendGround.trendFrom(job.soundings, job.used, job.progress);
    const solver::Field trend = trendGround.onto(ground, coarseTrend);
    std::optional<solver::Bottom> start;
    if (!job.report.isChoiceKept) {
        auto coarse = solver::coarseStart(job.outline, solver::trustCellFor(job.outline, job.cell),
                                          ground, trendGround, coarseTrend, trend, job.soundings,
                                          job.used, job.bottom, job.progress);
        if (!coarse) {
            return std::unexpected(coarse.error());
        }
        start = std::move(*coarse);
    }
    solver::BottomDrawer drawer(ground.cells,
                                solver::shorePullsOf(job.outline, ground.cells, ground.frame()),
                                job.bottom.threads);
    const std::vector<solver::Sample> samples =
        solver::mergedSamplesOf(ground, job.soundings, job.used);
    solver::Bottom bottom =
        job.report.isChoiceKept
            ? drawer.redraw(trend, samples, job.bottom, bottomBefore(job, ground, trend),
                            job.progress)
            : drawer.draw(trend, samples, job.bottom, std::move(start), job.progress);
    if (bottom.wasStopped) {
        return std::unexpected(base::cancelled());
    }
    return bottom;
}

base::Result<TrustGrid> trustOf(Job& job, const solver::Ground& ground,
                                const solver::Bottom& bottom) {
    if (!job.report.trustCurve) {
        return solver::noTrust(ground);
    }
    const Clock::time_point start = Clock::now();
    auto trust = solver::drawTrust(ground, bottom, job.soundings, job.used,
                                   solver::ErrorGrowth(*job.report.trustCurve), job.bottom.threads,
                                   job.progress);
    job.report.trustSeconds += secondsSince(start);
    return trust;
}

base::Result<DrawnWater> draw(Job& job) {
    const Clock::time_point start = Clock::now();
    auto ground = solver::groundOf(job.outline, job.cell, job.bottom.threads, job.progress);
    if (!ground) {
        return std::unexpected(ground.error());
    }
    job.progress.begin("reading the shape of the water");
    auto trendGround = solver::TrendGround::of(
        job.outline, solver::trendCellFor(job.outline, job.cell), job.bottom.threads, job.progress);
    if (!trendGround) {
        return std::unexpected(trendGround.error());
    }
    if (mayKeepChoice(job)) {
        keepChoice(job);
    } else if (auto chosen = choose(job, *trendGround); !chosen) {
        return std::unexpected(chosen.error());
    }
    job.bottom.stiffness = job.report.stiffness;
    job.bottom.contourStiffness = job.report.contourStiffness;
    job.progress.begin("drawing the bottom");
    const auto bottom = bottomOf(job, *ground, *trendGround);
    if (!bottom) {
        return std::unexpected(bottom.error());
    }
    DrawnWater drawn;
    drawn.depth = depthsOf(job, *ground, *bottom);
    auto trust = trustOf(job, *ground, *bottom);
    if (!trust) {
        return std::unexpected(trust.error());
    }
    drawn.trust = std::move(*trust);
    job.report.cell = job.cell;
    job.report.cells = ground->cells.unknowns();
    job.report.soundingsUsed = bottom->soundings;
    job.report.passes = job.bottom.passes;
    job.report.iterations = bottom->iterations;
    job.report.drawSeconds = secondsSince(start) - job.report.trustSeconds;
    drawn.report = std::move(job.report);
    drawn.mask = std::move(ground->mask);
    return drawn;
}

} // namespace

std::vector<std::string> problemsIn(const DrawSettings& settings) {
    std::vector<std::string> problems;
    const auto expect = [&problems](bool isWell, const char* sentence) {
        if (!isWell) {
            problems.emplace_back(sentence);
        }
    };
    const double cell_m = settings.cell ? settings.cell->inMetres() : 5.0;
    const double a = settings.stiffness.value_or(300.0);
    const double b = settings.contourStiffness.value_or(10.0);
    const double offset_m = settings.shoreOffset.inMetres();
    const double error_m = settings.soundingError.inMetres();
    expect(cell_m >= 0.5 && cell_m <= 100.0, "the cell must be 0.5 to 100 m");
    expect(a >= 1.0 && a <= 1e6, "the stiffness must be 1 to 1000000");
    expect(b >= 0.0 && b <= 1000.0, "the stiffness along contours must be 0 to 1000");
    expect(offset_m >= 0.0 && offset_m <= 50.0, "the shore may be off by 0 to 50 m");
    expect(error_m >= 0.01 && error_m <= 2.0, "the error of a sounding must be 0.01 to 2 m");
    expect(settings.soundingErrorShare >= 0.0 && settings.soundingErrorShare <= 0.2,
           "the error of a sounding must be 0 to 0.2 of its depth");
    expect(settings.threads >= 1 && settings.threads <= 64, "the threads must be 1 to 64");
    return problems;
}

base::Result<DrawnWater> drawWater(const geo::Outline& outline,
                                   std::span<const soundings::KeptSounding> soundings,
                                   const DrawSettings& settings, base::Progress& progress,
                                   const DrawnWater* before) {
    if (std::optional<base::Error> refusal = refusalOf(soundings, settings)) {
        return std::unexpected(std::move(*refusal));
    }
    Job job{outline, soundings, settings, progress, bottomSettingsOf(settings), before, {}, {}, {}};
    std::vector<std::size_t> inside = insideOf(outline, soundings, settings.shoreOffset.inMetres());
    job.report.soundingsOutside = soundings.size() - inside.size();
    if (inside.empty()) {
        return base::fail(
            base::ErrorKind::unusableInput,
            fmt::format("none of the {} soundings lies in the water", soundings.size()), "",
            "check that shore and soundings belong to the same water");
    }
    job.report.spikes = solver::spikesIn(soundings);
    std::set_difference(inside.begin(), inside.end(), job.report.spikes.begin(),
                        job.report.spikes.end(), std::back_inserter(job.used));
    if (job.used.empty()) {
        job.used = std::move(inside);
        job.report.spikes.clear();
    }
    job.cell = settings.cell.value_or(solver::cellFor(outline, job.used.size()));
    return draw(job);
}

} // namespace surface
