// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/mask.h"
#include "core/surface/solver/line_candidates.h"

#include <vector>

namespace surface::solver {

/// Lines put into one round trip from the launch.
class RoundTrip {
public:
    RoundTrip(const grid::Mask& mask, geo::WaterPoint launch);

    /// Adds a line where it costs least way, either way round, then betters the order by turning
    /// stretches of it (2-opt) until nothing gains.
    void add(const Chord& line);
    /// Takes the line added last out again.
    void undo();

    [[nodiscard]] double length_m() const;
    /// The lines in order, each from the end where it is entered.
    [[nodiscard]] std::vector<Chord> inOrder() const;
    /// Metres over water from the nearest end of a line or the launch, for each block.
    [[nodiscard]] const grid::Grid<float>& wayTo_m() const { return nearest_m_; }

private:
    struct Visit {
        std::size_t line = 0;
        bool isTurned = false;
    };
    [[nodiscard]] std::size_t entry(const Visit& visit) const;
    [[nodiscard]] std::size_t exit(const Visit& visit) const;
    [[nodiscard]] double lengthOf_m(const std::vector<Visit>& order) const;
    void better();
    void addNode(geo::WaterPoint p);
    [[nodiscard]] double way_m(std::size_t from, std::size_t to) const;

    const grid::Mask* mask_;
    std::vector<geo::WaterPoint> nodes_;    ///< The launch, then both ends of each line.
    std::vector<grid::Grid<float>> ways_m_; ///< From each node over water.
    std::vector<Chord> lines_;
    std::vector<Visit> order_;
    std::vector<Visit> before_;
    grid::Grid<float> nearest_m_;
};

} // namespace surface::solver
