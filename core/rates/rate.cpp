// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/rate.h"

#include "core/rates/chance.h"

namespace rates {

std::optional<Rate> rateOf(const Tally& tally) {
    if (!(tally.rodHours > 0.0)) {
        return std::nullopt;
    }
    const CountLimits limits = countLimits(tally.fish);
    const double tens = tally.rodHours / 10.0;
    return Rate{tally.fish / tens, limits.low / tens, limits.high / tens};
}

} // namespace rates
