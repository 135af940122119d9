// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/depth_grid.h"
#include "core/grid/mask.h"

#include <functional>

namespace support {

/// Depth by formula: metres, positive down, at a place in the water's frame.
using Bottom = std::function<double(geo::WaterPoint)>;

/// An invented water whose every depth is known by formula.
struct MadeUpWater {
    geo::WaterFrame frame;
    geo::Outline outline;
    grid::Mask mask;
    grid::DepthGrid depth; ///< Bottom at the centre of every active cell, never above the surface.
    Bottom bottom;
};

/// The water inside `pieces` over `bottom` on cells of `cell_m`; the frame's origin is (0, 0).
[[nodiscard]] MadeUpWater madeUpWater(std::vector<geo::Piece> pieces, Bottom bottom, double cell_m);

/// An upright rectangle, counter-clockwise.
[[nodiscard]] geo::Ring rectangle(double west_m, double south_m, double east_m, double north_m);
/// A regular polygon of `corners` on the circle, counter-clockwise.
[[nodiscard]] geo::Ring circle(geo::WaterPoint middle, double radius_m, int corners = 180);
/// The ring turned about the origin, anticlockwise.
[[nodiscard]] geo::Ring turned(geo::Ring ring, double angle_deg);
/// The bottom turned about the origin with it.
[[nodiscard]] Bottom turned(Bottom bottom, double angle_deg);

/// A round water of `radius_m` that deepens evenly from the shore to `depth_m` in the middle.
[[nodiscard]] MadeUpWater cone(double radius_m, double depth_m, double cell_m);
/// A square of side 2 x `half_m` whose depth grows evenly from west to east.
[[nodiscard]] MadeUpWater plane(double half_m, double west_depth_m, double east_depth_m,
                                double cell_m);
/// A square of side 2 x `half_m`, flat at `depth_m`, with a Gaussian rise (or, negative, pit) of
/// `height_m` and standard deviation `sigma_m` at `middle`.
[[nodiscard]] MadeUpWater gaussianHump(double half_m, double depth_m, double height_m,
                                       double sigma_m, geo::WaterPoint middle, double cell_m);
/// A rectangle 4 x `half_m` by 2 x `half_m`: flat at `shallow_m` in the west, flat at `deep_m` in
/// the east, an even slope `run_m` wide round x = 0 between them.
[[nodiscard]] MadeUpWater step(double half_m, double shallow_m, double deep_m, double run_m,
                               double cell_m);
/// A square of side 2 x `half_m`, flat at `depth_m`, with a channel along x = 0 of Gaussian cut:
/// `cut_m` deeper on its line, standard deviation `sigma_m`.
[[nodiscard]] MadeUpWater channel(double half_m, double depth_m, double cut_m, double sigma_m,
                                  double cell_m);
/// Two square basins of side `side_m`, flat at `depth_m`, joined by a neck `neck_m` wide and long
/// whose middle is the origin.
[[nodiscard]] MadeUpWater twoBasins(double side_m, double neck_m, double depth_m, double cell_m);

} // namespace support
