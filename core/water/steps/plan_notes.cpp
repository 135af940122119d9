// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/plan_notes.h"

#include "core/marks/winds_of_day.h"

#include <algorithm>

namespace water {

namespace {

constexpr double worthTelling_ha = 0.05;

bool isWithoutSpeed(const marks::WindOfHours& part) {
    return !part.wind.speed;
}

void noteTheLog(const Water& water, const LearnedLog& log, std::vector<PlanNote>& notes) {
    const std::size_t stays = water.log.size();
    if (!log.learned && stays == 0) {
        notes.emplace_back(NothingCaught{});
    } else if (!log.learned) {
        notes.emplace_back(NoStayCounts{stays});
    }
    if (log.elsewhere > 0) {
        notes.emplace_back(StaysElsewhere{log.elsewhere, stays});
    }
    if (log.withoutEffort > 0) {
        notes.emplace_back(StaysWithoutEffort{log.withoutEffort, stays});
    }
}

void noteWhatIsLeftOut(PlannedDay& planned) {
    WaterLeftOut left{planned.marks.size(), planned.plan.count, {}};
    for (std::size_t k = 0; k < planned.excluded.size(); ++k) {
        if (planned.excluded[k].inHectares() >= worthTelling_ha) {
            left.parts.emplace_back(marks::allExclusions[k], planned.excluded[k]);
        }
    }
    if (!left.parts.empty()) {
        planned.basis.emplace_back(std::move(left));
    }
}

/// Said of a full list too: it would be another one in a calm.
void noteWhatIsTooRough(PlannedDay& planned) {
    const units::Area rough =
        planned.excluded[static_cast<std::size_t>(marks::Exclusion::tooRough)];
    if (rough.inHectares() >= worthTelling_ha) {
        planned.basis.emplace_back(TooRoughWater{rough, marks::ProposeSettings().roughest});
    }
}

} // namespace

void tellOfTheDrawing(const surface::DrawReport& report, PlannedDay& planned) {
    if (report.daysDiffer) {
        planned.basis.emplace_back(DaysDiffer{*report.daysDiffer});
    }
    if (report.daysWithoutLevel > 0) {
        planned.basis.emplace_back(DaysWithoutLevel{report.daysWithoutLevel});
    }
}

void tellOfTheLog(const Water& water, const LearnedLog& log, const marks::MarkInput& input,
                  PlannedDay& planned) {
    if (log.learned) {
        planned.meanPer10RodHours = 10.0 * log.learned->model.mean().rate();
    }
    if (std::ranges::any_of(marks::windsOf(planned.plan.day), isWithoutSpeed)) {
        planned.basis.emplace_back(WavesNotCounted{});
    }
    planned.beliefs = marks::beliefRecordsOf(planned.plan.weights, input.learned);
    noteTheLog(water, log, planned.basis);
    if (planned.marks.size() < static_cast<std::size_t>(planned.plan.count)) {
        noteWhatIsLeftOut(planned);
    } else {
        noteWhatIsTooRough(planned);
    }
}

} // namespace water
