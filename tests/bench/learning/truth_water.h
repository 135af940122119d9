// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark_input.h"
#include "core/marks/propose_marks.h"
#include "core/marks/surroundings.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <vector>

namespace learning_bench {

/// What fish may care about at a place, told by the drawn water and by nothing of the plan.
struct TruthPlace {
    geo::WaterPoint place;
    double depth_m = 0.0;
    int kind = 0;               ///< Under the boat: 0 open water, else 1 + the kind of zone.
    std::vector<double> shares; ///< Of the circle of a cast, by kind of zone.
    int section = 0;            ///< -1: in none.
    int hex = 0;                ///< Of a lattice of hexagons 60 m across.
    double riseEast = 0.0;
    double riseNorth = 0.0;
    double toShore_m = 0.0;
};

/// A water with the places on it that an all-knowing angler chooses from: a lattice of 20 m
/// wherever a boat may lie in a calm. The water and what is derived from it must outlive it.
class TruthWater {
public:
    TruthWater(const water::Water& water, const water::Derived& derived);
    TruthWater(const TruthWater&) = delete; // Its input refers to it.
    TruthWater& operator=(const TruthWater&) = delete;

    [[nodiscard]] TruthPlace at(geo::WaterPoint place) const;
    [[nodiscard]] const std::vector<TruthPlace>& places() const { return places_; }
    [[nodiscard]] int sections() const;
    [[nodiscard]] const water::Water& water() const { return water_; }
    [[nodiscard]] const water::Derived& derived() const { return derived_; }

private:
    [[nodiscard]] marks::MarkInput input() const;

    const water::Water& water_;
    const water::Derived& derived_;
    grid::DepthGrid today_;
    grid::Grid<std::uint8_t> closed_;
    rods::Ground ground_;
    std::vector<TruthPlace> places_;
};

/// Up to four places, best first, 60 m apart and no more than two in a section.
[[nodiscard]] std::vector<std::size_t> bestFour(const TruthWater& water,
                                                const std::vector<double>& values);

} // namespace learning_bench
