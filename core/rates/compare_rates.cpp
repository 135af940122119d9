// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/compare_rates.h"

#include "core/rates/chance.h"

#include <algorithm>
#include <numeric>

namespace rates {

base::Result<Comparison> compareRates(const Tally& first, const Tally& second) {
    if (!(first.rodHours > 0.0) || !(second.rodHours > 0.0)) {
        return base::fail(base::ErrorKind::unusableInput,
                          "rates cannot be compared where one has no effort", "",
                          "compare groups that were both fished");
    }
    const double sum = first.fish + second.fish;
    const double share = first.rodHours / (first.rodHours + second.rodHours);
    const double atMost = binomialAtMost(first.fish, sum, share);
    const double atLeast = binomialAtLeast(first.fish, sum, share);
    const double effort = second.rodHours / first.rodHours;
    const double lowShare = betaQuantile(first.fish, second.fish + 1.0, 0.025);
    const double highShare = betaQuantile(first.fish + 1.0, second.fish, 0.975);
    Comparison out;
    if (second.fish > 0) {
        out.ratio = effort * first.fish / second.fish;
        out.high = effort * highShare / (1.0 - highShare);
    }
    out.low = effort * lowShare / (1.0 - lowShare);
    out.p = std::min(1.0, 2.0 * std::min(atMost, atLeast));
    return out;
}

std::vector<double> adjustedByHolm(std::span<const double> p) {
    std::vector<std::size_t> order(p.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [p](std::size_t i) { return p[i]; });
    std::vector<double> adjusted(p.size());
    double largest = 0.0;
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        const auto left = static_cast<double>(order.size() - rank);
        largest = std::max(largest, std::min(1.0, left * p[order[rank]]));
        adjusted[order[rank]] = largest;
    }
    return adjusted;
}

} // namespace rates
