// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/soundings/sounding.h"
#include "core/surface/solver/samples.h"

#include <span>

namespace surface::solver {

/// A water laid out in cells of one size.
struct Ground {
    grid::Mask mask;
    ActiveCells cells;
    Field
        shore_m; ///< Distance from each centre to the shore, negative where the centre is on land.

    [[nodiscard]] const grid::GridFrame& frame() const { return mask.frame(); }
};

/// Lays the water out. \return wrongUse where the cell asks for too many cells; cancelled.
[[nodiscard]] base::Result<Ground> groundOf(const geo::Outline& outline, units::Length cell,
                                            int threads, const base::Progress& progress);

/// The soundings at `positions` that touch active cells, as samples.
[[nodiscard]] std::vector<Sample> samplesOf(const Ground& ground,
                                            std::span<const soundings::KeptSounding> soundings,
                                            std::span<const std::size_t> positions);

/// The same with soundings that follow one another on a pass within a quarter of a cell made one:
/// their mean says all that cells of this size can tell.
[[nodiscard]] std::vector<Sample>
mergedSamplesOf(const Ground& ground, std::span<const soundings::KeptSounding> soundings,
                std::span<const std::size_t> positions);

} // namespace surface::solver
