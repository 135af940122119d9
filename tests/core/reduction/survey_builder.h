// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/reduction/correct_depths.h"

#include <cmath>
#include <functional>

namespace reduction {

/// A survey day sailed along a line at 2 m/s, one sounding a second, in a frame around 55.2 N, 3.1
/// E.
struct MadeUpDay {
    static geo::WaterFrame frame() { return *geo::WaterFrame::centredOn({3.1, 55.2}); }

    static soundings::SurveyDay along(geo::WaterPoint from, geo::WaterPoint to, std::size_t count,
                                      const std::function<double(geo::WaterPoint)>& depth_m) {
        const geo::WaterFrame water = frame();
        soundings::SurveyDay day;
        day.passStarts = {0};
        const auto start = units::momentFrom("2026-09-05T08:00:00Z", units::Clock());
        for (std::size_t i = 0; i < count; ++i) {
            const double share = static_cast<double>(i) / static_cast<double>(count - 1);
            const geo::WaterPoint p{std::lerp(from.x_m, to.x_m, share),
                                    std::lerp(from.y_m, to.y_m, share)};
            day.soundings.edit().push_back({water.toEarth(p), units::Depth::metres(depth_m(p)),
                                            *start + std::chrono::seconds(static_cast<long>(i))});
        }
        return day;
    }

    static ReducedSurvey reduced(const std::vector<soundings::SurveyDay>& days) {
        base::Progress progress;
        return *correctDepths(days, frame(), {}, progress);
    }
};

} // namespace reduction
