// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/reduction/reduced_survey.h"
#include "core/store/connection.h"
#include "core/water/document/water.h"

#include <array>

namespace store {

/// For each part of a water: keep... puts it in the place of what the file held of it, inside the
/// caller's transaction; recall... fills it in. Failures go to the connection.

void keepFacts(Connection& connection, const water::Water& water);
void recallFacts(Connection& connection, water::Water& water);

void keepShoreline(Connection& connection, const water::Water& water);
void recallShoreline(Connection& connection, water::Water& water);

/// Soundings of a day that has not changed stay as they are, with what was last reduced of them;
/// others are written with what was reduced of them, where `reduced` holds as many days and
/// soundings. \param reduced null where nothing was.
void keepDays(Connection& connection, const water::Water& water,
              const reduction::ReducedSurvey* reduced, base::Progress& progress);
void recallDays(Connection& connection, water::Water& water, base::Progress& progress);

void keepLeadLine(Connection& connection, const water::Water& water);
void recallLeadLine(Connection& connection, water::Water& water);

void keepWeedNotes(Connection& connection, const water::Water& water);
void recallWeedNotes(Connection& connection, water::Water& water);

void keepHouseRules(Connection& connection, const water::Water& water);
void recallHouseRules(Connection& connection, water::Water& water);

void keepSectionNames(Connection& connection, const water::Water& water);
void recallSectionNames(Connection& connection, water::Water& water);

/// In the order in which they are made.
void keepSectionChanges(Connection& connection, const water::Water& water);
void recallSectionChanges(Connection& connection, water::Water& water);

/// The numbers that sections have and had.
void keepNumbering(Connection& connection, const water::Water& water);
void recallNumbering(Connection& connection, water::Water& water);

/// The plan and the pinned marks.
void keepPlan(Connection& connection, const water::Water& water);
void recallPlan(Connection& connection, water::Water& water);

/// What else the user wants of the plan: banned water, profiles of beliefs, the day by hand, and
/// what he laid of his pinned marks, which are there before.
void keepWishes(Connection& connection, const water::Water& water);
void recallWishes(Connection& connection, water::Water& water);

/// What stood on the sheets that were made for the boat.
void keepSheets(Connection& connection, const water::Water& water);
void recallSheets(Connection& connection, water::Water& water);

void keepLog(Connection& connection, const water::Water& water);
/// The same at the cost of what changed: stays of chunks that the log shares with what the file
/// holds are left as they are. \param inFile the log that was last kept in this file or recalled.
void keepLogChanges(Connection& connection, const water::Water& water,
                    const logbook::KeptLog& inFile);
void recallLog(Connection& connection, water::Water& water);

/// What is recalled once facts, shoreline and survey days are there, in this order.
inline constexpr std::array recallsOfTheRest{
    recallLeadLine,  recallWeedNotes, recallHouseRules, recallSectionNames, recallSectionChanges,
    recallNumbering, recallPlan,      recallWishes,     recallSheets,       recallLog};

} // namespace store
