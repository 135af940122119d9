// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/bottom.h"
#include "core/surface/solver/trend_ground.h"

namespace surface::solver {

/// The values of a field of larger cells between their middles; `elsewhere` where no such cell is
/// near.
[[nodiscard]] Field laidOn(const Ground& fine, const Ground& coarse, const Field& values,
                           const Field& elsewhere);

/// What a drawing on `fine` cells starts from: the same water drawn on larger ones, which is a
/// matter of little time and spares the first pass.
/// \param trend of these soundings on the cells of `trendGround`, and `fineTrend` on the fine ones.
/// \return what groundOf() returns; cancelled.
[[nodiscard]] base::Result<Bottom>
coarseStart(const geo::Outline& outline, units::Length coarseCell, const Ground& fine,
            const TrendGround& trendGround, const Field& trend, const Field& fineTrend,
            std::span<const soundings::KeptSounding> soundings,
            std::span<const std::size_t> positions, const BottomSettings& settings,
            const base::Progress& progress);

} // namespace surface::solver
