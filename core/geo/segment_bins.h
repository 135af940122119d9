// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"

#include <cstdint>
#include <span>
#include <vector>

namespace geo {

/// Straight pieces sorted into square bins, for one who looks along a ray and stops at the first
/// that he meets: what lies behind it costs nothing.
class SegmentBins {
public:
    struct Piece {
        WaterPoint a;
        WaterPoint b;
    };

    SegmentBins() = default;
    /// About as many bins as pieces.
    explicit SegmentBins(std::span<const Piece> pieces);

    /// Visits, bin after bin along the ray from `from`, the numbers of the pieces in them, some
    /// more than once, and besides those that the ray meets others that it passes near. Before each
    /// bin `isPast` is asked whether what was met lies nearer than its distance to the bin in
    /// metres: then nothing nearer is left.
    template <class Visit, class IsPast>
    void along(WaterPoint from, double east, double north, Visit visit, IsPast isPast) const {
        Walk walk = enter(from, east, north);
        for (; walk.isInside && !isPast(walk.entered_m); step(walk)) {
            const std::size_t bin =
                static_cast<std::size_t>(walk.row) * static_cast<std::size_t>(cols_) +
                static_cast<std::size_t>(walk.col);
            for (std::uint32_t k = start_[bin]; k < start_[bin + 1]; ++k) {
                visit(static_cast<std::size_t>(numbers_[k]));
            }
        }
    }

private:
    struct Walk {
        bool isInside = false;
        int col = 0;
        int row = 0;
        int stepCol = 1;
        int stepRow = 1;
        double perCol_m = 0.0;  ///< Along the ray from one column to the next.
        double perRow_m = 0.0;  ///< Likewise of rows.
        double nextCol_m = 0.0; ///< Where the ray leaves the column
        double nextRow_m = 0.0; ///< and the row.
        double entered_m = 0.0; ///< Where it came into the bin.
    };
    [[nodiscard]] Walk enter(WaterPoint from, double east, double north) const;
    void step(Walk& walk) const;
    [[nodiscard]] int colOf(double x_m) const;
    [[nodiscard]] int rowOf(double y_m) const;

    Box box_;
    double bin_m_ = 1.0;
    int cols_ = 0;
    int rows_ = 0;
    /// Numbers of bin k: numbers_[start_[k]] to numbers_[start_[k + 1] - 1].
    std::vector<std::uint32_t> start_;
    std::vector<std::uint32_t> numbers_;
};

} // namespace geo
