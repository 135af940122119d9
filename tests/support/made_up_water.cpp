// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/made_up_water.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace support {

using geo::WaterPoint;

namespace {

WaterPoint turnedPoint(WaterPoint p, double angle_deg) {
    const double a = angle_deg * std::numbers::pi / 180.0;
    return {p.x_m * std::cos(a) - p.y_m * std::sin(a), p.x_m * std::sin(a) + p.y_m * std::cos(a)};
}

} // namespace

MadeUpWater madeUpWater(std::vector<geo::Piece> pieces, Bottom bottom, double cell_m) {
    const geo::WaterFrame frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    const geo::Outline outline = geo::Outline::make(std::move(pieces), frame).value();
    const grid::GridFrame cells =
        grid::GridFrame::covering(outline.box(), units::Length::metres(cell_m)).value();
    MadeUpWater water{frame, outline, grid::Mask::of(outline, cells), grid::DepthGrid(cells),
                      std::move(bottom)};
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (water.mask.isActive(i)) {
            const double depth_m = water.bottom(cells.centre(cells.cellAt(i)));
            water.depth.set(i, units::Depth::metres(std::max(depth_m, 0.0)));
        }
    }
    return water;
}

geo::Ring rectangle(double west_m, double south_m, double east_m, double north_m) {
    return {{west_m, south_m}, {east_m, south_m}, {east_m, north_m}, {west_m, north_m}};
}

geo::Ring circle(WaterPoint middle, double radius_m, int corners) {
    geo::Ring ring;
    for (int i = 0; i < corners; ++i) {
        const double a = 2.0 * std::numbers::pi * i / corners;
        ring.push_back({middle.x_m + radius_m * std::cos(a), middle.y_m + radius_m * std::sin(a)});
    }
    return ring;
}

geo::Ring turned(geo::Ring ring, double angle_deg) {
    for (WaterPoint& p : ring) {
        p = turnedPoint(p, angle_deg);
    }
    return ring;
}

Bottom turned(Bottom bottom, double angle_deg) {
    return [bottom = std::move(bottom), angle_deg](WaterPoint p) {
        return bottom(turnedPoint(p, -angle_deg));
    };
}

MadeUpWater cone(double radius_m, double depth_m, double cell_m) {
    return madeUpWater(
        {{circle({0.0, 0.0}, radius_m, 720), {}}},
        [=](WaterPoint p) { return depth_m * (1.0 - std::hypot(p.x_m, p.y_m) / radius_m); },
        cell_m);
}

MadeUpWater plane(double half_m, double west_depth_m, double east_depth_m, double cell_m) {
    return madeUpWater(
        {{rectangle(-half_m, -half_m, half_m, half_m), {}}},
        [=](WaterPoint p) {
            const double t = (p.x_m + half_m) / (2.0 * half_m);
            return west_depth_m + t * (east_depth_m - west_depth_m);
        },
        cell_m);
}

MadeUpWater gaussianHump(double half_m, double depth_m, double height_m, double sigma_m,
                         WaterPoint middle, double cell_m) {
    return madeUpWater(
        {{rectangle(-half_m, -half_m, half_m, half_m), {}}},
        [=](WaterPoint p) {
            const double r = geo::distance_m(p, middle) / sigma_m;
            return depth_m - height_m * std::exp(-0.5 * r * r);
        },
        cell_m);
}

MadeUpWater step(double half_m, double shallow_m, double deep_m, double run_m, double cell_m) {
    return madeUpWater(
        {{rectangle(-2.0 * half_m, -half_m, 2.0 * half_m, half_m), {}}},
        [=](WaterPoint p) {
            const double t = std::clamp(p.x_m / run_m + 0.5, 0.0, 1.0);
            return shallow_m + t * (deep_m - shallow_m);
        },
        cell_m);
}

MadeUpWater channel(double half_m, double depth_m, double cut_m, double sigma_m, double cell_m) {
    return madeUpWater(
        {{rectangle(-half_m, -half_m, half_m, half_m), {}}},
        [=](WaterPoint p) {
            const double r = p.x_m / sigma_m;
            return depth_m + cut_m * std::exp(-0.5 * r * r);
        },
        cell_m);
}

MadeUpWater twoBasins(double side_m, double neck_m, double depth_m, double cell_m) {
    const double in = 0.5 * neck_m;
    const double half = 0.5 * side_m;
    const geo::Ring ring{
        {-in - side_m, -half}, {-in, -half},        {-in, -in}, {in, -in}, {in, -half},
        {in + side_m, -half},  {in + side_m, half}, {in, half}, {in, in},  {-in, in},
        {-in, half},           {-in - side_m, half}};
    return madeUpWater(
        {{ring, {}}}, [=](WaterPoint) { return depth_m; }, cell_m);
}

} // namespace support
