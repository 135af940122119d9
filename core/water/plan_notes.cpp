// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/plan_notes.h"

#include <algorithm>

#include <fmt/format.h>

namespace water {

namespace {

const char* wordsFor(marks::Exclusion exclusion) {
    switch (exclusion) {
    case marks::Exclusion::closed:
        return "closed";
    case marks::Exclusion::tooShallow:
        return "too shallow";
    case marks::Exclusion::tooDeep:
        return "deeper than the limit";
    case marks::Exclusion::noRoom:
        return "too near the bank to swing";
    case marks::Exclusion::ropesTooShort:
        return "too deep for the ropes";
    case marks::Exclusion::tooRough:
        return "too rough for an open boat at anchor";
    }
    return "";
}

void noteTheLog(const Water& water, const LearnedLog& log, std::vector<std::string>& notes) {
    if (!log.learned) {
        notes.emplace_back(water.log.empty()
                               ? "Nothing caught yet: by your beliefs alone."
                               : fmt::format("None of the {} stays of the log counts: by your "
                                             "beliefs alone.",
                                             water.log.size()));
    }
    if (log.elsewhere > 0) {
        notes.push_back(fmt::format("{} of {} stays of the log lie on no water of this chart today "
                                    "and say nothing of it.",
                                    log.elsewhere, water.log.size()));
    }
    if (log.withoutEffort > 0) {
        notes.push_back(fmt::format("{} of {} stays of the log lasted no time, or longer than any "
                                    "can, and count in no rate.",
                                    log.withoutEffort, water.log.size()));
    }
}

void noteWhatIsLeftOut(PlannedDay& planned) {
    constexpr double worthTelling_ha = 0.05;
    std::string left;
    for (std::size_t k = 0; k < planned.excluded.size(); ++k) {
        const double ha = planned.excluded[k].inHectares();
        if (ha >= worthTelling_ha) {
            left += fmt::format("{}{:.1f} ha {}", left.empty() ? "" : ", ", ha,
                                wordsFor(marks::allExclusions[k]));
        }
    }
    if (!left.empty()) {
        planned.basis.push_back(fmt::format("{} of {} marks found. Left out: {}.",
                                            planned.marks.size(), planned.plan.count, left));
    }
}

} // namespace

void tellOfTheLog(const Water& water, const LearnedLog& log, const marks::MarkInput& input,
                  PlannedDay& planned) {
    if (log.learned) {
        planned.meanPer10RodHours = 10.0 * log.learned->model.mean().rate();
    }
    planned.beliefs = marks::beliefRecordsOf(planned.plan.weights, input.learned);
    planned.excluded = marks::excludedAreas(input, planned.plan, {});
    noteTheLog(water, log, planned.basis);
    if (planned.marks.size() < static_cast<std::size_t>(planned.plan.count)) {
        noteWhatIsLeftOut(planned);
    }
}

} // namespace water
