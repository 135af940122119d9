// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/straight_pieces.h"

#include <algorithm>
#include <cmath>

namespace sections {

using geo::WaterPoint;

namespace {

/// The middles of the pieces, sorted from west to east for a quick search of the nearest.
class Middles {
public:
    explicit Middles(std::span<const PartSums> pieces) {
        for (std::size_t p = 0; p < pieces.size(); ++p) {
            if (pieces[p].area_m2 > 0.0) {
                sorted_.push_back(
                    {{pieces[p].x_m3 / pieces[p].area_m2, pieces[p].y_m3 / pieces[p].area_m2},
                     static_cast<std::int32_t>(p)});
            }
        }
        std::sort(sorted_.begin(), sorted_.end(), [](const Middle& a, const Middle& b) {
            return a.at.x_m != b.at.x_m ? a.at.x_m < b.at.x_m : a.piece < b.piece;
        });
    }

    [[nodiscard]] std::int32_t nearest(WaterPoint p) const {
        const auto east =
            std::lower_bound(sorted_.begin(), sorted_.end(), p.x_m,
                             [](const Middle& middle, double x_m) { return middle.at.x_m < x_m; });
        std::int32_t best = -1;
        double best_m2 = INFINITY;
        // True while a middle so far to one side can still be the nearest.
        const auto look = [&](const Middle& middle) {
            const double dx_m = middle.at.x_m - p.x_m;
            const double dy_m = middle.at.y_m - p.y_m;
            if (dx_m * dx_m >= best_m2) {
                return false;
            }
            if (const double away_m2 = dx_m * dx_m + dy_m * dy_m; away_m2 < best_m2) {
                best_m2 = away_m2;
                best = middle.piece;
            }
            return true;
        };
        auto west = east;
        for (auto at = east; at != sorted_.end() && look(*at); ++at) {
        }
        while (west != sorted_.begin() && look(*--west)) {
        }
        return best;
    }

private:
    struct Middle {
        WaterPoint at;
        std::int32_t piece = 0;
    };
    std::vector<Middle> sorted_;
};

std::vector<PartSums> sumsOf(const WaterGraph& graph, std::span<const std::int32_t> pieceOfNode,
                             std::size_t count) {
    std::vector<PartSums> pieces(count);
    for (std::size_t n = 0; n < graph.nodes.size(); ++n) {
        pieces[static_cast<std::size_t>(pieceOfNode[n])].add(graph.nodes[n].sums);
    }
    return pieces;
}

} // namespace

std::vector<PartSums> straightPieces(const WaterGraph& graph, const grid::DepthGrid& depth,
                                     const grid::Mask& mask,
                                     std::span<const std::int32_t> partOfNode, std::size_t count) {
    constexpr int mostRounds = 30;
    std::vector<std::int32_t> piece(partOfNode.begin(), partOfNode.end());
    for (int round = 0; round < mostRounds; ++round) {
        const Middles middles(sumsOf(graph, piece, count));
        bool changed = false;
        for (std::size_t n = 0; n < piece.size(); ++n) {
            const std::int32_t nearest = middles.nearest(graph.nodes[n].middle());
            changed = changed || nearest != piece[n];
            piece[n] = nearest;
        }
        if (!changed) {
            break;
        }
    }
    // Lumps on a border are divided cell by cell, so that it is as straight as it can be.
    const Middles middles(sumsOf(graph, piece, count));
    const grid::GridFrame& f = depth.frame();
    grid::PieceGrid cells(f, -1);
    for (std::size_t n = 0; n < piece.size(); ++n) {
        const std::vector<WaterStep>& steps = graph.nodes[n].steps;
        const bool isInside = std::all_of(steps.begin(), steps.end(), [&](const WaterStep& step) {
            return piece[static_cast<std::size_t>(step.to)] == piece[n];
        });
        for (const std::size_t i : graph.cellsOfNode[n]) {
            cells[i] = isInside ? piece[n] : middles.nearest(f.centre(f.cellAt(i)));
        }
    }
    return sumsOfPieces(cells, count, depth, mask);
}

std::vector<PartSums> sumsOfPieces(const grid::PieceGrid& pieces, std::size_t count,
                                   const grid::DepthGrid& depth, const grid::Mask& mask) {
    const grid::GridFrame& f = pieces.frame();
    const double side_m = sideBorder_m(f.cell_m());
    const double corner_m = cornerBorder_m(f.cell_m());
    std::vector<PartSums> sums(count);
    const auto at = [&](int col, int row) {
        const grid::Cell c{col, row};
        return f.holds(c) ? pieces[c] : -1;
    };
    const auto part = [&](std::int32_t a, std::int32_t b, double border_m) {
        if (a != b && a >= 0) {
            sums[static_cast<std::size_t>(a)].border_m += border_m;
        }
        if (a != b && b >= 0) {
            sums[static_cast<std::size_t>(b)].border_m += border_m;
        }
    };
    for (int row = -1; row < f.rows(); ++row) {
        for (int col = -1; col < f.cols(); ++col) {
            const std::int32_t here = at(col, row);
            const std::int32_t east = at(col + 1, row);
            const std::int32_t south = at(col, row + 1);
            const std::int32_t across = at(col + 1, row + 1);
            if (here >= 0) {
                sums[static_cast<std::size_t>(here)].add(
                    sumsOfCell(depth, mask, f.index({col, row})));
            }
            if (here != east || here != south || here != across) {
                part(here, east, side_m);
                part(here, south, side_m);
                part(here, across, corner_m);
                part(east, south, corner_m);
            }
        }
    }
    return sums;
}

} // namespace sections
