// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/piece_middles.h"

#include "core/grid/distance_field.h"

#include <cmath>

namespace grid {

Grid<float> distanceToBorder_m(const PieceGrid& pieces) {
    const GridFrame& f = pieces.frame();
    Grid<std::uint8_t> isBorder(f, 0);
    const auto cols = static_cast<std::size_t>(f.cols());
    std::size_t i = 0;
    for (int row = 0; row < f.rows(); ++row) {
        for (int col = 0; col < f.cols(); ++col, ++i) {
            const bool isAtEdge =
                row == 0 || col == 0 || row + 1 == f.rows() || col + 1 == f.cols();
            isBorder[i] = isAtEdge || pieces[i - cols] != pieces[i] || pieces[i - 1] != pieces[i] ||
                                  pieces[i + 1] != pieces[i] || pieces[i + cols] != pieces[i]
                              ? 1
                              : 0;
        }
    }
    Grid<float> distance_m = straightDistance_m(isBorder);
    const auto half_m = static_cast<float>(0.5 * f.cell_m());
    for (i = 0; i < pieces.size(); ++i) {
        distance_m[i] = pieces[i] < 0 ? 0.0F : distance_m[i] + half_m;
    }
    return distance_m;
}

std::vector<geo::WaterPoint> middlesOf(const PieceGrid& pieces, std::size_t count) {
    constexpr double pullToMean = 0.05; // metres of clearance given up for a metre nearer the mean
    const GridFrame& f = pieces.frame();
    const Grid<float> clearance_m = distanceToBorder_m(pieces);
    std::vector<geo::WaterPoint> mean(count);
    std::vector<double> cells(count, 0.0);
    const auto pieceAt = [&](std::size_t i) {
        return pieces[i] < 0 ? count : static_cast<std::size_t>(pieces[i]);
    };
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (const std::size_t p = pieceAt(i); p < count) {
            const geo::WaterPoint at = f.centre(f.cellAt(i));
            mean[p].x_m += at.x_m;
            mean[p].y_m += at.y_m;
            cells[p] += 1.0;
        }
    }
    for (std::size_t p = 0; p < count; ++p) {
        mean[p].x_m /= std::fmax(cells[p], 1.0);
        mean[p].y_m /= std::fmax(cells[p], 1.0);
    }
    std::vector<double> best(count, -INFINITY);
    std::vector<geo::WaterPoint> out(count, {f.west_m(), f.north_m()});
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (const std::size_t p = pieceAt(i); p < count) {
            if (static_cast<double>(clearance_m[i]) <= best[p]) {
                continue; // the pull can only lower it
            }
            const geo::WaterPoint at = f.centre(f.cellAt(i));
            const double score =
                static_cast<double>(clearance_m[i]) - pullToMean * geo::distance_m(at, mean[p]);
            if (score > best[p]) {
                best[p] = score;
                out[p] = at;
            }
        }
    }
    return out;
}

} // namespace grid
