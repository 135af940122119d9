// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/ground_form.h"
#include "core/structure/zone_assembly.h"

namespace structure {

/// Not 0 in every connected piece of cells from `downTo` up that somewhere reaches `from`.
[[nodiscard]] grid::Grid<std::uint8_t> withHysteresis(const grid::Grid<float>& values, double from,
                                                      double downTo);

/// Marks the cells of humps, spurs, holes, troughs and saddles in `kinds`: ground that stands out
/// on both sides by `high` is a hump where its summit rises above all that surrounds it, else a
/// spur; low ground is a hole where it lies below all that surrounds it and is about as wide as
/// long, else a trough; ground that does both is a saddle.
void markFeatures(KindGrid& kinds, const grid::DepthGrid& depth, const GroundForm& form,
                  units::Length high);

} // namespace structure
