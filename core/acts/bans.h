// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/units/length.h"
#include "core/water/document/water.h"

#include <string>

namespace acts {

/// From now on no mark is proposed within the ring. Own marks in it stay, and say so.
/// \return wrongUse for a water without a frame; the error of Outline::make() for a ring that
/// encloses no water or crosses itself.
[[nodiscard]] base::Result<water::Water> banWater(const water::Water& water,
                                                  const water::BannedWater& banned);

/// The same round a mark. Where the user keeps it as his own, it is let go: nobody wants both.
/// \param radius 1 m to 2 km. \return wrongUse for a radius out of range, or as above.
[[nodiscard]] base::Result<water::Water> banRound(const water::Water& water, geo::LonLat place,
                                                  units::Length radius, const std::string& name);

/// Lifts the ban at this position of Water::banned. \return wrongUse where there is none.
[[nodiscard]] base::Result<water::Water> liftBan(const water::Water& water, std::size_t which);

/// Calls it otherwise. \return wrongUse where there is none.
[[nodiscard]] base::Result<water::Water> nameBan(const water::Water& water, std::size_t which,
                                                 const std::string& name);

} // namespace acts
