// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/ruler_pieces.h"

#include "core/grid/connected_pieces.h"

#include <algorithm>
#include <array>
#include <numbers>
#include <random>
#include <set>

namespace support {

namespace {

/// One start of k-means. Every third cell speaks for three.
class KMeans {
public:
    KMeans(const KnownLake& lake, std::size_t count, unsigned seed) : middles_(count) {
        const grid::GridFrame& f = lake.depth.frame();
        for (std::size_t i = 0; i < lake.fishable.size(); i += 3) {
            places_.push_back(f.centre(f.cellAt(lake.fishable[i])));
        }
        start(seed);
        for (int round = 0; round < 40; ++round) {
            improve();
        }
    }

    [[nodiscard]] double sum() const { return sum_; }
    [[nodiscard]] std::size_t nearest(geo::WaterPoint p) const {
        std::size_t best = 0;
        for (std::size_t k = 1; k < middles_.size(); ++k) {
            best = squared(p, middles_[k]) < squared(p, middles_[best]) ? k : best;
        }
        return best;
    }

private:
    static double squared(geo::WaterPoint a, geo::WaterPoint b) {
        return (a.x_m - b.x_m) * (a.x_m - b.x_m) + (a.y_m - b.y_m) * (a.y_m - b.y_m);
    }

    void start(unsigned seed) {
        std::mt19937 random(seed);
        std::vector<double> away(places_.size(), 1.0);
        for (std::size_t k = 0; k < middles_.size(); ++k) {
            std::discrete_distribution<std::size_t> draw(away.begin(), away.end());
            middles_[k] = places_[draw(random)];
            for (std::size_t i = 0; i < places_.size(); ++i) {
                const double d = squared(places_[i], middles_[k]);
                away[i] = k == 0 ? d : std::min(away[i], d);
            }
        }
    }

    void improve() {
        std::vector<std::array<double, 3>> sums(middles_.size());
        sum_ = 0.0;
        for (const geo::WaterPoint p : places_) {
            const std::size_t k = nearest(p);
            sum_ += squared(p, middles_[k]);
            sums[k] = {sums[k][0] + p.x_m, sums[k][1] + p.y_m, sums[k][2] + 1.0};
        }
        for (std::size_t k = 0; k < middles_.size(); ++k) {
            if (sums[k][2] > 0.0) {
                middles_[k] = {sums[k][0] / sums[k][2], sums[k][1] / sums[k][2]};
            }
        }
    }

    std::vector<geo::WaterPoint> places_;
    std::vector<geo::WaterPoint> middles_;
    double sum_ = 0.0;
};

std::size_t tornOf(const KnownLake& lake, const grid::PieceGrid& pieces) {
    grid::PieceGrid fishable(pieces.frame(), -1);
    for (const std::size_t i : lake.fishable) {
        fishable[i] = 0;
    }
    const grid::ConnectedPieces pockets = grid::connectedPieces(fishable);
    std::set<std::pair<std::int32_t, std::int32_t>> met;
    std::set<std::int32_t> torn;
    for (const std::vector<std::size_t>& part : grid::connectedPieces(pieces).cells) {
        const std::int32_t piece = pieces[part.front()];
        if (!met.emplace(piece, pockets.pieceOfCell[part.front()]).second) {
            torn.insert(piece);
        }
    }
    return torn.size();
}

} // namespace

KnownLake knownLake(const gdal::Raster& depths, double limit_m) {
    const grid::GridFrame f(depths.transform[0], depths.transform[3], depths.transform[1],
                            depths.cols, depths.rows);
    KnownLake lake{grid::DepthGrid(f), {}, {}};
    grid::Grid<std::uint8_t> active(f, 0);
    for (std::size_t i = 0; i < f.size(); ++i) {
        if (const float depth_m = depths.bands.front()[i]; depth_m > 0.0F) {
            lake.depth.raw_m()[i] = depth_m;
            active[i] = 1;
            if (static_cast<double>(depth_m) <= limit_m) {
                lake.fishable.push_back(i);
            }
        }
    }
    lake.mask = grid::Mask::from(active);
    return lake;
}

grid::PieceGrid rulerPieces(const KnownLake& lake, std::size_t count) {
    KMeans best(lake, count, 1);
    for (const unsigned seed : {2U, 3U}) {
        KMeans other(lake, count, seed);
        if (other.sum() < best.sum()) {
            best = std::move(other);
        }
    }
    const grid::GridFrame& f = lake.depth.frame();
    grid::PieceGrid pieces(f, -1);
    for (const std::size_t i : lake.fishable) {
        pieces[i] = static_cast<std::int32_t>(best.nearest(f.centre(f.cellAt(i))));
    }
    return pieces;
}

PieceFigures figuresOf(const KnownLake& lake, const grid::PieceGrid& pieces, std::size_t count) {
    const grid::GridFrame& f = pieces.frame();
    struct Sums {
        double cells = 0.0;
        double depth = 0.0;
        double squares = 0.0;
        double sides = 0.0;
    };
    std::vector<Sums> sums(count);
    Sums all;
    for (const std::size_t i : lake.fishable) {
        const double depth_m = static_cast<double>(lake.depth.raw_m()[i]);
        const grid::Cell c = f.cellAt(i);
        int sides = 0;
        for (const grid::Cell n : {grid::Cell{c.col - 1, c.row}, grid::Cell{c.col + 1, c.row},
                                   grid::Cell{c.col, c.row - 1}, grid::Cell{c.col, c.row + 1}}) {
            sides += !f.holds(n) || pieces[n] != pieces[i] ? 1 : 0;
        }
        for (Sums* s : {&sums[static_cast<std::size_t>(pieces[i])], &all}) {
            s->cells += 1.0;
            s->depth += depth_m;
            s->squares += depth_m * depth_m;
            s->sides += sides;
        }
    }
    const auto scatter = [](const Sums& s) {
        return s.cells > 0.0 ? s.squares - s.depth * s.depth / s.cells : 0.0;
    };
    double within = 0.0;
    std::vector<double> compactness;
    for (const Sums& s : sums) {
        within += scatter(s);
        if (s.cells > 0.0) {
            compactness.push_back(4.0 * std::numbers::pi * s.cells / (s.sides * s.sides));
        }
    }
    std::sort(compactness.begin(), compactness.end());
    return {1.0 - within / scatter(all), compactness[compactness.size() / 2], tornOf(lake, pieces)};
}

} // namespace support
