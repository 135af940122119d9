// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/bottom.h"
#include "sample-survey/chance.h"
#include "sample-survey/day_track.h"
#include "sample-survey/season.h"
#include "sample-survey/survey_day.h"

#include <string>
#include <vector>

namespace sample {

/// A survey day as sailed, beside its facts.
struct SurveyDay {
    DayFacts facts;
    std::vector<Fix> fixes;
};

/// Area, shoreline, deepest place, volume and hypsography of the true bottom, with tolerances for a
/// drawn water.
std::string expectedWaterText(const Bottom& bottom);
/// True depths at check points, each with how near a sounding lies and the tolerance that is fair
/// there.
std::string expectedCheckPointsText(const Bottom& bottom, const std::vector<SurveyDay>& days,
                                    Chance& chance);
/// Counts of good and faulty soundings by day, levels, and what tying the days should find.
std::string expectedSoundingsText(const std::vector<SurveyDay>& days);
/// Crossings of the clean tracks by pair of days: how many, and how well their depths agree at the
/// true levels.
std::string expectedCrossingsText(const std::vector<SurveyDay>& days);
/// Every faulty sounding: day,time,event,kind.
std::string faultsText(const std::vector<SurveyDay>& days);
/// Places of the structure that was put in.
std::string expectedStructureText(const Bottom& bottom);
/// Hidden rates, and what the log happens to hold.
std::string expectedLogText(const std::vector<LoggedStay>& stays);
/// The four stays of the day's track.
std::string expectedStaysText(const DayTrack& track);

} // namespace sample
