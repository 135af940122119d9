// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/length.h"

#include <cstddef>

namespace surface {

/// How well a drawing foretold soundings that it had not seen.
struct LineCheck {
    std::size_t soundings = 0; ///< Held out and compared.
    std::size_t stretches = 0; ///< In how many stretches of track.
    units::Length meanAbsolute;
    units::Length rootMeanSquare;
    units::Length p95;  ///< 95 of 100 errors are smaller.
    units::Length bias; ///< Mean of drawn less sounded; positive where the drawing is too deep.
};

} // namespace surface
