// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/bottom.h"
#include "sample-survey/chance.h"
#include "sample-survey/waterway.h"

#include <cstdint>
#include <string>
#include <vector>

namespace sample {

struct TrackPoint {
    std::int64_t time_s = 0;
    Point at;
    bool afterGap = false;
};

struct TrueStay {
    std::int64_t start_s = 0;
    std::int64_t end_s = 0;
    Point at;
};

/// The track of one fishing day, 17 October 2026: four stays at anchor, the moves between them, a
/// pause of four minutes that is no stay, and six minutes without a fix inside the third stay.
struct DayTrack {
    std::vector<TrackPoint> points;
    std::vector<TrueStay> stays;
    TrueStay pause;
};

DayTrack fishOneDay(const Bottom& bottom, const Waterway& waterway, Chance& chance);
std::string trackText(const DayTrack& track);

} // namespace sample
