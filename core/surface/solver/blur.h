// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/active_cells.h"

namespace surface::solver {

/// Means over the neighbourhood of each active cell, of active cells alone, with weights near to a
/// Gaussian of the standard deviation asked for (three running means each way).
class Blur {
public:
    Blur(const ActiveCells& cells, double deviation_m);
    /// The field must be 0 where no cell is active.
    [[nodiscard]] Field of(Field field) const;
    /// Each field by its own means.
    void replace(const std::vector<Field*>& fields, int threads) const;

private:
    [[nodiscard]] Field sums(Field field) const;

    const ActiveCells* cells_;
    int reach_; ///< Cells on each side of a running mean.
    Field weights_;
};

} // namespace surface::solver
