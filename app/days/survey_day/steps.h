// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/backdrop_keeper.h"
#include "app/days/survey_day/file_taker.h"
#include "app/days/survey_day/survey_step.h"

namespace days::survey_day {

// The steps of the survey day from top to bottom; each is owned by the panel that it is put into.

[[nodiscard]] SurveyStep* makeSoundingsStep(SurveyContext context, FileTaker& taker);
[[nodiscard]] SurveyStep* makeShorelineStep(SurveyContext context, FileTaker& taker,
                                            BackdropKeeper& backdrop);
[[nodiscard]] SurveyStep* makeCheckStep(SurveyContext context);
[[nodiscard]] SurveyStep* makeDrawingStep(SurveyContext context);
[[nodiscard]] SurveyStep* makeBandsStep(SurveyContext context);
[[nodiscard]] SurveyStep* makeWeedStep(SurveyContext context, FileTaker& taker);
[[nodiscard]] SurveyStep* makeSectionsStep(SurveyContext context);
[[nodiscard]] SurveyStep* makeNextStep(SurveyContext context);

} // namespace days::survey_day
