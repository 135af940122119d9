// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/ground.h"
#include "core/surface/solver/trend_basis.h"

namespace surface::solver {

/// Where the trend is computed: coarse cells (it is smooth) with the shapes of this outline.
class TrendGround {
public:
    /// \return what groundOf() returns; cancelled.
    [[nodiscard]] static base::Result<TrendGround> of(const geo::Outline& outline,
                                                      units::Length cell, int threads,
                                                      const base::Progress& progress);

    [[nodiscard]] const Ground& ground() const { return ground_; }
    /// The trend of these soundings, stretched to fit its surroundings, on the coarse cells.
    [[nodiscard]] Field trendFrom(std::span<const soundings::KeptSounding> soundings,
                                  std::span<const std::size_t> positions,
                                  const base::Progress& progress) const;
    /// The same trend on finer cells: what lies over a plain rise from the shore is interpolated,
    /// so that it still meets the shore at 0; on land it goes on above the water.
    [[nodiscard]] Field onto(const Ground& fine, const Field& trend) const;

private:
    Ground ground_;
    TrendBasis basis_;
    int threads_ = 1;
};

} // namespace surface::solver
