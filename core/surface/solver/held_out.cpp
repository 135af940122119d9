// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/held_out.h"

#include <algorithm>

namespace surface::solver {

Fold foldOf(std::span<const soundings::KeptSounding> soundings,
            std::span<const std::size_t> positions, int stretch, int folds, int which) {
    const int most = static_cast<int>(positions.size()) / (8 * folds);
    const int length = std::clamp(stretch, 1, std::max(1, most));
    Fold fold;
    int inStretch = 0;
    int stretchNumber = 0;
    for (std::size_t k = 0; k < positions.size(); ++k) {
        const bool isNewPass =
            k > 0 && soundings[positions[k]].pass != soundings[positions[k - 1]].pass;
        if (inStretch == length || (isNewPass && inStretch > length / 2)) {
            ++stretchNumber;
            inStretch = 0;
        }
        ++inStretch;
        (stretchNumber % folds == which ? fold.heldOut : fold.kept).push_back(positions[k]);
    }
    return fold;
}

} // namespace surface::solver
