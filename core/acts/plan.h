// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/marks/plan.h"
#include "core/water/document/water.h"

namespace acts {

/// Sets what tomorrow's marks are asked with: the day, the boat, what matters.
[[nodiscard]] base::Result<water::Water> setPlan(const water::Water& water,
                                                 const marks::Plan& plan);

/// Keeps a mark where the user wants it. \param from the pinned mark at this place, if there is
/// one, moves instead; else a new one is added.
[[nodiscard]] base::Result<water::Water> pinMark(const water::Water& water, geo::LonLat from,
                                                 const water::PinnedMark& mark);

/// Lets the pinned mark at `place` go: it may be ranked away again.
/// \return wrongUse where none is pinned there.
[[nodiscard]] base::Result<water::Water> unpinMark(const water::Water& water, geo::LonLat place);

} // namespace acts
