// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/soundings/survey_day.h"
#include "core/water/document/water.h"

#include <functional>
#include <optional>
#include <vector>

/// What a user does to a water, whether with the mouse or by a script: one function an act, the
/// water in and the changed one out; what was given stays as it was. water::differingParts() tells
/// which parts an act touched. An act that cannot be done says why and what to do instead.
namespace acts {

/// Adds a survey day with a fresh id, and lays the water's frame where it has none yet.
/// \return unusableInput where the water has these soundings already; the error of
/// water::layFrame().
[[nodiscard]] base::Result<water::Water> addSurveyDay(const water::Water& water,
                                                      soundings::SurveyDay day);

/// Takes all survey days out, to bring in their files anew.
[[nodiscard]] base::Result<water::Water> removeSurveyDays(const water::Water& water);

/// Gives a day read anew its earlier number and what the user had said of its soundings one by one:
/// nobody who reads a file once more wants to judge it once more. Nothing is taken over where no
/// earlier day has just these soundings.
/// \return whether there was one.
bool takeOverVerdicts(const std::vector<soundings::SurveyDay>& earlier, soundings::SurveyDay& day);

/// Changes what was true on a survey day: level, water temperature, sounder, name. Where its level
/// or gauge table becomes another, an offset and a delay agreed to before are dropped: they were
/// found with the level that was.
/// \return wrongUse where there is no such day.
[[nodiscard]] base::Result<water::Water>
changeSurveyDay(const water::Water& water, soundings::SurveyDayId id,
                const std::function<void(soundings::SurveyDay&)>& changeDay);

/// Takes a survey day with all its soundings out of the water.
/// \return wrongUse where there is no such day.
[[nodiscard]] base::Result<water::Water> removeSurveyDay(const water::Water& water,
                                                         soundings::SurveyDayId id);

/// Agrees to what the crossings would add to a day's depths; nothing takes an agreed offset back.
/// \return wrongUse where there is no such day.
[[nodiscard]] base::Result<water::Water> agreeOffset(const water::Water& water,
                                                     soundings::SurveyDayId id,
                                                     std::optional<units::Length> offset);

/// Agrees to how late a day's positions are, seconds; nothing takes an agreed delay back.
/// \return wrongUse where there is no such day.
[[nodiscard]] base::Result<water::Water>
agreeDelay(const water::Water& water, soundings::SurveyDayId id, std::optional<double> delay_s);

} // namespace acts
