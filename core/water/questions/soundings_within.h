// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/reduction/reduced_survey.h"

#include <cstddef>
#include <vector>

namespace water {

/// Positions of soundings, ascending; one list for each survey day.
using SoundingChoice = std::vector<std::vector<std::size_t>>;

/// The soundings that lie within a ring drawn by hand. Where the ring crosses itself, a place
/// counts as within if a way out of it meets the ring an odd number of times.
[[nodiscard]] SoundingChoice soundingsWithin(const reduction::ReducedSurvey& survey,
                                             const geo::Ring& ring);

} // namespace water
