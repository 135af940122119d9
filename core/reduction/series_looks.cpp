// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/series_looks.h"

#include "core/reduction/robust.h"

#include <algorithm>
#include <cmath>

namespace reduction {

using soundings::Verdict;

double floor_m(const AlongTrackSettings& settings, double depth_m) {
    return settings.floor_m + settings.floorShare * depth_m;
}

TrackSeries keptOf(const TrackSeries& series, const std::vector<Verdict>& verdicts) {
    TrackSeries kept;
    for (std::size_t i = 0; i < series.size(); ++i) {
        if (verdicts[i] == Verdict::kept) {
            kept.index.push_back(i);
            kept.along_m.push_back(series.along_m[i]);
            kept.shown_m.push_back(series.shown_m[i]);
        }
    }
    return kept;
}

double medianBetween(const TrackSeries& series, std::size_t first, std::size_t last) {
    return medianOf({series.shown_m.begin() + static_cast<std::ptrdiff_t>(first),
                     series.shown_m.begin() + static_cast<std::ptrdiff_t>(last)});
}

double slopeNear(const TrackSeries& series, std::size_t i) {
    constexpr std::size_t reach = 12;
    const std::size_t first = i > reach ? i - reach : 1;
    const std::size_t last = std::min(series.size(), i + reach + 1);
    std::vector<double> slopes;
    for (std::size_t k = std::max<std::size_t>(first, 1); k < last; ++k) {
        const double run_m = series.along_m[k] - series.along_m[k - 1];
        if (run_m > 0.05) {
            slopes.push_back(std::fabs(series.shown_m[k] - series.shown_m[k - 1]) / run_m);
        }
    }
    return slopes.empty() ? 0.0 : medianOf(std::move(slopes));
}

} // namespace reduction
