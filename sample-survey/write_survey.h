// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/chance.h"
#include "sample-survey/survey_day.h"

#include <string>
#include <vector>

namespace sample {

/// A day's log as an NMEA 0183 file: RMC and DPT for each fix, MTW once a minute, and sentences of
/// no concern to a sounding.
std::string nmeaText(const std::vector<Fix>& fixes, const DayFacts& facts, Chance& chance);
/// A day's log as a GPX 1.1 track; depth in an extension element of its own name space, a new
/// segment after each gap.
std::string gpxText(const std::vector<Fix>& fixes, const DayFacts& facts);
/// A day's log as text with semicolons and decimal commas.
std::string tableText(const std::vector<Fix>& fixes);

} // namespace sample
