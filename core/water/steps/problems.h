// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include <string>
#include <vector>

namespace water {

/// What stands in a water and would stop a step however much else is there: a shore, a closed or
/// banned water that crosses itself, soundings that all lie elsewhere, a plan that cannot be
/// followed. One plain sentence each. What is merely not there yet is no problem.
[[nodiscard]] std::vector<std::string> problemsIn(const Water& water);

} // namespace water
