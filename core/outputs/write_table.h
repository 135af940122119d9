// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/logbook/kept_log.h"
#include "core/reduction/reduced_survey.h"
#include "core/soundings/survey_day.h"
#include "core/units/moment.h"

#include <filesystem>
#include <span>

namespace outputs {

/// Text tables after RFC 4180 (UTF-8, comma, header line, quotes where needed); the decimal mark is
/// the point. \return unwritableOutput.

/// Columns lon, lat, time, survey_day, shown_depth_m, depth_m, set_aside: days and soundings in
/// their order. \param survey reduced from these days; null leaves the last two columns empty.
[[nodiscard]] base::Result<void> writeSoundingsTable(const std::filesystem::path& path,
                                                     std::span<const soundings::SurveyDay> days,
                                                     const reduction::ReducedSurvey* survey);

/// The log in the columns of `meremark-batch log`, and behind them what else a log that was brought
/// in said; exact to the last digit, line breaks in notes too: reading it back gives the same
/// stays, runs and fish. No text is one that a spreadsheet would run (logbook::guarded()). \param
/// clock whose wall times are written, with their offset.
[[nodiscard]] base::Result<void> writeLogTable(const std::filesystem::path& path,
                                               const logbook::KeptLog& log,
                                               const units::Clock& clock);

} // namespace outputs
