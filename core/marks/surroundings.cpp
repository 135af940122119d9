// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/surroundings.h"

#include "core/rods/rod_settings.h"
#include "core/structure/zone_kinds.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace marks {

namespace {

using structure::ZoneKind;

constexpr std::size_t kindCount = structure::allZoneKinds.size();

std::size_t indexOf(ZoneKind kind) {
    return static_cast<std::size_t>(kind);
}

/// Water shallower than a bait is put into is not fished.
units::Depth shallowestBait() {
    return rods::RodSettings().shallowest;
}

bool canHoldABait(const MarkInput& input, geo::WaterPoint p) {
    return input.ground.isFishable(p) &&
           input.ground.depthAt(p).value_or(units::Depth()) >= shallowestBait();
}

/// Sums for the plane of best fit: depth = a + b east + c north.
class PlaneFit {
public:
    void take(double east, double north, double depth) {
        ++n_;
        e_ += east;
        n1_ += north;
        d_ += depth;
        ee_ += east * east;
        nn_ += north * north;
        en_ += east * north;
        ed_ += east * depth;
        nd_ += north * depth;
    }
    /// Fall of depth to the east and north; nothing where the places do not span a plane.
    [[nodiscard]] std::optional<std::array<double, 2>> rise() const {
        const double ee = ee_ - e_ * e_ / n_;
        const double nn = nn_ - n1_ * n1_ / n_;
        const double en = en_ - e_ * n1_ / n_;
        const double ed = ed_ - e_ * d_ / n_;
        const double nd = nd_ - n1_ * d_ / n_;
        const double det = ee * nn - en * en;
        if (!(n_ >= 3.0) || !(det > 1e-9 * ee * nn)) {
            return std::nullopt;
        }
        return std::array{-(nn * ed - en * nd) / det, -(ee * nd - en * ed) / det};
    }

private:
    double n_ = 0.0;
    double e_ = 0.0;
    double n1_ = 0.0;
    double d_ = 0.0;
    double ee_ = 0.0;
    double nn_ = 0.0;
    double en_ = 0.0;
    double ed_ = 0.0;
    double nd_ = 0.0;
};

/// What is counted while the cells of the circle pass by.
struct Count {
    std::size_t all = 0;
    std::size_t fishable = 0;
    std::size_t guesses = 0;
    std::size_t trusted = 0;
    double trust_m = 0.0;
    double shallowest_m = INFINITY;
    double deepest_m = 0.0;
    double dropOffTop_m = INFINITY;
    double dropOffFoot_m = 0.0;
    std::array<std::size_t, kindCount> cellsOfKind{};
    std::array<std::size_t, kindCount> anyCellsOfKind{}; ///< Fishable or not.
    bool closed = false;
    PlaneFit plane;
};

using ZonesOfCell = std::array<const structure::Zone*, 2>;

void countKinds(const ZonesOfCell& zones, std::array<std::size_t, kindCount>& cellsOfKind) {
    for (const structure::Zone* zone : zones) {
        if (zone != nullptr) {
            ++cellsOfKind[indexOf(zone->kind)];
        }
    }
}

void takeFishable(const MarkInput& input, grid::Cell c, double depth_m, const ZonesOfCell& zones,
                  Count& count) {
    ++count.fishable;
    count.shallowest_m = std::min(count.shallowest_m, depth_m);
    count.deepest_m = std::max(count.deepest_m, depth_m);
    count.guesses += input.isGuess != nullptr && (*input.isGuess)[c] != 0 ? 1U : 0U;
    if (const float trust_m = input.trust_m[c]; !std::isnan(trust_m)) {
        ++count.trusted;
        count.trust_m += static_cast<double>(trust_m);
    }
    for (const structure::Zone* zone : zones) {
        if (zone == nullptr) {
            continue;
        }
        ++count.cellsOfKind[indexOf(zone->kind)];
        if (zone->kind == ZoneKind::dropOff) {
            count.dropOffTop_m = std::min(count.dropOffTop_m, depth_m);
            count.dropOffFoot_m = std::max(count.dropOffFoot_m, depth_m);
        }
    }
}

Count countRound(const MarkInput& input, geo::WaterPoint place, double cast_m) {
    const grid::GridFrame& frame = input.ground.frame();
    const grid::Cell middle = frame.cellOf(place);
    const int reach = static_cast<int>(std::ceil(cast_m / frame.cell_m()));
    const double most_m2 = cast_m * cast_m;
    const units::Depth shallowest = shallowestBait();
    Count count;
    for (int row = middle.row - reach; row <= middle.row + reach; ++row) {
        for (int col = middle.col - reach; col <= middle.col + reach; ++col) {
            const grid::Cell c{col, row};
            const geo::WaterPoint p = frame.centre(c);
            const double east_m = p.x_m - place.x_m;
            const double north_m = p.y_m - place.y_m;
            if (east_m * east_m + north_m * north_m > most_m2 && c != middle) {
                continue;
            }
            ++count.all;
            const bool isClosed = input.ground.isClosed(c);
            count.closed = count.closed || isClosed;
            const auto depth = input.ground.today().at(c);
            if (!depth) {
                continue;
            }
            const ZonesOfCell zones = input.ground.zonesAt(c);
            count.plane.take(east_m, north_m, depth->inMetres());
            countKinds(zones, count.anyCellsOfKind);
            if (!isClosed && *depth >= shallowest && *depth <= input.ground.limit()) {
                takeFishable(input, c, depth->inMetres(), zones, count);
            }
        }
    }
    return count;
}

/// Adds the length of every edge in reach that runs over fishable water, looked at in pieces of a
/// cell.
void measureEdges(const MarkInput& input, geo::WaterPoint place, double cast_m, Surroundings& out) {
    const double piece_m = std::max(input.ground.frame().cell_m(), cast_m / 16.0);
    for (const rods::EdgePiece& edge : input.ground.edgesNear(place, cast_m)) {
        const double length_m = geo::distance_m(edge.a, edge.b);
        const int pieces = std::max(1, static_cast<int>(std::ceil(length_m / piece_m)));
        const auto at = [&](double t) {
            return geo::WaterPoint{edge.a.x_m + t * (edge.b.x_m - edge.a.x_m),
                                   edge.a.y_m + t * (edge.b.y_m - edge.a.y_m)};
        };
        for (int k = 0; k < pieces; ++k) {
            const double from = static_cast<double>(k) / pieces;
            const double to = (k + 1.0) / pieces;
            const double within_m = rods::lengthWithin_m(at(from), at(to), place, cast_m);
            if (within_m > 0.0 && canHoldABait(input, at(0.5 * (from + to)))) {
                (edge.kind == ZoneKind::dropOff ? out.dropOff_m : out.weedEdge_m) += within_m;
            }
        }
    }
}

void nameKinds(const Count& count, double cellArea_m2, Surroundings& out) {
    std::size_t most = 0;
    for (const ZoneKind kind : structure::allZoneKinds) {
        const std::size_t cells = count.cellsOfKind[indexOf(kind)];
        if (cells > 0) {
            out.kinds.push_back(kind);
        }
        if (structure::isFeature(kind)) {
            out.featureArea_m2 += static_cast<double>(cells) * cellArea_m2;
            if (cells > most) {
                most = cells;
                out.feature = kind;
            }
        }
    }
}

} // namespace

Surroundings surroundingsOf(const MarkInput& input, geo::WaterPoint place, units::Length cast) {
    Surroundings out;
    const auto depth = input.ground.depthAt(place);
    if (!depth) {
        return out;
    }
    out.depth = *depth;
    const Count count = countRound(input, place, cast.inMetres());
    out.isClosedNear = count.closed;
    if (const auto rise = count.plane.rise()) {
        out.riseEast = (*rise)[0];
        out.riseNorth = (*rise)[1];
    }
    if (count.trusted > 0) {
        out.trust = units::Length::metres(count.trust_m / static_cast<double>(count.trusted));
    } else {
        const grid::Cell c = input.trust_m.frame().cellOf(place);
        out.trust = units::Length::metres(static_cast<double>(input.trust_m[c]));
    }
    if (count.fishable > 0) {
        const auto fishable = static_cast<double>(count.fishable);
        out.fishableShare = fishable / static_cast<double>(count.all);
        out.guessShare = static_cast<double>(count.guesses) / fishable;
        out.shallowest = units::Depth::metres(count.shallowest_m);
        out.deepest = units::Depth::metres(count.deepest_m);
    }
    for (std::size_t k = 0; k < kindCount; ++k) {
        out.shareOfKind[k] =
            static_cast<double>(count.anyCellsOfKind[k]) / static_cast<double>(count.all);
    }
    measureEdges(input, place, cast.inMetres(), out);
    nameKinds(count, input.ground.frame().cellArea_m2(), out);
    const bool hasDropOff = count.dropOffFoot_m > 0.0;
    out.dropOffTop = hasDropOff ? units::Depth::metres(count.dropOffTop_m) : out.shallowest;
    out.dropOffFoot = hasDropOff ? units::Depth::metres(count.dropOffFoot_m) : out.deepest;
    return out;
}

} // namespace marks
