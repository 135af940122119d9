// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/ground_form.h"
#include "core/structure/zone_assembly.h"

namespace structure {

/// Not 0 in every connected piece of cells from `downTo` up that somewhere reaches `from`.
[[nodiscard]] grid::Grid<std::uint8_t> withHysteresis(const grid::Grid<float>& values, double from,
                                                      double downTo);

/// From what on ground stands out enough to be a place.
struct FeatureLimits {
    units::Length high; ///< Over or below both sides.
    /// A spur or trough of fewer cells is not told from the bends of a bank.
    std::size_t leastLine = 0;
    /// 95 % half-width by cell; nothing where it is not known. Ground that stands out by less than
    /// two drawn depths can differ by error (root two of it) may not be there at all.
    const grid::Grid<float>* trustHalfWidth_m = nullptr;
};

/// Marks the cells of humps, spurs, holes, troughs and saddles in `kinds`: ground that stands out
/// on both sides is a hump where nothing as shallow can be reached from its summit without going
/// down first, else a spur; low ground is a hole where it lies below all that surrounds it and is
/// about as wide as long, else a trough; ground that does both is a saddle. Somewhere it has to
/// stand out by the limits and by a tenth of the depth there: what counts for a feature in deep
/// water is more than in the shallows (compare IHO S-44, Order 1a: features of a tenth of the
/// depth).
void markFeatures(KindGrid& kinds, const grid::DepthGrid& depth, const GroundForm& form,
                  const FeatureLimits& limits);

} // namespace structure
