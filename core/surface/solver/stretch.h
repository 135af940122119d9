// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/surface/solver/samples.h"

namespace surface::solver {

/// The trend m made to fit its surroundings: m (1 + e), e the smooth field that minimises
/// sum v_i (m_i (1 + e_i) - d_i)^2 + 3 int |grad e|^2 + 3 / 400^2 int e^2 + 300000 int |H e|^2,
/// v_i = 1 / (0.2^2 m_i^2 + 0.3^2), samples thinned by blocks of 25 m, e held to [-0.9, 4].
/// The trend unchanged where the user stopped it.
[[nodiscard]] Field stretched(const ActiveCells& cells, const Field& trend,
                              const std::vector<Sample>& samples, int threads,
                              const base::Progress& progress);

} // namespace surface::solver
