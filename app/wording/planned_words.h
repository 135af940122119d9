// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/document/planned_day.h"

#include <QStringList>

namespace wording {

// All that is said of a planned day as a whole, a sentence a line, each once.

/// The day's wind: "WNW 300° 6 m/s", and what it turns to: ", from 13:00 SW 225° 4 m/s".
[[nodiscard]] QString windsOf(const marks::ExpectedDay& day, const Words& words);
/// What can kill, the gravest first.
[[nodiscard]] QStringList cautionsOf(const water::PlannedDay& day, const Words& words);
/// The rules of this water, with the fishery's own notes word for word.
[[nodiscard]] QStringList rulesOf(const water::PlannedDay& day);
/// What the fish need to live.
[[nodiscard]] QStringList fishCareOf(const water::PlannedDay& day, const Words& words);
/// What the list of marks stands on.
[[nodiscard]] QStringList basisOf(const water::PlannedDay& day, const Words& words);
/// For which wind the anchors of each stop are laid, where the day has two: "3, 1 for SW 225° 5
/// m/s"; a line a wind, in the order of the day. Empty on a day of one wind.
[[nodiscard]] QStringList windsOfStops(const water::PlannedDay& day, const Words& words);
/// What nobody must overlook on a day whose wind nobody said: the line of it in basisOf() and the
/// caution, in one; empty where the wind is known.
[[nodiscard]] QString windNotSaid(const water::PlannedDay& day, const Words& words);
/// Of basisOf(), what is to be seen before any mark is looked at: windNotSaid(), and that depths of
/// the survey days contradict each other.
[[nodiscard]] QStringList toMindFirst(const water::PlannedDay& day, const Words& words);
/// Whose order the day has, and what became of own marks and of those for which there is no time.
[[nodiscard]] QStringList notesOf(const water::PlannedDay& day);

} // namespace wording
