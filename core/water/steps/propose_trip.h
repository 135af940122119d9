// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/surface/survey_line.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <chrono>

namespace water {

/// Where to sound next in the time given, from the launch (without one, from the shore nearest to
/// the middle of the water); never in closed water, and most where he fishes, as worthSounding()
/// has it. \return what surface::proposeLines() returns;
/// wrongUse where nothing is drawn yet.
[[nodiscard]] base::Result<surface::SurveyTrip> proposeTrip(const Water& water,
                                                            const Derived& derived,
                                                            std::chrono::minutes time,
                                                            base::Progress& progress);

} // namespace water
