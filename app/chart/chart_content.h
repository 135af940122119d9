// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "app/chart/layer_kind.h"
#include "app/chart/selection.h"
#include "app/chart/shown_rates.h"
#include "app/wording/words.h"
#include "core/rates/track.h"
#include "core/surface/survey_line.h"
#include "core/water/document/backdrop.h"
#include "core/water/document/derived.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/questions/compare_years.h"

#include <map>
#include <memory>
#include <optional>
#include <set>

namespace chart {

/// The zones of which family a click on the chart chooses; `none`: a click chooses a section.
enum class ZonesPicked { none, structure, weed };

/// What of the content is older than the water, and whether it is being made anew.
struct ContentAge {
    bool isMapOld = false;
    bool isPlanOld = false;
    bool isBeingMadeAnew = false;
    bool isBeingRead =
        false; ///< It is the map that was kept; the rest of the file is not read yet.
    friend bool operator==(const ContentAge&, const ContentAge&) = default;
};

/// Everything that layers may draw: values only. Cheap to copy.
struct ChartContent {
    std::shared_ptr<const water::Water> water;
    water::Derived derived;
    std::shared_ptr<const water::PlannedDay>
        planned; ///< Absent until tomorrow has been worked out.
    std::shared_ptr<const surface::SurveyTrip>
        nextLines; ///< Where to sound next; absent until asked for.
    std::shared_ptr<const rates::Track>
        dayTrack; ///< The track of a fishing day; absent until brought in.
    std::shared_ptr<const std::vector<logbook::Stay>>
        offeredStays; ///< Found in the track and not in the log yet; absent where there are none.
    std::shared_ptr<const ShownRates> rates; ///< By place; absent unless they are to be shown.
    /// Against an earlier survey; absent unless one was compared.
    std::shared_ptr<const water::YearsCompared> years;
    /// The part of the log that is to be seen; absent: all of it.
    std::optional<water::ReviewQuestion> logAsked;
    std::shared_ptr<const water::Backdrop> backdrop; ///< Absent until one is chosen.
    double backdropStrength = 0.5;                   ///< 0: not to be seen, 1: as it is.
    /// How strongly a layer is drawn, over 0 to 1; one that is not named: 1.
    std::map<LayerKind, double> strengths;
    Selection selection;
    ZonesPicked zonesPicked = ZonesPicked::none;
    std::set<LayerKind> shown; ///< What is switched on.
    ContentAge age;
    wording::Words words{wording::Words()};
    Inks inks = Inks::light;
    double typeScale = 1.0; ///< Of letters and pens on the screen; paper has its own.
};

/// How strongly the layer is to be drawn, over 0 to 1.
[[nodiscard]] inline double strengthOf(const ChartContent& content, LayerKind kind) {
    const auto found = content.strengths.find(kind);
    return found == content.strengths.end() ? 1.0 : found->second;
}

} // namespace chart
