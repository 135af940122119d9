// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/broken_rules.h"

#include <algorithm>

namespace anchoring {

bool breaksARule(const Caution& caution) {
    if (const auto* off = std::get_if<LaidOffTheWind>(&caution)) {
        return off->isTooFar;
    }
    return std::holds_alternative<LiesInClosedWater>(caution) ||
           std::holds_alternative<LiesAshore>(caution) ||
           std::holds_alternative<RopeTooShort>(caution) ||
           std::holds_alternative<TooSteep>(caution) ||
           std::holds_alternative<WindChangedSince>(caution);
}

bool breaksARule(const AnchorSet& set) {
    return std::ranges::any_of(set.cautions,
                               [](const Caution& caution) { return breaksARule(caution); });
}

} // namespace anchoring
