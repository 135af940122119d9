// SPDX-License-Identifier: GPL-3.0-or-later
// Drawing the water, settings chosen and trust included, beside gmt surface on as many cells in the
// same run.
#include "core/surface/draw_water.h"
#include "own_process.h"

#include <chrono>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <random>
#include <string>

#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

namespace {

using std::filesystem::path;

constexpr double half_m = 900.0; ///< Of the side of a square water of 324 ha.

/// A made-up bottom: a basin with a hump, bars and a bank.
double depthAt(double x_m, double y_m) {
    const double basin = 1.0 - std::pow(std::max(std::abs(x_m), std::abs(y_m)) / half_m, 3);
    const double hump = 5.0 * std::exp(-(x_m * x_m + y_m * y_m) / 3e4);
    return std::max(0.0, 16.0 * basin + std::sin(x_m / 60.0) * std::cos(y_m / 45.0) - hump);
}

/// Sounded along lines 50 m apart and three across, `count` soundings evenly along them.
std::vector<soundings::KeptSounding> survey(const geo::WaterFrame& frame, std::size_t count) {
    std::mt19937 random(4);
    std::normal_distribution<double> noise_m(0.0, 0.06);
    constexpr int lines = 36;
    constexpr int crossLines = 3;
    std::vector<soundings::KeptSounding> made;
    const auto each = static_cast<int>(count / (lines + crossLines));
    for (int line = 0; line < lines + crossLines; ++line) {
        for (int k = 0; k < each; ++k) {
            const double along_m = half_m * (1.96 * (k + 0.5) / each - 0.98);
            const double beside_m =
                line < lines ? 50.0 * line - half_m + 25.0 : 600.0 * (line - lines) - 600.0;
            soundings::KeptSounding s;
            s.x_m = line < lines ? along_m : beside_m;
            s.y_m = line < lines ? beside_m : along_m;
            s.place = frame.toEarth(geo::WaterPoint{s.x_m, s.y_m});
            s.depth_m = std::max(0.1, depthAt(s.x_m, s.y_m) + noise_m(random));
            s.pass = line;
            made.push_back(s);
        }
    }
    return made;
}

/// Medians of the soundings for each cell, and depth 0 every 5 m of the shore: what a
/// general-purpose gridder is given.
void writePoints(const path& file, const std::vector<soundings::KeptSounding>& soundings) {
    std::ofstream out(file);
    for (const soundings::KeptSounding& s : soundings) {
        out << fmt::format("{:.2f} {:.2f} {:.2f}\n", s.x_m, s.y_m, s.depth_m);
    }
    for (double along_m = -half_m; along_m < half_m; along_m += 5.0) {
        for (const double side_m : {-half_m, half_m}) {
            out << fmt::format("{0} {1} 0\n{1} {0} 0\n", along_m, side_m);
        }
    }
}

int becomeGmt(const path& points, const path& to, const std::string& region,
              const std::string& cell, const char* what) {
    const std::string grid = "-G" + to.string();
    const std::string from = points.string();
    if (std::string(what) == "blockmedian") {
        const int file = open(to.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
        dup2(file, STDOUT_FILENO);
        execlp("gmt", "gmt", what, from.c_str(), region.c_str(), cell.c_str(), nullptr);
    } else {
        execlp("gmt", "gmt", what, from.c_str(), region.c_str(), cell.c_str(), "-T0.25",
               grid.c_str(), nullptr);
    }
    return 127;
}

geo::WaterFrame frameHere() {
    const std::vector<geo::LonLat> places{{10.0, 52.0}, {10.001, 52.0}, {10.0, 52.001}};
    return *geo::WaterFrame::around(places);
}

geo::Outline squareIn(const geo::WaterFrame& frame) {
    const geo::Piece square{
        {{-half_m, -half_m}, {half_m, -half_m}, {half_m, half_m}, {-half_m, half_m}}, {}};
    return *geo::Outline::make(std::vector{square}, frame);
}

surface::DrawSettings settingsFor(std::int64_t cells) {
    surface::DrawSettings settings;
    settings.cell = units::Length::metres(2.0 * half_m / std::sqrt(static_cast<double>(cells)));
    return settings;
}

/// Stops some time after it was made, and knows when.
class Stopping : public base::Progress {
public:
    using Clock = std::chrono::steady_clock;
    explicit Stopping(std::chrono::duration<double> after)
        : at_(Clock::now() + std::chrono::duration_cast<Clock::duration>(after)) {}
    [[nodiscard]] bool stopAsked() const override { return Clock::now() >= at_; }
    /// Seconds that have passed since; negative before.
    [[nodiscard]] double since_s() const {
        return std::chrono::duration<double>(Clock::now() - at_).count();
    }

private:
    Clock::time_point at_;
};

/// How long the user waits after asking to stop, at forty moments of a drawing. Argument: cells.
void stopTheDrawing(benchmark::State& state) {
    const geo::WaterFrame frame = frameHere();
    const geo::Outline outline = squareIn(frame);
    const auto soundings = survey(frame, 35'000);
    const surface::DrawSettings settings = settingsFor(state.range(0));
    const auto draw = [&](base::Progress& progress) {
        return surface::drawWater(outline, soundings, settings, progress).has_value();
    };
    Stopping never(std::chrono::hours(1));
    const auto start = Stopping::Clock::now();
    draw(never);
    const double whole_s = std::chrono::duration<double>(Stopping::Clock::now() - start).count();
    double longest_s = 0.0;
    double at = 0.0;
    for (auto _ : state) {
        for (double share = 0.0125; share < 1.0; share += 0.025) {
            Stopping stopping(std::chrono::duration<double>(share * whole_s));
            if (!draw(stopping) && stopping.since_s() > longest_s) {
                longest_s = stopping.since_s();
                at = share;
            }
        }
        state.SetIterationTime(longest_s);
    }
    state.counters["at share"] = at;
}

/// Arguments: cells, soundings.
void drawTheWater(benchmark::State& state) {
    const surface::DrawSettings settings = settingsFor(state.range(0));
    const double cell_m = settings.cell->inMetres();
    const geo::WaterFrame frame = frameHere();
    const geo::Outline outline = squareIn(frame);
    const auto soundings = survey(frame, static_cast<std::size_t>(state.range(1)));
    const path folder =
        std::filesystem::temp_directory_path() / fmt::format("meremark-bench-{}", getpid());
    std::filesystem::create_directories(folder);
    const std::string region = fmt::format("-R{0}/{1}/{0}/{1}", -half_m, half_m);
    const std::string cell = fmt::format("-I{}+e/{}+e", cell_m, cell_m);
    writePoints(folder / "all.xyz", soundings);
    bench::Taken ours;
    bench::Taken peer;
    for (auto _ : state) {
        ours = bench::inOwnProcess([&] {
            base::Progress progress;
            return surface::drawWater(outline, soundings, settings, progress) ? 0 : 1;
        });
        const bench::Taken medians = bench::inOwnProcess([&] {
            return becomeGmt(folder / "all.xyz", folder / "medians.xyz", region, cell,
                             "blockmedian");
        });
        peer = bench::inOwnProcess([&] {
            return becomeGmt(folder / "medians.xyz", folder / "surface.nc", region, cell,
                             "surface");
        });
        if (!ours.isDone || !medians.isDone || !peer.isDone) {
            state.SkipWithError(ours.isDone ? "gmt failed" : "ours failed");
            break;
        }
        state.SetIterationTime(ours.seconds);
    }
    std::filesystem::remove_all(folder);
    state.counters["surface s"] = peer.seconds;
    state.counters["of surface's time"] = ours.seconds / peer.seconds;
    state.counters["MiB"] = ours.most_MiB;
    state.counters["surface MiB"] = peer.most_MiB;
}

} // namespace

BENCHMARK(stopTheDrawing)
    ->Arg(130'000)
    ->Arg(1'000'000)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1)
    ->UseManualTime();
BENCHMARK(drawTheWater)
    ->Args({100'000, 35'000})
    ->Args({250'000, 35'000})
    ->Args({500'000, 35'000})
    ->Args({1'000'000, 35'000})
    ->Args({2'000'000, 35'000})
    ->Args({4'000'000, 35'000})
    ->Args({4'000'000, 1'000'000})
    ->Unit(benchmark::kSecond)
    ->Iterations(1)
    ->UseManualTime();
