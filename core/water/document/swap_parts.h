// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include <span>
#include <vector>

namespace water {

/// Swaps these parts of two waters; what an edit does and undoes, without a copy of the rest.
void swapParts(Water& a, Water& b, std::span<const Part> parts);

/// A water that holds a copy of these parts of `water` and nothing else.
[[nodiscard]] Water copyOfParts(const Water& water, std::span<const Part> parts);

/// The parts in which the two waters differ, in the order of allParts.
[[nodiscard]] std::vector<Part> differingParts(const Water& a, const Water& b);

} // namespace water
