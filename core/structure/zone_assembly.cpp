// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/zone_assembly.h"

#include "core/base/two_at_once.h"
#include "core/grid/cell_polygons.h"
#include "core/grid/connected_pieces.h"
#include "core/grid/piece_middles.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>

#include <fmt/format.h>

namespace structure {

using geo::WaterPoint;
using grid::Cell;
using grid::GridFrame;

namespace {

WaterPoint middleOfWater(const grid::Mask& mask) {
    const GridFrame& f = mask.frame();
    WaterPoint sum;
    double count = 0.0;
    for (std::size_t i = 0; i < f.size(); ++i) {
        if (mask.isActive(i)) {
            const WaterPoint p = f.centre(f.cellAt(i));
            sum.x_m += p.x_m;
            sum.y_m += p.y_m;
            count += 1.0;
        }
    }
    return count > 0.0 ? WaterPoint{sum.x_m / count, sum.y_m / count} : sum;
}

void describe(Zone& zone, const ZoneGround& ground) {
    const GridFrame& f = ground.depth.frame();
    float shallowest_m = INFINITY;
    float deepest_m = -INFINITY;
    double share = 0.0;
    double trust_m = 0.0;
    double trusted = 0.0;
    for (const std::size_t i : zone.cells) {
        share += static_cast<double>(ground.mask.share(i));
        if (ground.depth.has(i)) {
            shallowest_m = std::min(shallowest_m, ground.depth.raw_m()[i]);
            deepest_m = std::max(deepest_m, ground.depth.raw_m()[i]);
        }
        if (ground.trustHalfWidth_m != nullptr && !std::isnan((*ground.trustHalfWidth_m)[i])) {
            trust_m += static_cast<double>((*ground.trustHalfWidth_m)[i]);
            trusted += 1.0;
        }
    }
    zone.area = units::Area::squareMetres(share * f.cellArea_m2());
    if (deepest_m >= shallowest_m) {
        zone.shallowest = units::Depth::metres(static_cast<double>(shallowest_m));
        zone.deepest = units::Depth::metres(static_cast<double>(deepest_m));
    }
    zone.meanTrust_m = trusted > 0.0 ? trust_m / trusted : 0.0;
}

std::string capitalised(std::string_view word) {
    std::string out(word);
    out.front() = static_cast<char>(out.front() - 'a' + 'A');
    return out;
}

/// Sorts by kind, then clockwise, and names.
void orderAndName(std::vector<Zone>& zones, const ZoneGround& ground) {
    const WaterPoint middle = middleOfWater(ground.mask);
    const double start_deg = ground.launch ? geo::bearing(middle, *ground.launch).inDegrees() : 0.0;
    const auto turn_deg = [&](const Zone& z) {
        return geo::bearing(middle, z.middle).turnedBy(-start_deg).inDegrees();
    };
    std::stable_sort(zones.begin(), zones.end(), [&](const Zone& a, const Zone& b) {
        return a.kind != b.kind ? a.kind < b.kind : turn_deg(a) < turn_deg(b);
    });
    std::map<ZoneKind, int> counted;
    for (Zone& z : zones) {
        z.name = fmt::format("{} {}", capitalised(nameOf(z.kind)), ++counted[z.kind]);
    }
}

std::array<Cell, 4> sidesOf(Cell c) {
    return {Cell{c.col, c.row - 1}, Cell{c.col - 1, c.row}, Cell{c.col + 1, c.row},
            Cell{c.col, c.row + 1}};
}

/// What a piece joins.
struct Joining {
    std::int32_t kind = 0;  ///< Plus one; its own where it borders on nothing but land.
    bool isSettled = false; ///< True where it joins a piece that is large by itself.
};

/// The kind that the piece has most border with, the lower of equals.
Joining longestBorder(const grid::Grid<std::int32_t>& classes, const grid::ConnectedPieces& pieces,
                      const std::vector<std::size_t>& cells, std::size_t leastCells) {
    struct Border {
        int sides = 0;
        bool isLarge = false;
    };
    const GridFrame& f = classes.frame();
    std::map<std::int32_t, Border> borders;
    for (const std::size_t i : cells) {
        for (const Cell n : sidesOf(f.cellAt(i))) {
            if (f.holds(n) && classes[n] >= 0 && classes[n] != classes[i]) {
                Border& border = borders[classes[n]];
                ++border.sides;
                const auto piece = static_cast<std::size_t>(pieces.pieceOfCell[n]);
                border.isLarge = border.isLarge || pieces.cells[piece].size() >= leastCells;
            }
        }
    }
    const auto most =
        std::max_element(borders.begin(), borders.end(), [](const auto& a, const auto& b) {
            return a.second.sides < b.second.sides;
        });
    return most == borders.end() ? Joining{classes[cells.front()], true}
                                 : Joining{most->first, most->second.isLarge};
}

} // namespace

ZoneMap zonesFrom(const KindGrid& kindOfCell, const ZoneGround& ground) {
    grid::ConnectedPieces pieces = grid::connectedPieces(kindOfCell);
    const std::size_t count = pieces.cells.size();
    std::vector<std::vector<geo::Piece>> outlines;
    std::vector<WaterPoint> middles;
    base::twoAtOnce([&] { outlines = grid::polygonsOf(pieces.pieceOfCell, count); },
                    [&] { middles = grid::middlesOf(pieces.pieceOfCell, count); });
    ZoneMap out;
    out.zones.resize(count);
    for (std::size_t p = 0; p < count; ++p) {
        Zone& zone = out.zones[p];
        zone.kind = static_cast<ZoneKind>(kindOfCell[pieces.cells[p].front()]);
        zone.cells = std::move(pieces.cells[p]);
        zone.pieces = std::move(outlines[p]);
        zone.middle = middles[p];
        describe(zone, ground);
    }
    orderAndName(out.zones, ground);
    out.zoneOfCell = grid::Grid<ZoneNumber>(kindOfCell.frame(), noZone);
    for (std::size_t z = 0; z < count; ++z) {
        for (const std::size_t i : out.zones[z].cells) {
            out.zoneOfCell[i] = static_cast<ZoneNumber>(z);
        }
    }
    return out;
}

std::size_t joinSmallPieces(KindGrid& kindOfCell, const grid::Mask& mask, std::size_t leastCells) {
    constexpr int mostRounds = 4; // joined pieces may be small still
    grid::Grid<std::int32_t> classes(kindOfCell.frame(), -1);
    for (std::size_t i = 0; i < classes.size(); ++i) {
        if (mask.isActive(i)) {
            classes[i] = std::max(kindOfCell[i], -1) + 1;
        }
    }
    std::size_t joined = 0;
    for (int round = 0; round < mostRounds; ++round) {
        const grid::ConnectedPieces pieces = grid::connectedPieces(classes);
        std::vector<std::size_t> order(pieces.cells.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return pieces.cells[a].size() < pieces.cells[b].size();
        });
        bool mayBeSmall = false;
        for (const std::size_t p : order) {
            const std::vector<std::size_t>& cells = pieces.cells[p];
            if (cells.size() >= leastCells) {
                break;
            }
            const Joining joins = longestBorder(classes, pieces, cells, leastCells);
            const bool alone = joins.kind == classes[cells.front()];
            mayBeSmall = mayBeSmall || !joins.isSettled;
            if (!alone) {
                joined += classes[cells.front()] > 0 ? 1 : 0;
            }
            for (const std::size_t i : cells) {
                classes[i] = alone ? 0 : joins.kind;
            }
        }
        if (!mayBeSmall) {
            break;
        }
    }
    for (std::size_t i = 0; i < classes.size(); ++i) {
        kindOfCell[i] = classes[i] - 1;
    }
    return joined;
}

} // namespace structure
