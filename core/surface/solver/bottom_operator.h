// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/energy.h"
#include "core/surface/solver/samples.h"
#include "core/surface/solver/track_pulls.h"

#include <cstdint>
#include <vector>

namespace surface::solver {

/// The matrix of the surface's energy without its numbers: applied from the differences that it is
/// made of. Exact in double, as second differences are taken first; the 25 numbers a cell, 200
/// bytes, would be the largest thing in memory and most of the time on large waters.
class BottomOperator {
public:
    explicit BottomOperator(const ActiveCells& cells);

    /// What bends cost, see energy.h; no pulls yet. `contours` must outlive its use; null: bends
    /// along contours cost nothing extra.
    void setBends(double bending, double membrane, double contourBending,
                  const ContourDirections* contours);
    /// Adds weight x (value at the footprint)^2.
    void addPull(const Footprint& at, double weight);
    /// The pulls of soundings, none until they are set.
    [[nodiscard]] TrackPulls& tracks() { return tracks_; }

    /// y = A x on the active cells; x must be 0 elsewhere, y there is left alone. The same for any
    /// number of threads.
    void multiply(const Field& x, Field& y, int threads);

private:
    struct Pull {
        Footprint at{};
        double weight = 0.0;
    };
    /// Weighted differences of one row of the rectangle, each at its own cell.
    struct Row {
        explicit Row(std::size_t cols)
            : alongX(cols), alongY(cols), mixed(cols), corner(cols), toEast(cols), toSouth(cols) {}
        std::vector<double> alongX, alongY, mixed, corner, toEast, toSouth;
    };
    void takeDifferences(const Field& x, int row, Row& differences) const;
    void gather(const Row& north, const Row& own, const Row& south, int row, Field& y) const;

    const ActiveCells* cells_;
    std::vector<std::uint8_t> whole_;
    double bending_ = 0.0;
    double membrane_ = 0.0;
    double contourBending_ = 0.0;
    const ContourDirections* contours_ = nullptr;
    std::vector<Pull> pulls_;
    TrackPulls tracks_;
};

} // namespace surface::solver
