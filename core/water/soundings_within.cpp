// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/soundings_within.h"

namespace water {

namespace {

bool isWithin(const geo::Ring& ring, geo::WaterPoint p) {
    bool isInside = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const geo::WaterPoint a = ring[i];
        const geo::WaterPoint b = ring[(i + 1) % ring.size()];
        if ((a.y_m > p.y_m) != (b.y_m > p.y_m) &&
            p.x_m < a.x_m + (b.x_m - a.x_m) * (p.y_m - a.y_m) / (b.y_m - a.y_m)) {
            isInside = !isInside;
        }
    }
    return isInside;
}

} // namespace

SoundingChoice soundingsWithin(const reduction::ReducedSurvey& survey, const geo::Ring& ring) {
    geo::Box box;
    for (const geo::WaterPoint p : ring) {
        box.take(p);
    }
    SoundingChoice choice(survey.days.size());
    for (std::size_t day = 0; day < survey.days.size(); ++day) {
        const auto& points = survey.days[day].points;
        for (std::size_t i = 0; i < points.size(); ++i) {
            if (box.holds(points[i]) && isWithin(ring, points[i])) {
                choice[day].push_back(i);
            }
        }
    }
    return choice;
}

} // namespace water
