// SPDX-License-Identifier: GPL-3.0-or-later
// Drawing a case of the gridding bench, settings chosen and trust included, beside gmt surface on
// the same cells in the same run; and how soon a drawing stops.
#include "core/surface/draw_water.h"
#include "own_process.h"
#include "tests/support/gridding_case.h"

#include <chrono>
#include <cmath>
#include <cstdlib>
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

base::Result<support::GriddingCase> lakeToDraw() {
    const char* shared = std::getenv("MEREMARK_SHARED_DIR");
    return support::readGriddingCase((shared == nullptr ? "../shared" : std::string(shared)) +
                                     "/bench/cases/A-lines");
}

/// So many soundings: more between those of the case, each with a noise of its own.
void fillUp(std::vector<soundings::KeptSounding>& soundings, std::size_t count) {
    const std::size_t each = count / soundings.size();
    std::mt19937 random(1);
    std::normal_distribution<double> noise_m(0.0, 0.05);
    std::vector<soundings::KeptSounding> more;
    for (std::size_t i = 0; i < soundings.size(); ++i) {
        more.push_back(soundings[i]);
        const bool goesOn = i + 1 < soundings.size() && soundings[i + 1].pass == soundings[i].pass;
        for (std::size_t k = 1; k < each && goesOn; ++k) {
            const double share = static_cast<double>(k) / static_cast<double>(each);
            soundings::KeptSounding s = soundings[i];
            s.x_m = std::lerp(s.x_m, soundings[i + 1].x_m, share);
            s.y_m = std::lerp(s.y_m, soundings[i + 1].y_m, share);
            s.depth_m = std::max(0.0, std::lerp(s.depth_m, soundings[i + 1].depth_m, share) +
                                          noise_m(random));
            more.push_back(s);
        }
    }
    soundings = std::move(more);
}

double cellFor(const geo::Outline& outline, std::int64_t cells) {
    return std::sqrt(outline.area().inSquareMetres() / static_cast<double>(cells));
}

surface::DrawSettings settingsOf(double cell_m) {
    surface::DrawSettings settings;
    settings.cell = units::Length::metres(cell_m);
    return settings;
}

/// What a general-purpose gridder is given.
struct PeerFiles {
    path soundings; ///< x y depth
    path shore;     ///< x y 0, every 5 m
    std::string region;
};

PeerFiles writeForPeer(const support::GriddingCase& lake, const path& folder, double cell_m) {
    PeerFiles files{folder / "soundings.xyz", folder / "shore.xyz", {}};
    std::ofstream out(files.soundings);
    for (const soundings::KeptSounding& s : lake.soundings) {
        out << fmt::format("{:.2f} {:.2f} {:.2f}\n", s.x_m, s.y_m, s.depth_m);
    }
    std::ofstream shore(files.shore);
    const auto putRing = [&](const geo::Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const geo::WaterPoint a = ring[i];
            const geo::WaterPoint b = ring[(i + 1) % ring.size()];
            const int steps = std::max(1, static_cast<int>(geo::distance_m(a, b) / 5.0));
            for (int k = 0; k < steps; ++k) {
                shore << fmt::format("{:.2f} {:.2f} 0\n", std::lerp(a.x_m, b.x_m, 1.0 * k / steps),
                                     std::lerp(a.y_m, b.y_m, 1.0 * k / steps));
            }
        }
    };
    for (const geo::Piece& piece : lake.outline.pieces()) {
        putRing(piece.outer);
        for (const geo::Ring& island : piece.islands) {
            putRing(island);
        }
    }
    const geo::Box& box = lake.outline.box();
    const auto down = [cell_m](double v) { return std::floor(v / cell_m) * cell_m; };
    files.region =
        fmt::format("-R{}/{}/{}/{}", down(box.west_m - cell_m), down(box.east_m) + cell_m,
                    down(box.south_m - cell_m), down(box.north_m) + cell_m);
    return files;
}

/// Replaces the process by blockmedian of gmt, its medians in `to`.
int becomeBlockMedian(const PeerFiles& files, const std::string& cell, const path& to) {
    std::filesystem::current_path(to.parent_path()); // gmt leaves its history where it runs
    const int file = open(to.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    dup2(file, STDOUT_FILENO);
    execlp("gmt", "gmt", "blockmedian", files.soundings.c_str(), files.region.c_str(), cell.c_str(),
           nullptr);
    return 127;
}

/// Replaces the process by surface of gmt with the tension that it is best at here.
int becomeSurface(const PeerFiles& files, const std::string& cell, const path& medians,
                  const path& to) {
    std::filesystem::current_path(to.parent_path());
    const std::string grid = "-G" + to.string();
    execlp("gmt", "gmt", "surface", medians.c_str(), files.shore.c_str(), files.region.c_str(),
           cell.c_str(), "-T0", grid.c_str(), nullptr);
    return 127;
}

/// Arguments: cells, soundings (0: those of the case).
void drawTheWater(benchmark::State& state) {
    auto lake = lakeToDraw();
    if (!lake) {
        state.SkipWithError(lake.error().sentence().c_str());
        return;
    }
    if (state.range(1) > 0) {
        fillUp(lake->soundings, static_cast<std::size_t>(state.range(1)));
    }
    const double cell_m = cellFor(lake->outline, state.range(0));
    const std::string cell = fmt::format("-I{}", cell_m);
    const path folder =
        std::filesystem::temp_directory_path() / fmt::format("meremark-bench-{}", getpid());
    std::filesystem::create_directories(folder);
    const PeerFiles files = writeForPeer(*lake, folder, cell_m);
    bench::Taken ours;
    bench::Taken peer;
    for (auto _ : state) {
        ours = bench::inOwnProcess([&] {
            base::Progress progress;
            return surface::drawWater(lake->outline, lake->soundings, settingsOf(cell_m), progress)
                       ? 0
                       : 1;
        });
        const path medians = folder / "medians.xyz";
        const bench::Taken halved =
            bench::inOwnProcess([&] { return becomeBlockMedian(files, cell, medians); });
        peer = bench::inOwnProcess(
            [&] { return becomeSurface(files, cell, medians, folder / "surface.nc"); });
        if (!ours.isDone || !halved.isDone || !peer.isDone) {
            state.SkipWithError(ours.isDone ? "gmt failed" : "ours failed");
            break;
        }
        state.SetIterationTime(ours.seconds);
    }
    std::filesystem::remove_all(folder);
    state.counters["soundings"] = static_cast<double>(lake->soundings.size());
    state.counters["surface s"] = peer.seconds;
    state.counters["of surface's time"] = ours.seconds / peer.seconds;
    state.counters["MiB"] = ours.most_MiB;
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
    const auto lake = lakeToDraw();
    if (!lake) {
        state.SkipWithError(lake.error().sentence().c_str());
        return;
    }
    const auto settings = settingsOf(cellFor(lake->outline, state.range(0)));
    const auto draw = [&](base::Progress& progress) {
        return surface::drawWater(lake->outline, lake->soundings, settings, progress).has_value();
    };
    Stopping never(std::chrono::hours(1));
    const auto start = Stopping::Clock::now();
    draw(never);
    const std::chrono::duration<double> whole = Stopping::Clock::now() - start;
    double longest_s = 0.0;
    double at = 0.0;
    for (auto _ : state) {
        for (double share = 0.0125; share < 1.0; share += 0.025) {
            Stopping stopping(share * whole);
            if (!draw(stopping) && stopping.since_s() > longest_s) {
                longest_s = stopping.since_s();
                at = share;
            }
        }
        state.SetIterationTime(longest_s);
    }
    state.counters["at share"] = at;
}

/// Drawing on after an edit that sets some soundings aside, beside drawing afresh. Argument: cells.
void redrawAfterAnEdit(benchmark::State& state) {
    auto lake = lakeToDraw();
    if (!lake) {
        state.SkipWithError(lake.error().sentence().c_str());
        return;
    }
    const auto settings = settingsOf(cellFor(lake->outline, state.range(0)));
    base::Progress progress;
    const auto timed = [&](const surface::DrawnWater* before) {
        const auto start = Stopping::Clock::now();
        auto drawn = surface::drawWater(lake->outline, lake->soundings, settings, progress, before);
        const std::chrono::duration<double> taken = Stopping::Clock::now() - start;
        return std::pair(std::move(drawn), taken.count());
    };
    for (auto _ : state) {
        const auto [afresh, afresh_s] = timed(nullptr);
        lake->soundings.erase(lake->soundings.begin() + 100, lake->soundings.begin() + 110);
        const auto [again, again_s] = timed(afresh ? &*afresh : nullptr);
        if (!again || !again->report.isChoiceKept) {
            state.SkipWithError("not drawn on");
            break;
        }
        state.SetIterationTime(again_s);
        state.counters["of a fresh drawing"] = again_s / afresh_s;
    }
}

} // namespace

BENCHMARK(drawTheWater)
    ->Args({100'000, 0})
    ->Args({250'000, 0})
    ->Args({500'000, 0})
    ->Args({1'000'000, 0})
    ->Args({2'000'000, 0})
    ->Args({4'000'000, 0})
    ->Args({4'000'000, 1'000'000})
    ->Unit(benchmark::kSecond)
    ->Iterations(1)
    ->UseManualTime();
BENCHMARK(stopTheDrawing)
    ->Arg(130'000)
    ->Arg(1'000'000)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1)
    ->UseManualTime();
BENCHMARK(redrawAfterAnEdit)
    ->Arg(130'000)
    ->Arg(1'000'000)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1)
    ->UseManualTime();
