// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/ground.h"

namespace surface::solver {

/// The depth that no cell may pass: 1.15 times the deepest sounding within 500 m (of all soundings,
/// where none is that near) and 0.5 m. Found on blocks of 50 m.
[[nodiscard]] Field deepestNearby_m(const Ground& ground,
                                    std::span<const soundings::KeptSounding> soundings,
                                    std::span<const std::size_t> positions,
                                    const base::Progress& progress);

} // namespace surface::solver
