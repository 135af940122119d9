// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/path.h"
#include "core/water/document/shore_corner.h"
#include "core/water/document/water.h"

#include <vector>

namespace acts {

/// Gives the water a shoreline (none: takes it away). The frame is laid where there is none yet,
/// and anew where the shore lies out of its reach: all else stays where it is in metres. \return
/// the error of water::layFrame().
[[nodiscard]] base::Result<water::Water> setShoreline(const water::Water& water,
                                                      std::vector<geo::LonLatPiece> shoreline);

/// Each changes one thing of the shoreline.
/// \return wrongUse where there is no frame yet, or no such corner; unusableInput where the shore
/// would cross itself, lose its last three corners, or an island would lie on land.

[[nodiscard]] base::Result<water::Water>
moveShoreCorner(const water::Water& water, water::ShoreCorner corner, geo::WaterPoint to);
/// The new corner comes right after the one named.
[[nodiscard]] base::Result<water::Water>
addShoreCorner(const water::Water& water, water::ShoreCorner after, geo::WaterPoint at);
[[nodiscard]] base::Result<water::Water> removeShoreCorner(const water::Water& water,
                                                           water::ShoreCorner corner);
[[nodiscard]] base::Result<water::Water> addIsland(const water::Water& water,
                                                   const geo::Ring& island);
[[nodiscard]] base::Result<water::Water> removeIslandAt(const water::Water& water,
                                                        geo::WaterPoint at);
/// A shore gone round anew; islands inside it stay.
[[nodiscard]] base::Result<water::Water> traceShore(const water::Water& water,
                                                    const geo::Ring& shore);

} // namespace acts
