// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/water/water.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace chart {

/// What the water holds in degrees, brought into its flat frame once for each water.
struct PlacedThings {
    struct Closed {
        std::string name;
        std::vector<geo::Piece> pieces;
    };
    struct Place {
        std::string name;
        geo::WaterPoint at;
    };
    std::vector<Closed> closed;
    std::vector<Place> places;
    std::optional<geo::WaterPoint> launch;
    std::vector<geo::WaterPoint> stays; ///< One for each stay of the log.

    /// Empty where the water is absent or has no frame yet.
    [[nodiscard]] static std::shared_ptr<const PlacedThings>
    of(const std::shared_ptr<const water::Water>& water);
};

} // namespace chart
