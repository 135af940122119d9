// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

#include <string>

namespace edits {

/// No mark is proposed within the ring any more, until the ban is lifted.
void banWater(open_water::OpenWater& open, const water::BannedWater& banned);
/// The same round a mark, as far as `radius`; where it is an own one, it is let go.
void banRound(open_water::OpenWater& open, geo::LonLat place, units::Length radius,
              const std::string& name);
/// Lifts the ban at this position among all.
void liftBan(open_water::OpenWater& open, std::size_t which);
void nameBan(open_water::OpenWater& open, std::size_t which, const std::string& name);

} // namespace edits
