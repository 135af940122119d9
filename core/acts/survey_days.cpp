// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/survey_days.h"

#include <algorithm>

namespace acts {

using base::ErrorKind;
using base::Result;
using soundings::SurveyDay;
using soundings::SurveyDayId;
using water::Water;

namespace {

std::unexpected<base::Error> noSuchDay() {
    return base::fail(ErrorKind::wrongUse, "the water has no such survey day", "survey days",
                      "choose one of its days");
}

/// An offset agreed to stands in for a level that nobody knew; on top of one that came later it
/// would count twice.
void dropWhatRestedOnTheLevel(const SurveyDay& before, SurveyDay& day) {
    if (day.gauge == before.gauge) {
        return;
    }
    if (day.agreedOffset == before.agreedOffset) {
        day.agreedOffset.reset();
    }
    if (day.agreedDelay_s == before.agreedDelay_s) {
        day.agreedDelay_s.reset();
    }
}

} // namespace

Result<Water> addSurveyDay(const Water& water, SurveyDay day) {
    const auto same = std::ranges::find(water.days, day.soundings, &SurveyDay::soundings);
    if (same != water.days.end() && !day.soundings.empty()) {
        return base::fail(ErrorKind::unusableInput,
                          "the water has these soundings already, as survey day " + same->name,
                          day.source,
                          "bring them in once; remove that day first if they are to be read anew");
    }
    Water after = water;
    if (!after.frame) {
        // Of the days only this one: the others have not laid a frame, so they lie nowhere.
        Water trial;
        trial.shoreline = water.shoreline;
        trial.days = {day};
        if (auto laid = water::layFrame(trial); !laid) {
            return std::unexpected(laid.error());
        }
        after.frame = trial.frame;
    }
    if (!day.id.isGiven() ||
        std::ranges::find(water.days, day.id, &SurveyDay::id) != water.days.end()) {
        day.id = SurveyDayId(water::freshId(water));
    }
    after.days.push_back(std::move(day));
    return after;
}

Result<Water> removeSurveyDays(const Water& water) {
    Water after = water;
    after.days.clear();
    return after;
}

bool takeOverVerdicts(const std::vector<SurveyDay>& earlier, SurveyDay& day) {
    const auto known = std::ranges::find(earlier, day.soundings, &SurveyDay::soundings);
    if (known == earlier.end()) {
        return false;
    }
    day.id = known->id;
    day.setAsideByHand = known->setAsideByHand;
    day.keptByHand = known->keptByHand;
    return true;
}

Result<Water> changeSurveyDay(const Water& water, SurveyDayId id,
                              const std::function<void(SurveyDay&)>& changeDay) {
    Water after = water;
    const auto day = std::ranges::find(after.days, id, &SurveyDay::id);
    if (day == after.days.end()) {
        return noSuchDay();
    }
    const SurveyDay before = *day;
    changeDay(*day);
    day->id = id;
    dropWhatRestedOnTheLevel(before, *day);
    return after;
}

Result<Water> removeSurveyDay(const Water& water, SurveyDayId id) {
    Water after = water;
    if (std::erase_if(after.days, [id](const SurveyDay& day) { return day.id == id; }) == 0) {
        return noSuchDay();
    }
    return after;
}

Result<Water> agreeOffset(const Water& water, SurveyDayId id, std::optional<units::Length> offset) {
    return changeSurveyDay(water, id, [&](SurveyDay& day) { day.agreedOffset = offset; });
}

Result<Water> agreeDelay(const Water& water, SurveyDayId id, std::optional<double> delay_s) {
    return changeSurveyDay(water, id, [&](SurveyDay& day) { day.agreedDelay_s = delay_s; });
}

} // namespace acts
