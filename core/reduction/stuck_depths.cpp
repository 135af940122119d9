// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/depth_faults.h"
#include "core/reduction/series_looks.h"

#include <algorithm>
#include <cmath>

namespace reduction {

using soundings::Verdict;

namespace {

double firstStep_m(const TrackSeries& series, std::size_t last) {
    return std::fabs(series.shown_m[last + 1] - series.shown_m[last]);
}

/// How far the bottom is soon after `last`: the middle of three, as one of them may be a spike.
double stepAfter_m(const TrackSeries& series, std::size_t last) {
    const double next_m = medianBetween(series, last + 1, std::min(series.size(), last + 4));
    return std::fabs(next_m - series.shown_m[last]);
}

/// After the run [first, last] of one figure the bottom is elsewhere, all at once.
bool leavesAJump(const TrackSeries& series, const AlongTrackSettings& settings, std::size_t first,
                 std::size_t last) {
    const double held_m = series.shown_m[first];
    const double after_m = medianBetween(series, last + 1, std::min(series.size(), last + 8));
    const double moved_m = std::fabs(after_m - held_m);
    // A bottom that slopes on evenly has made a quarter of the way after one, half of it after two.
    return (firstStep_m(series, last) > 0.6 * moved_m ||
            stepAfter_m(series, last) > 0.65 * moved_m) &&
           moved_m > 0.5 * settings.threshold * floor_m(settings, held_m);
}

/// The run ends in a step that the bottom nearby does not make, and going by how often two figures
/// in a row are equal nearby, a run of this length does not come by chance.
bool isNoChance(const TrackSeries& series, const AlongTrackSettings& settings, std::size_t first,
                std::size_t last) {
    constexpr std::size_t reach = 200;
    std::size_t equal = 0;
    std::size_t pairs = 0;
    const std::size_t from = first > reach ? first - reach : 1;
    const std::size_t to = std::min(series.size(), last + reach);
    for (std::size_t k = std::max<std::size_t>(from, 1); k < to; ++k) {
        if (k <= first || k > last + 1) {
            ++pairs;
            equal += series.shown_m[k] == series.shown_m[k - 1] ? 1U : 0U;
        }
    }
    constexpr std::size_t leastPairs = 50;
    constexpr double noChance = 1e-6;
    const double share = static_cast<double>(equal + 1) / static_cast<double>(pairs + 2);
    const double slope = slopeNear(series, last + 13);
    const auto isJumpOf = [&](double step_m, std::size_t end) {
        constexpr double timesTheSlope = 2.0;
        return step_m > 2.0 * floor_m(settings, series.shown_m[first]) &&
               step_m > timesTheSlope * slope * (series.along_m[end] - series.along_m[last]);
    };
    return pairs >= leastPairs && std::pow(share, static_cast<double>(last - first)) < noChance &&
           (isJumpOf(firstStep_m(series, last), last + 1) ||
            isJumpOf(stepAfter_m(series, last), std::min(last + 2, series.size() - 1)));
}

} // namespace

void findStuckDepths(const TrackSeries& series, const AlongTrackSettings& settings,
                     std::vector<Verdict>& verdicts) {
    const TrackSeries kept = keptOf(series, verdicts);
    for (std::size_t first = 0; first < kept.size();) {
        std::size_t last = first;
        while (last + 1 < kept.size() && kept.shown_m[last + 1] == kept.shown_m[first]) {
            ++last;
        }
        const bool isLong = last - first + 1 >= static_cast<std::size_t>(settings.stuckSoundings) &&
                            kept.along_m[last] - kept.along_m[first] >= settings.stuckOver_m;
        if (isLong && last + 1 < kept.size()) {
            if (leavesAJump(kept, settings, first, last) ||
                isNoChance(kept, settings, first, last)) {
                for (std::size_t k = first + 1; k <= last; ++k) {
                    verdicts[kept.index[k]] = Verdict::stuckDepth;
                }
            }
        }
        first = last + 1;
    }
}

} // namespace reduction
