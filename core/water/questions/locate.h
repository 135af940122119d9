// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/zone.h"
#include "core/surface/trust.h"
#include "core/units/depth.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <optional>
#include <vector>

namespace water {

/// What is known of one place of the water; what is absent is not there or not derived yet.
struct Located {
    std::optional<units::Depth> depth;  ///< Below chart level.
    std::optional<units::Length> trust; ///< 95 % half-width of that depth.
    std::optional<surface::TrustName> trustName;
    std::optional<std::size_t> band;
    const structure::Zone* zone = nullptr;     ///< Of structure.
    const structure::Zone* weedZone = nullptr; ///< Weed bed or weed edge.
    const sections::Section* section = nullptr;
};

/// Looks up one place. The pointers live as long as what `derived` holds.
[[nodiscard]] Located locate(const Water& water, const Derived& derived, geo::WaterPoint place);

/// How deep a place is at the planned day's level. Nothing where nothing is drawn, on land, and on
/// ground that is dry that day.
[[nodiscard]] std::optional<units::Depth> depthThatDay(const Water& water, const Derived& derived,
                                                       geo::WaterPoint place);

} // namespace water
