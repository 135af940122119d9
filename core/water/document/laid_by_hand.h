// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/units/bearing.h"

#include <optional>
#include <vector>

namespace water {

/// What the user himself laid of one of his marks. What is absent the program lays.
struct LaidByHand {
    std::optional<geo::LonLat> bow; ///< Where he drops the bow anchor.
    std::optional<geo::LonLat> stern;
    std::vector<geo::LonLat> baits; ///< All of the mark, or none.
    /// The wind that the anchors were laid in came from there; nothing where it was not known.
    std::optional<units::Bearing> windFrom;

    [[nodiscard]] bool isAny() const {
        return bow.has_value() || stern.has_value() || !baits.empty();
    }
    friend bool operator==(const LaidByHand&, const LaidByHand&) = default;
};

} // namespace water
