// SPDX-License-Identifier: GPL-3.0-or-later
// How long structure, weed and sections take on one million and four million cells, measured
// against one pass of gdaldem slope over the same grid in the same run: the ratio of their sum to
// Slope is to stay below 8. Run with --benchmark_repetitions=3 on a quiet machine.
#include "core/sections/divide_water.h"
#include "core/structure/find_structure.h"
#include "core/weed/map_weed.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>

#include <benchmark/benchmark.h>
#include <gdal_priv.h>
#include <gdal_utils.h>

namespace {

constexpr double wide_m = 2000.0;

/// A water of 2 km x 2 km with banks, humps and a channel, all of it cells.
struct Bottom {
    grid::DepthGrid depth;
    grid::Mask mask;
    geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    geo::Outline outline =
        geo::Outline::make(
            std::vector{geo::Piece{{{0, 0}, {wide_m, 0}, {wide_m, wide_m}, {0, wide_m}}, {}}},
            frame)
            .value();
    std::vector<weed::WeedNote> notes;
};

const Bottom& bottomOf(int side) {
    static std::map<int, std::unique_ptr<Bottom>> made;
    std::unique_ptr<Bottom>& bottom = made[side];
    if (bottom) {
        return *bottom;
    }
    const grid::GridFrame f(0.0, wide_m, wide_m / side, side, side);
    bottom = std::make_unique<Bottom>();
    bottom->depth = grid::DepthGrid(f);
    for (std::size_t i = 0; i < f.size(); ++i) {
        const geo::WaterPoint p = f.centre(f.cellAt(i));
        const double fromShore_m = std::min({p.x_m, p.y_m, wide_m - p.x_m, wide_m - p.y_m});
        const double bank_m = 7.0 * (1.0 - std::exp(-fromShore_m / 90.0));
        const double humps_m = 1.6 * std::sin(p.x_m / 83.0) * std::cos(p.y_m / 97.0);
        const double channel_m = 3.0 * std::exp(-std::pow((p.x_m - 900.0 - 0.2 * p.y_m) / 40.0, 2));
        bottom->depth.raw_m()[i] = static_cast<float>(std::max(bank_m + humps_m + channel_m, 0.1));
    }
    bottom->mask = grid::Mask::from(grid::Grid<std::uint8_t>(f, 1));
    for (int k = 0; k < 40; ++k) {
        const geo::WaterPoint at{100.0 + 45.0 * k, std::fmod(311.0 * k, 1900.0) + 50.0};
        bottom->notes.push_back({weed::WeedNoteId(k + 1),
                                 bottom->frame.toEarth(at),
                                 k % 3 == 0 ? weed::Growth::none : weed::Growth::thick,
                                 {}});
    }
    return *bottom;
}

void Slope(benchmark::State& state) {
    const Bottom& bottom = bottomOf(static_cast<int>(state.range(0)));
    const grid::GridFrame& f = bottom.depth.frame();
    GDALAllRegister();
    GDALDriver* memory = GetGDALDriverManager()->GetDriverByName("MEM");
    const std::unique_ptr<GDALDataset> grid(
        memory->Create("", f.cols(), f.rows(), 1, GDT_Float32, nullptr));
    double transform[6] = {f.west_m(), f.cell_m(), 0.0, f.north_m(), 0.0, -f.cell_m()};
    grid->SetGeoTransform(transform);
    auto values = bottom.depth.raw_m();
    if (grid->GetRasterBand(1)->RasterIO(GF_Write, 0, 0, f.cols(), f.rows(), values.data(),
                                         f.cols(), f.rows(), GDT_Float32, 0, 0) != CE_None) {
        state.SkipWithError("the grid could not be handed over");
        return;
    }
    const char* words[] = {"-of", "MEM", nullptr};
    GDALDEMProcessingOptions* options =
        GDALDEMProcessingOptionsNew(const_cast<char**>(words), nullptr);
    for ([[maybe_unused]] auto unused : state) {
        GDALDatasetH slope = GDALDEMProcessing("", grid.get(), "slope", nullptr, options, nullptr);
        benchmark::DoNotOptimize(slope);
        GDALClose(slope);
    }
    GDALDEMProcessingOptionsFree(options);
}

void Structure(benchmark::State& state) {
    const Bottom& bottom = bottomOf(static_cast<int>(state.range(0)));
    for ([[maybe_unused]] auto unused : state) {
        base::Progress progress;
        auto map = structure::findStructure(bottom.depth, bottom.mask, {}, {}, {}, progress);
        benchmark::DoNotOptimize(map);
    }
}

void Weed(benchmark::State& state) {
    const Bottom& bottom = bottomOf(static_cast<int>(state.range(0)));
    for ([[maybe_unused]] auto unused : state) {
        base::Progress progress;
        auto map = weed::mapWeed(bottom.depth, bottom.mask, bottom.notes, {},
                                 units::Depth::metres(2.0), bottom.frame, {}, progress);
        benchmark::DoNotOptimize(map);
    }
}

void Sections(benchmark::State& state) {
    const Bottom& bottom = bottomOf(static_cast<int>(state.range(0)));
    const contours::Bands bands;
    for ([[maybe_unused]] auto unused : state) {
        base::Progress progress;
        auto map = sections::divideWater({.depth = bottom.depth,
                                          .mask = bottom.mask,
                                          .outline = bottom.outline,
                                          .frame = bottom.frame,
                                          .bands = bands},
                                         {}, progress);
        benchmark::DoNotOptimize(map);
    }
}

constexpr int million = 1000;
constexpr int fourMillions = 2000;
BENCHMARK(Slope)->Arg(million)->Arg(fourMillions)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(Structure)->Arg(million)->Arg(fourMillions)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(Weed)->Arg(million)->Arg(fourMillions)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(Sections)->Arg(million)->Arg(fourMillions)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace

BENCHMARK_MAIN();
