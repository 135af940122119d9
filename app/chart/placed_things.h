// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/water/document/water.h"

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
    std::vector<Closed> banned; ///< By the user.
    std::vector<Place> places;
    std::optional<geo::WaterPoint> launch;
    /// One for each stay, by the chunks of the log.
    std::vector<std::shared_ptr<const std::vector<geo::WaterPoint>>> stays;

    /// Empty where the water is absent or has no frame yet.
    [[nodiscard]] static std::shared_ptr<const PlacedThings>
    of(const std::shared_ptr<const water::Water>& water);
    /// Calls `take` with each stay of the log and where it lies, by start.
    template <class Take>
    static void forStays(const std::shared_ptr<const water::Water>& water, const Take& take) {
        const auto things = of(water);
        for (std::size_t i = 0; i < things->stays.size(); ++i) {
            const auto stays = water->log.chunks()[i]->items();
            for (std::size_t j = 0; j < stays.size(); ++j) {
                take(stays[j], (*things->stays[i])[j]);
            }
        }
    }
};

} // namespace chart
