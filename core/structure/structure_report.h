// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"
#include "core/units/length.h"

namespace structure {

/// The thresholds that the water itself led to, for the user to see and to change.
struct StructureReport {
    double dropOffFrom_percent = 0.0;   ///< A drop-off has somewhere this slope ...
    double dropOffDownTo_percent = 0.0; ///< ... and reaches as far as this one.
    double gentleBelow_percent = 0.0;   ///< Shelf, plateau and flat are gentler than this.
    units::Length highGround;           ///< Rise over the surroundings, broad scale, from which
                                        ///< ground is high (or, below them, low).
    units::Length fineScale;            ///< As used: never below three cells.
    units::Length broadScale;
    units::Area leastArea;
    std::size_t piecesJoined = 0; ///< Pieces below the least size that joined their surroundings.
};

} // namespace structure
