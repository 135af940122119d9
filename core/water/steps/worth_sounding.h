// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

namespace water {

/// How much it is worth to know the depth of each cell better, for somebody who fishes: the chance
/// that it is no deeper than the limit, and a tenth even where it hardly can be, since nobody knows
/// before he has been there; twice that within a cast of what one anchors beside and of marks of
/// the user's own (our choice, no source). On the frame of the drawing; nought outside the water.
/// \param derived drawn at least; without structure nothing counts twice but his marks.
[[nodiscard]] grid::Grid<float> worthSounding(const Water& water, const Derived& derived);

} // namespace water
