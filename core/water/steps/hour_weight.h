// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/learned_catch.h"
#include "core/units/moment.h"

#include <functional>

namespace water {

/// How good the log says an hour is: what its block of two hours multiplies the catch by, 1 where
/// it was never fished. Empty where the log says nothing.
[[nodiscard]] std::function<double(units::Moment)>
hourWeightOf(const std::optional<marks::LearnedCatch>& learned, const units::Clock& clock);

} // namespace water
