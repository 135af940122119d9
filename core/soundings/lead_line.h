// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/typed_id.h"
#include "core/geo/lon_lat.h"
#include "core/units/depth.h"

#include <optional>
#include <string_view>

namespace soundings {

/// What the lead brings up or feels.
enum class Bottom { soft, gravel, rock, weed };

/// "soft", "gravel", "rock", "weed".
[[nodiscard]] std::string_view nameOf(Bottom bottom);
[[nodiscard]] std::optional<Bottom> bottomNamed(std::string_view name);

using LeadLineId = base::TypedId<struct LeadLineKind>;

/// One sounding by hand, depth below chart level as entered (the user allows for the day's level).
struct LeadLineSounding {
    LeadLineId id;
    geo::LonLat place;
    units::Depth depth;
    std::optional<Bottom> bottom;
    friend bool operator==(const LeadLineSounding&, const LeadLineSounding&) = default;
};

} // namespace soundings
