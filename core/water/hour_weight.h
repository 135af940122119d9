// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/units/moment.h"
#include "core/water/water.h"

#include <functional>

namespace water {

/// How good the log says an hour is, about 1 over the hours fished: its rate over the whole rate,
/// drawn half-way to 1 because hours differ less than a short log makes them seem, and held between
/// 0.5 and 2. Empty where the log says nothing.
[[nodiscard]] std::function<double(units::Moment)> hourWeightOf(const Water& water,
                                                                base::Progress& progress);

} // namespace water
