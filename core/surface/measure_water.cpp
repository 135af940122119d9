// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/measure_water.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

namespace surface {

namespace {

constexpr int partsEachWay = 4;
constexpr double mostSteps = 100'000;

/// Area of water and sum of area x depth in each step of the table.
struct Tally {
    std::vector<double> area_m2;
    std::vector<double> volume_m3;
    double deepest_m = 0.0;

    void add(double depth_m, double part_m2, double step_m) {
        const auto step = static_cast<std::size_t>(depth_m / step_m);
        if (step >= area_m2.size()) {
            area_m2.resize(step + 1, 0.0);
            volume_m3.resize(step + 1, 0.0);
        }
        area_m2[step] += part_m2;
        volume_m3[step] += part_m2 * depth_m;
        deepest_m = std::max(deepest_m, depth_m);
    }
};

/// Adds the parts of one cell, each with the depth at its own middle.
void addCell(const grid::DepthGrid& depth, grid::Cell cell, double cell_m2,
             const MeasureSettings& settings, Tally& tally) {
    const double cell_m = depth.frame().cell_m();
    const geo::WaterPoint centre = depth.frame().centre(cell);
    for (int r = 0; r < partsEachWay; ++r) {
        for (int c = 0; c < partsEachWay; ++c) {
            const geo::WaterPoint p{centre.x_m + ((c + 0.5) / partsEachWay - 0.5) * cell_m,
                                    centre.y_m + ((r + 0.5) / partsEachWay - 0.5) * cell_m};
            const double depth_m =
                depth.at(p).value_or(units::Depth{}).inMetres() + settings.rise.inMetres();
            if (depth_m > 0.0 || (depth_m == 0.0 && settings.rise.inMetres() >= 0.0)) {
                tally.add(depth_m, cell_m2 / (partsEachWay * partsEachWay),
                          settings.step.inMetres());
            }
        }
    }
}

Hypsography summed(const Tally& tally, const geo::Outline& outline,
                   const MeasureSettings& settings) {
    Hypsography form;
    form.rise = settings.rise;
    form.maxDepth = units::Depth::metres(tally.deepest_m);
    form.steps.resize(tally.area_m2.size());
    double area_m2 = 0.0;
    double volume_m3 = 0.0;
    for (std::size_t k = tally.area_m2.size(); k-- > 0;) {
        area_m2 += tally.area_m2[k];
        volume_m3 += tally.volume_m3[k];
        const double depth_m = static_cast<double>(k) * settings.step.inMetres();
        form.steps[k] = {units::Depth::metres(depth_m), units::Area::squareMetres(area_m2),
                         units::Volume::cubicMetres(volume_m3 - depth_m * area_m2)};
    }
    form.area = units::Area::squareMetres(area_m2);
    form.volume = units::Volume::cubicMetres(volume_m3);
    form.meanDepth = units::Depth::metres(volume_m3 / area_m2);
    form.shoreLength = outline.shoreLength();
    form.shoreDevelopment = form.shoreLength.inMetres() /
                            (2.0 * std::sqrt(std::numbers::pi * outline.area().inSquareMetres()));
    form.volumeDevelopment =
        tally.deepest_m > 0.0 ? 3.0 * form.meanDepth.inMetres() / tally.deepest_m : 0.0;
    return form;
}

} // namespace

std::vector<std::string> problemsIn(const MeasureSettings& settings) {
    std::vector<std::string> problems;
    const double step_m = settings.step.inMetres();
    const double rise_m = settings.rise.inMetres();
    if (!(step_m >= 0.01 && step_m <= 100.0)) {
        problems.emplace_back("the step between depths must be 0.01 to 100 m");
    }
    if (!(rise_m >= -100.0 && rise_m <= 100.0)) {
        problems.emplace_back("the level must be within 100 m of chart level");
    }
    return problems;
}

base::Result<Hypsography> measureWater(const grid::DepthGrid& depth, const grid::Mask& mask,
                                       const geo::Outline& outline, const MeasureSettings& settings,
                                       base::Progress& progress) {
    if (const std::vector<std::string> problems = problemsIn(settings); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, problems.front(), "measuring",
                          "choose a value in its range");
    }
    if (depth.frame() != mask.frame()) {
        return base::fail(base::ErrorKind::wrongUse,
                          "the depths and the shore are laid out in different cells", "measuring",
                          "draw the water again");
    }
    const double deepest_m =
        depth.deepest().value_or(units::Depth{}).inMetres() + settings.rise.inMetres();
    if (!(deepest_m > 0.0)) {
        return base::fail(base::ErrorKind::unusableInput,
                          fmt::format("no water is left at {:+.2f} m", settings.rise.inMetres()),
                          "level", "choose a higher level");
    }
    if (deepest_m / settings.step.inMetres() > mostSteps) {
        return base::fail(base::ErrorKind::wrongUse, "the table would be too long", "measuring",
                          "choose a larger step");
    }
    Tally tally;
    const grid::GridFrame& frame = depth.frame();
    for (int row = 0; row < frame.rows(); ++row) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        progress.tell(static_cast<double>(row) / frame.rows());
        for (int col = 0; col < frame.cols(); ++col) {
            const std::size_t i = frame.index({col, row});
            if (depth.has(i) && mask.share(i) > 0.0F) {
                addCell(depth, {col, row}, static_cast<double>(mask.share(i)) * frame.cellArea_m2(),
                        settings, tally);
            }
        }
    }
    if (tally.area_m2.empty()) {
        return base::fail(base::ErrorKind::unusableInput, "no cell holds water", "measuring",
                          "draw the water again");
    }
    return summed(tally, outline, settings);
}

} // namespace surface
