// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/feature_kinds.h"

#include "core/grid/connected_pieces.h"

#include <algorithm>
#include <cmath>

namespace structure {

using grid::Cell;
using grid::Grid;
using grid::GridFrame;

namespace {

constexpr double hold = 0.5; // a feature reaches on while it stands out by this share

/// Depths of the cells just outside a piece.
struct Surroundings {
    float shallowest_m = INFINITY;
    float deepest_m = -INFINITY;
    bool touchesLand = false;
};

Surroundings roundAbout(const std::vector<std::size_t>& cells, std::int32_t piece,
                        const grid::PieceGrid& pieces, const grid::DepthGrid& depth) {
    constexpr int reach = 2; // cells
    const GridFrame& f = depth.frame();
    Surroundings out;
    for (const std::size_t i : cells) {
        const Cell c = f.cellAt(i);
        for (int dr = -reach; dr <= reach; ++dr) {
            for (int dc = -reach; dc <= reach; ++dc) {
                const Cell n{c.col + dc, c.row + dr};
                if (!depth.has(n)) {
                    out.touchesLand = true;
                } else if (pieces[n] != piece) {
                    out.shallowest_m = std::min(out.shallowest_m, depth.raw_m()[f.index(n)]);
                    out.deepest_m = std::max(out.deepest_m, depth.raw_m()[f.index(n)]);
                }
            }
        }
    }
    return out;
}

/// How drawn out the piece is: ratio of the long to the short axis of its cells' ellipse.
double elongation(const std::vector<std::size_t>& cells, const GridFrame& f) {
    double n = 0.0;
    double sx = 0.0;
    double sy = 0.0;
    double sxx = 0.0;
    double syy = 0.0;
    double sxy = 0.0;
    for (const std::size_t i : cells) {
        const Cell c = f.cellAt(i);
        n += 1.0;
        sx += c.col;
        sy += c.row;
        sxx += static_cast<double>(c.col) * c.col;
        syy += static_cast<double>(c.row) * c.row;
        sxy += static_cast<double>(c.col) * c.row;
    }
    constexpr double ownVariance = 1.0 / 12.0; // of a cell, side 1
    const double vx = sxx / n - sx * sx / (n * n) + ownVariance;
    const double vy = syy / n - sy * sy / (n * n) + ownVariance;
    const double vxy = sxy / n - sx * sy / (n * n);
    const double middle = 0.5 * (vx + vy);
    const double half = std::hypot(0.5 * (vx - vy), vxy);
    return std::sqrt((middle + half) / std::max(middle - half, 1e-9));
}

ZoneKind kindOfHigh(const std::vector<std::size_t>& cells, const Surroundings& around,
                    const grid::DepthGrid& depth, double high_m) {
    float summit_m = INFINITY;
    for (const std::size_t i : cells) {
        summit_m = std::min(summit_m, depth.raw_m()[i]);
    }
    const bool standsAlone =
        !around.touchesLand && static_cast<double>(around.shallowest_m - summit_m) > hold * high_m;
    return standsAlone ? ZoneKind::hump : ZoneKind::spur;
}

ZoneKind kindOfLow(const std::vector<std::size_t>& cells, const Surroundings& around,
                   const grid::DepthGrid& depth, double high_m) {
    constexpr double drawnOut = 2.5;
    float bottom_m = -INFINITY;
    for (const std::size_t i : cells) {
        bottom_m = std::max(bottom_m, depth.raw_m()[i]);
    }
    const bool closed = static_cast<double>(bottom_m - around.deepest_m) > hold * high_m;
    return closed && elongation(cells, depth.frame()) < drawnOut ? ZoneKind::hole
                                                                 : ZoneKind::trough;
}

} // namespace

Grid<std::uint8_t> withHysteresis(const Grid<float>& values, double from, double downTo) {
    Grid<std::int32_t> reached(values.frame(), -1);
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (static_cast<double>(values[i]) >= downTo) {
            reached[i] = 0;
        }
    }
    Grid<std::uint8_t> out(values.frame(), 0);
    for (const std::vector<std::size_t>& cells : grid::connectedPieces(reached).cells) {
        const bool holds = std::any_of(cells.begin(), cells.end(), [&](std::size_t i) {
            return static_cast<double>(values[i]) >= from;
        });
        for (const std::size_t i : cells) {
            out[i] = holds ? 1 : 0;
        }
    }
    return out;
}

void markFeatures(KindGrid& kinds, const grid::DepthGrid& depth, const GroundForm& form,
                  units::Length high) {
    const double high_m = high.inMetres();
    const Grid<std::uint8_t> isHigh = withHysteresis(form.ridge_m, high_m, hold * high_m);
    const Grid<std::uint8_t> isLow = withHysteresis(form.valley_m, high_m, hold * high_m);
    Grid<std::int32_t> ground(kinds.frame(), -1);
    constexpr std::int32_t highGround = 0;
    constexpr std::int32_t lowGround = 1;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (isHigh[i] != 0 && isLow[i] != 0) {
            kinds[i] = codeOf(ZoneKind::saddle);
        } else if (isHigh[i] != 0) {
            ground[i] = highGround;
        } else if (isLow[i] != 0) {
            ground[i] = lowGround;
        }
    }
    const grid::ConnectedPieces pieces = grid::connectedPieces(ground);
    for (std::size_t p = 0; p < pieces.cells.size(); ++p) {
        const std::vector<std::size_t>& cells = pieces.cells[p];
        const Surroundings around =
            roundAbout(cells, static_cast<std::int32_t>(p), pieces.pieceOfCell, depth);
        const ZoneKind kind = ground[cells.front()] == highGround
                                  ? kindOfHigh(cells, around, depth, high_m)
                                  : kindOfLow(cells, around, depth, high_m);
        for (const std::size_t i : cells) {
            kinds[i] = codeOf(kind);
        }
    }
}

} // namespace structure
