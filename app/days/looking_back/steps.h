// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"

#include <functional>

namespace days::looking_back {

class LogQuestion;

/// The step that takes the track of a fishing day, whoever brings it.
class TrackTaker : public DayStep {
public:
    using DayStep::DayStep;
    /// Reads the track of that file and offers its stays.
    virtual void take(const QString& path) = 0;
};

// The steps of looking back from top to bottom, but that of the stays; each is owned by the panel
// that it is put into. The question outlives them.
/// \param writeUp begins to write up the day.
[[nodiscard]] DayStep* makeSummaryStep(DayContext context, LogQuestion& question,
                                       const std::function<void()>& writeUp);
[[nodiscard]] TrackTaker* makeTrackStep(DayContext context);
[[nodiscard]] DayStep* makeProducedStep(DayContext context, LogQuestion& question);
/// \param showBeliefs goes to what the log says of each belief.
[[nodiscard]] DayStep* makeHoursStep(DayContext context, LogQuestion& question,
                                     const std::function<void()>& showBeliefs);
[[nodiscard]] DayStep* makeSeasonStep(DayContext context);

} // namespace days::looking_back
