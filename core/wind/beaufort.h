// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/speed.h"

#include <string_view>

namespace wind {

/// Beaufort's number of a wind, 0 to 12. Classified on whole knots (1 4 7 11 17 22 28 34 41 48 56
/// 64 begin forces 1 to 12), because the rounded bands in metres per second overlap.
[[nodiscard]] int beaufortForce(units::Speed wind);

/// The middle of a force, whole knots: force 4, 11 to 16 knots, is 13.5. Force 0 is calm, force 12
/// begins at 64 and is given as that. \param force is held to 0..12.
[[nodiscard]] units::Speed middleOfForce(int force);

/// Its name in the shipping forecast's words: "gentle breeze". \param force is held to 0..12.
[[nodiscard]] std::string_view beaufortName(int force);

/// What it looks like on a lake, in a line. \param force is held to 0..12.
[[nodiscard]] std::string_view beaufortOnTheWater(int force);

} // namespace wind
