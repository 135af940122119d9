// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/sounding.h"

#include <cstddef>
#include <span>
#include <vector>

namespace surface::solver {

/// One way to hold soundings out: what is drawn from, and what it is compared with.
struct Fold {
    std::vector<std::size_t> kept;
    std::vector<std::size_t> heldOut;
};

/// Stretches of `stretch` soundings that follow one another on a pass, dealt to `folds` folds in
/// turn; fold `which` holds out its own. Shorter stretches where there are few soundings, so that
/// there are about 8 of them for each fold.
[[nodiscard]] Fold foldOf(std::span<const soundings::KeptSounding> soundings,
                          std::span<const std::size_t> positions, int stretch, int folds,
                          int which);

} // namespace surface::solver
