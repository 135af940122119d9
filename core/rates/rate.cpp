// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/rate.h"

#include "core/rates/chance.h"

#include <algorithm>

namespace rates {

std::optional<Rate> rateOf(const Tally& tally) {
    if (!(tally.rodHours > 0.0)) {
        return std::nullopt;
    }
    const CountLimits limits = countLimits(tally.fish);
    const double tens = tally.rodHours / 10.0;
    return Rate{tally.fish / tens, limits.low / tens, limits.high / tens};
}

void sortByExpected(RateTable& table) {
    const auto expected = [](const RateRow& row) {
        return row.rodHours > 0.0 && row.shrunk ? -row.shrunk->per10RodHours : 0.0;
    };
    std::ranges::stable_sort(table.rows, [&](const RateRow& a, const RateRow& b) {
        const bool isTried = a.rodHours > 0.0;
        return isTried != (b.rodHours > 0.0) ? isTried : expected(a) < expected(b);
    });
}

} // namespace rates
