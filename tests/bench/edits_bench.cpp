// SPDX-License-Identifier: GPL-3.0-or-later
// How long the map takes to follow an edit, up to its sections: the wait that a user at the desk
// sees. The water is the file that MEREMARK_WATER names; cmake/bench.sh makes the sample's.
#include "core/store/water_store.h"
#include "core/water/steps/derive.h"

#include <chrono>
#include <cstdlib>
#include <functional>

#include <benchmark/benchmark.h>

namespace {

using water::Derived;
using water::Water;

base::Result<Water> waterToEdit() {
    const char* file = std::getenv("MEREMARK_WATER");
    auto store = store::open(file == nullptr ? "" : file);
    if (!store) {
        return std::unexpected(store.error());
    }
    base::Progress quiet;
    return (*store)->load(quiet);
}

void setSomeAside(Water& water) {
    for (std::size_t i = 500; i < 510; ++i) {
        water.days.front().setAsideByHand.edit().push_back(i);
    }
}

void moveACorner(Water& water) {
    constexpr double step_deg = 1e-4; // of latitude: 11 m
    water.shoreline.edit().front().outer.front().lat_deg += step_deg;
}

void changeTheLimit(Water& water) {
    water.settings.bands =
        contours::Bands::make(contours::Bands().edges(), units::Depth::metres(7.0)).value();
}

void edit(benchmark::State& state, const std::function<void(Water&)>& change) {
    auto water = waterToEdit();
    if (!water) {
        state.SkipWithError(water.error().sentence().c_str());
        return;
    }
    using Clock = std::chrono::steady_clock;
    const auto timed = [](const Water& of, const Derived& before) {
        base::Progress progress;
        const auto start = Clock::now();
        auto derived = water::derive(of, before, water::Step::sections, progress);
        return std::pair(std::move(derived),
                         std::chrono::duration<double>(Clock::now() - start).count());
    };
    for (auto _ : state) {
        const auto [before, first_s] = timed(*water, {});
        Water edited = *water;
        change(edited);
        const auto [after, again_s] = timed(edited, before.value_or(Derived()));
        if (!after || !after->failures.empty()) {
            state.SkipWithError("the water cannot be derived");
            break;
        }
        state.SetIterationTime(again_s);
        state.counters["at first s"] = first_s;
    }
}

} // namespace

BENCHMARK_CAPTURE(edit, set_soundings_aside, setSomeAside)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(3)
    ->UseManualTime();
BENCHMARK_CAPTURE(edit, move_a_corner_of_the_shore, moveACorner)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(3)
    ->UseManualTime();
BENCHMARK_CAPTURE(edit, change_the_limit, changeTheLimit)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(3)
    ->UseManualTime();
