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
/// one, moves instead, and what the user laid of it along with it; else a new one is added.
[[nodiscard]] base::Result<water::Water> pinMark(const water::Water& water, geo::LonLat from,
                                                 const water::PinnedMark& mark);

/// Keeps a mark with anchors and baits where the user laid them. \param from as for pinMark().
/// \return wrongUse where he laid nothing.
[[nodiscard]] base::Result<water::Water> layByHand(const water::Water& water, geo::LonLat from,
                                                   const water::PinnedMark& mark);

/// Gives anchors and baits of the pinned mark at `place` back to the program; the mark stays.
/// \return wrongUse where the user laid nothing there.
[[nodiscard]] base::Result<water::Water> freeLie(const water::Water& water, geo::LonLat place);

/// Lets the pinned mark at `place` go, with what was laid of it: it may be ranked away again.
/// \return wrongUse where none is pinned there.
[[nodiscard]] base::Result<water::Water> unpinMark(const water::Water& water, geo::LonLat place);

} // namespace acts
