// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/reduction_terms.h"
#include "core/water/document/water.h"

namespace water {

/// How the depth of one sounding of the water comes about, with the water's chart level and the
/// offsets that its days agreed to. \param day, sounding: positions, in range.
[[nodiscard]] reduction::ReductionTerms soundingTerms(const Water& water, std::size_t day,
                                                      std::size_t sounding);

} // namespace water
