// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/soundings_within.h"

#include "core/geo/within_ring.h"

namespace water {

SoundingChoice soundingsWithin(const reduction::ReducedSurvey& survey, const geo::Ring& ring) {
    geo::Box box;
    for (const geo::WaterPoint p : ring) {
        box.take(p);
    }
    SoundingChoice choice(survey.days.size());
    for (std::size_t day = 0; day < survey.days.size(); ++day) {
        const auto& points = survey.days[day].points;
        for (std::size_t i = 0; i < points.size(); ++i) {
            if (box.holds(points[i]) && geo::isWithin(ring, points[i])) {
                choice[day].push_back(i);
            }
        }
    }
    return choice;
}

} // namespace water
