// SPDX-License-Identifier: GPL-3.0-or-later
// From a log to a water file, beside ogr2ogr on the same soundings in the same run; and crossings.
#include "core/store/write_water.h"
#include "core/water/steps/bring_in.h"
#include "core/water/steps/derive.h"
#include "own_process.h"
#include "tests/support/lattice_survey.h"

#include <filesystem>
#include <string>

#include <benchmark/benchmark.h>
#include <unistd.h>

namespace {

using std::filesystem::path;

/// A folder for one benchmark, gone with it.
class Scratch {
public:
    Scratch()
        : folder_(std::filesystem::temp_directory_path() /
                  ("meremark-bench-" + std::to_string(getpid()))) {
        std::filesystem::create_directories(folder_);
    }
    ~Scratch() {
        std::error_code ignored;
        std::filesystem::remove_all(folder_, ignored);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    Scratch(Scratch&&) = delete;
    Scratch& operator=(Scratch&&) = delete;

    [[nodiscard]] path file(const char* name) const { return folder_ / name; }

private:
    path folder_;
};

/// A water with this log as its only survey day.
base::Result<water::Water> readLog(const path& log, const std::vector<geo::LonLatPiece>& shore) {
    base::Progress progress;
    water::Water water;
    water.shoreline = shore;
    if (auto laid = water::layFrame(water); !laid) {
        return std::unexpected(laid.error());
    }
    auto brought = water::bringInDay(water, log, {}, progress);
    if (!brought) {
        return std::unexpected(brought.error());
    }
    brought->day.id = soundings::SurveyDayId(1);
    brought->day.sounder.draft = units::Depth::metres(0.3);
    water.days.push_back(std::move(brought->day));
    return water;
}

/// Read, reduce (set aside, crossings, offers included) and store: what a user's log goes through.
int readReduceStore(const path& log, const std::vector<geo::LonLatPiece>& shore, const path& out) {
    base::Progress progress;
    const auto water = readLog(log, shore);
    if (!water) {
        return 1;
    }
    const auto derived = water::derive(*water, {}, water::Step::reduce, progress);
    if (!derived) {
        return 2;
    }
    return store::writeWater(out, *water, *derived, {}, progress) ? 0 : 3;
}

/// Replaces the process by ogr2ogr; comes back only where it cannot.
int becomeOgr2ogr(const path& table, const path& out) {
    const std::string from = table.string();
    const std::string to = out.string();
    execlp("ogr2ogr", "ogr2ogr", "-f", "GPKG", to.c_str(), from.c_str(), "-oo",
           "X_POSSIBLE_NAMES=lon", "-oo", "Y_POSSIBLE_NAMES=lat", "-oo", "AUTODETECT_TYPE=YES",
           "-a_srs", "EPSG:4326", nullptr);
    return 127;
}

/// Argument: soundings. The log has two rows for each, the table one; rates are of soundings, so
/// that the count of sentences flatters nobody.
void logToWaterFile(benchmark::State& state) {
    const auto count = static_cast<std::size_t>(state.range(0));
    const Scratch scratch;
    const support::LatticeSurvey survey(count);
    survey.writeLog(scratch.file("day.nmea"));
    survey.writeTable(scratch.file("day.csv"));
    const std::vector<geo::LonLatPiece> shore = survey.shore();
    bench::Taken ours;
    bench::Taken peer;
    for (auto _ : state) {
        std::filesystem::remove(scratch.file("ours.gpkg"));
        std::filesystem::remove(scratch.file("peer.gpkg"));
        ours = bench::inOwnProcess([&] {
            return readReduceStore(scratch.file("day.nmea"), shore, scratch.file("ours.gpkg"));
        });
        peer = bench::inOwnProcess(
            [&] { return becomeOgr2ogr(scratch.file("day.csv"), scratch.file("peer.gpkg")); });
        if (!ours.isDone || !peer.isDone) {
            state.SkipWithError(ours.isDone ? "ogr2ogr failed" : "ours failed");
            return;
        }
        state.SetIterationTime(ours.seconds);
    }
    state.counters["soundings/s"] = static_cast<double>(count) / ours.seconds;
    state.counters["ogr2ogr soundings/s"] = static_cast<double>(count) / peer.seconds;
    state.counters["times as fast"] = peer.seconds / ours.seconds;
    state.counters["MiB"] = ours.most_MiB;
    state.counters["ogr2ogr MiB"] = peer.most_MiB;
}

/// One part of that alone, in this process.
enum class Part { read, reduce, store };

void partOfIt(benchmark::State& state, Part part) {
    const auto count = static_cast<std::size_t>(state.range(0));
    const Scratch scratch;
    const support::LatticeSurvey survey(count);
    survey.writeLog(scratch.file("day.nmea"));
    base::Progress progress;
    auto water = readLog(scratch.file("day.nmea"), survey.shore());
    if (!water) {
        state.SkipWithError("the log cannot be read");
        return;
    }
    const auto derived = water::derive(*water, {}, water::Step::reduce, progress);
    bool isDone = derived.has_value();
    for (auto _ : state) {
        if (part == Part::read) {
            isDone = isDone && readLog(scratch.file("day.nmea"), survey.shore()).has_value();
        } else if (part == Part::reduce) {
            isDone = isDone && water::derive(*water, {}, water::Step::reduce, progress).has_value();
        } else {
            std::filesystem::remove(scratch.file("w.gpkg"));
            isDone =
                isDone && store::writeWater(scratch.file("w.gpkg"), *water, *derived, {}, progress)
                              .has_value();
        }
    }
    if (!isDone) {
        state.SkipWithError("it failed");
    }
    state.counters["soundings/s"] = benchmark::Counter(
        static_cast<double>(count), benchmark::Counter::kIsIterationInvariantRate);
}

} // namespace

BENCHMARK_CAPTURE(partOfIt, read, Part::read)->Arg(500'000)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(partOfIt, reduce, Part::reduce)->Arg(500'000)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(partOfIt, store, Part::store)->Arg(500'000)->Unit(benchmark::kMillisecond);
BENCHMARK(logToWaterFile)
    ->Arg(50'000)
    ->Arg(100'000)
    ->Arg(250'000)
    ->Arg(500'000)
    ->Arg(1'000'000)
    ->Arg(2'000'000)
    ->Arg(4'000'000)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1)
    ->UseManualTime();
