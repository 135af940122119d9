// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/reduced_survey.h"
#include "core/reduction/set_aside_along_track.h"

namespace reduction {

/// Marks soundings at places where the boat cannot have been: the track is cut wherever it would
/// have to be sailed too fast, and short stretches off the likeliest track through the pieces are
/// marked. A long stretch is never marked: a log with a gap is more usual than a receiver that errs
/// for minutes.
void markPositionJumps(const soundings::SurveyDay& day, const AlongTrackSettings& settings,
                       const std::vector<bool>& isHeld, ReducedDay& reduced);

/// Marks soundings whose position stayed the same to the last digit while the depth went on.
void markStuckPositions(const soundings::SurveyDay& day, const AlongTrackSettings& settings,
                        const std::vector<bool>& isHeld, ReducedDay& reduced);

} // namespace reduction
