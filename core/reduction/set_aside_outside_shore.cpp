// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/set_aside_outside_shore.h"

#include "core/reduction/hand_kept.h"

#include <cmath>

#include <fmt/format.h>

namespace reduction {

namespace {

using base::ErrorKind;
using soundings::Verdict;

bool isInWater(const geo::Outline& shore, geo::WaterPoint p, double margin_m) {
    if (!std::isfinite(p.x_m) || !std::isfinite(p.y_m)) {
        return false;
    }
    return shore.contains(p) || (margin_m > 0.0 && shore.box().grownBy(margin_m).holds(p) &&
                                 shore.distanceToShore_m(p) <= margin_m);
}

base::Error allOutside(const std::vector<soundings::SurveyDay>& days, const geo::Outline& shore,
                       const geo::WaterFrame& frame) {
    std::size_t inIfTurned = 0;
    std::size_t count = 0;
    for (const soundings::SurveyDay& day : days) {
        for (const soundings::Sounding& sounding : day.soundings) {
            const geo::LonLat turned{sounding.place.lat_deg, sounding.place.lon_deg};
            inIfTurned +=
                geo::isOnEarth(turned) && isInWater(shore, frame.toWater(turned), 0.0) ? 1U : 0U;
            ++count;
        }
    }
    const geo::LonLat first = days.front().soundings.front().place;
    const geo::Box& box = shore.box();
    const geo::LonLat middle = frame.toEarth(
        geo::WaterPoint{0.5 * (box.west_m + box.east_m), 0.5 * (box.south_m + box.north_m)});
    const double far_km = geo::courseBetween(middle, first).distance.inKilometres();
    base::Error error{
        ErrorKind::unusableInput,
        fmt::format("all {} soundings lie outside the shore, the first {:.1f} km from "
                    "its middle",
                    count, far_km),
        fmt::format("longitude {:.5f}, latitude {:.5f}", first.lon_deg, first.lat_deg),
        "check that shore and soundings are of the same water and reference system"};
    if (inIfTurned * 2 > count) {
        error.whatToDo = "longitude and latitude of the soundings are swapped: choose x and y the "
                         "other way round";
    }
    return error;
}

} // namespace

base::Result<ReducedSurvey> setAsideOutsideShore(const std::vector<soundings::SurveyDay>& days,
                                                 ReducedSurvey survey, const geo::Outline& shore,
                                                 const geo::WaterFrame& frame,
                                                 const OutsideShoreSettings& settings,
                                                 base::Progress& progress) {
    if (!(settings.margin_m >= 0.0 && settings.margin_m <= 50.0)) {
        return base::fail(ErrorKind::wrongUse, "the margin is out of its range", "margin_m",
                          "choose 0 to 50 m");
    }
    progress.begin("comparing with the shore");
    const std::size_t keptBefore = survey.keptCount();
    for (std::size_t d = 0; d < survey.days.size(); ++d) {
        ReducedDay& day = survey.days[d];
        const std::vector<bool> isHeld = handKept(days[d]);
        for (std::size_t i = 0; i < day.verdicts.size(); ++i) {
            constexpr std::size_t often = 4096;
            if (i % often == 0 && progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            if (day.verdicts[i] == Verdict::kept && !isHeld[i] &&
                !isInWater(shore, day.points[i], settings.margin_m)) {
                day.verdicts[i] = Verdict::outsideShore;
            }
        }
        progress.tell(static_cast<double>(d + 1) / static_cast<double>(survey.days.size()));
    }
    if (keptBefore > 0 && survey.keptCount() == 0) {
        return std::unexpected(allOutside(days, shore, frame));
    }
    return survey;
}

} // namespace reduction
