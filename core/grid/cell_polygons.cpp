// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/cell_polygons.h"

#include <algorithm>
#include <array>
#include <limits>
#include <unordered_map>

namespace grid {

namespace {

using geo::Ring;
using geo::WaterPoint;

// Directions on the lattice of cell corners: 0 east, 1 south, 2 west, 3 north (rows run south).
constexpr std::array<int, 4> stepCol{1, 0, -1, 0};
constexpr std::array<int, 4> stepRow{0, 1, 0, -1};
constexpr int leftTurn = 3;
constexpr int rightTurn = 1;
constexpr int back = 2;

/// A corner of cells: (0, 0) is the north-west corner of cell (0, 0).
struct Corner {
    int col = 0;
    int row = 0;
    friend bool operator==(Corner, Corner) = default;
};

Corner stepped(Corner c, int direction) {
    const auto d = static_cast<std::size_t>(direction);
    return {c.col + stepCol[d], c.row + stepRow[d]};
}

/// A stretch of border between two pieces, from one place where borders meet to the next.
struct Arc {
    std::vector<Corner> corners; ///< Both ends included; a closed one repeats its first.
    bool closed = false;         ///< A loop that meets no other border.
    std::int32_t left = -1;
    std::int32_t right = -1;
    int firstStep = 0;
    int lastStep = 0;
    geo::Path line; ///< Smoothed, in metres.
};

/// The lattice of corners with its borders.
class Borders {
public:
    explicit Borders(const PieceGrid& pieces)
        : pieces_(pieces), cols_(pieces.frame().cols() + 1), rows_(pieces.frame().rows() + 1),
          seen_(static_cast<std::size_t>(cols_) * static_cast<std::size_t>(rows_), 0) {}

    std::vector<Arc> arcs() {
        std::vector<Arc> out;
        const std::vector<Corner> touched = cornersOnBorders();
        for (const bool nodesOnly : {true, false}) {
            for (const Corner c : touched) {
                startAt(c, nodesOnly, out);
            }
        }
        return out;
    }

    [[nodiscard]] std::size_t index(Corner c) const {
        return static_cast<std::size_t>(c.row) * static_cast<std::size_t>(cols_) +
               static_cast<std::size_t>(c.col);
    }

private:
    [[nodiscard]] std::int32_t pieceAt(int col, int row) const {
        const Cell c{col, row};
        return pieces_.frame().holds(c) ? std::max(pieces_[c], -1) : -1;
    }
    /// Corners whose four cells are not all of one piece, row by row.
    [[nodiscard]] std::vector<Corner> cornersOnBorders() const {
        std::vector<Corner> out;
        for (int row = 0; row < rows_; ++row) {
            std::int32_t northWest = -1;
            std::int32_t southWest = -1;
            for (int col = 0; col < cols_; ++col) {
                const std::int32_t northEast = pieceAt(col, row - 1);
                const std::int32_t southEast = pieceAt(col, row);
                if (northWest != northEast || southWest != southEast || northEast != southEast) {
                    out.push_back({col, row});
                }
                northWest = northEast;
                southWest = southEast;
            }
        }
        return out;
    }
    /// The piece to the left of a step from `c`.
    [[nodiscard]] std::int32_t leftOf(Corner c, int direction) const {
        constexpr std::array<int, 4> col{0, 0, -1, -1};
        constexpr std::array<int, 4> row{-1, 0, 0, -1};
        const auto d = static_cast<std::size_t>(direction);
        return pieceAt(c.col + col[d], c.row + row[d]);
    }
    [[nodiscard]] std::int32_t rightOf(Corner c, int direction) const {
        return leftOf(stepped(c, direction), (direction + back) % 4);
    }
    [[nodiscard]] bool isBorder(Corner c, int direction) const {
        const Corner to = stepped(c, direction);
        if (to.col < 0 || to.row < 0 || to.col >= cols_ || to.row >= rows_) {
            return false;
        }
        return leftOf(c, direction) != rightOf(c, direction);
    }
    [[nodiscard]] int degree(Corner c) const {
        int count = 0;
        for (int d = 0; d < 4; ++d) {
            count += isBorder(c, d) ? 1 : 0;
        }
        return count;
    }
    /// The mark of the side, kept with its western or northern end.
    [[nodiscard]] std::pair<std::size_t, std::uint8_t> markOf(Corner c, int direction) const {
        const Corner from = direction >= 2 ? stepped(c, direction) : c;
        return {index(from), static_cast<std::uint8_t>(direction % 2 == 0 ? 1 : 2)};
    }
    bool isSeen(Corner c, int direction) const {
        const auto [at, bit] = markOf(c, direction);
        return (seen_[at] & bit) != 0;
    }
    void see(Corner c, int direction) {
        const auto [at, bit] = markOf(c, direction);
        seen_[at] = static_cast<std::uint8_t>(seen_[at] | bit);
    }

    void startAt(Corner c, bool nodesOnly, std::vector<Arc>& out) {
        if (nodesOnly) {
            const int d = degree(c);
            if (d == 0 || d == 2) {
                return;
            }
        }
        for (int d = 0; d < 4; ++d) {
            if (isBorder(c, d) && !isSeen(c, d)) {
                out.push_back(traced(c, d, !nodesOnly));
            }
        }
    }

    Arc traced(Corner start, int direction, bool closed) {
        Arc arc{{start},   closed, leftOf(start, direction), rightOf(start, direction), direction,
                direction, {}};
        Corner at = start;
        while (true) {
            see(at, direction);
            at = stepped(at, direction);
            arc.corners.push_back(at);
            arc.lastStep = direction;
            if (at == start || (!closed && degree(at) != 2)) {
                return arc;
            }
            for (const int turn : {0, leftTurn, rightTurn}) {
                if (isBorder(at, (direction + turn) % 4)) {
                    direction = (direction + turn) % 4;
                    break;
                }
            }
        }
    }

    const PieceGrid& pieces_;
    int cols_;
    int rows_;
    std::vector<std::uint8_t> seen_;
};

/// One pass of Taubin's smoothing (1995): a step towards the mean of the neighbours, of either
/// sign.
void pull(std::vector<WaterPoint>& line, bool closed, double share) {
    const std::size_t n = line.size();
    const std::vector<WaterPoint> was = line;
    const std::size_t first = closed ? 0 : 1;
    const std::size_t end = closed ? n : n - 1;
    for (std::size_t i = first; i < end; ++i) {
        const WaterPoint& before = was[(i + n - 1) % n];
        const WaterPoint& after = was[(i + 1) % n];
        line[i].x_m += share * (0.5 * (before.x_m + after.x_m) - was[i].x_m);
        line[i].y_m += share * (0.5 * (before.y_m + after.y_m) - was[i].y_m);
    }
}

/// Smooths the staircase out of the arc without letting any point leave its surroundings: 0.4 of a
/// cell for the smoothing and 0.08 for the thinning stay below the half at which borders could
/// meet.
void smooth(Arc& arc, const GridFrame& f) {
    constexpr int passes = 12;
    constexpr double inward = 0.5;
    constexpr double outward = -0.53;
    constexpr double farthest = 0.4;
    constexpr double thinning = 0.08;
    std::vector<WaterPoint> line;
    for (const Corner c : arc.corners) {
        line.push_back({static_cast<double>(c.col), static_cast<double>(c.row)});
    }
    if (arc.closed) {
        line.pop_back();
    }
    const std::vector<WaterPoint> origin = line;
    for (int pass = 0; pass < passes && line.size() > 2; ++pass) {
        for (const double share : {inward, outward}) {
            pull(line, arc.closed, share);
            for (std::size_t i = 0; i < line.size(); ++i) {
                line[i].x_m =
                    std::clamp(line[i].x_m, origin[i].x_m - farthest, origin[i].x_m + farthest);
                line[i].y_m =
                    std::clamp(line[i].y_m, origin[i].y_m - farthest, origin[i].y_m + farthest);
            }
        }
    }
    if (arc.closed) {
        line.push_back(line.front());
    }
    for (const WaterPoint p : geo::simplified(line, thinning)) {
        arc.line.push_back({f.west_m() + p.x_m * f.cell_m(), f.north_m() - p.y_m * f.cell_m()});
    }
}

/// An arc walked with one of its pieces on the left.
struct Walk {
    std::size_t arc = std::numeric_limits<std::size_t>::max(); ///< No arc by default.
    bool forward = true;
};

/// A finished ring, and the middle of a cell of its piece beside it.
struct TracedRing {
    Ring ring;
    WaterPoint inside;
};

class Assembly {
public:
    Assembly(const std::vector<Arc>& arcs, const Borders& borders, const GridFrame& frame)
        : arcs_(arcs), borders_(borders), frame_(frame), used_(2 * arcs.size(), 0) {
        for (std::size_t i = 0; i < arcs.size(); ++i) {
            if (!arcs[i].closed) {
                leaving_[borders.index(arcs[i].corners.front())][stepOf(arcs[i].firstStep)] = {
                    i, true};
                leaving_[borders.index(arcs[i].corners.back())]
                        [stepOf((arcs[i].lastStep + back) % 4)] = {i, false};
            }
        }
    }

    std::vector<std::vector<TracedRing>> rings(std::size_t count) {
        std::vector<std::vector<TracedRing>> out(count);
        for (std::size_t i = 0; i < arcs_.size(); ++i) {
            for (const bool forward : {true, false}) {
                const std::int32_t piece = pieceOf({i, forward});
                if (piece >= 0 && static_cast<std::size_t>(piece) < count &&
                    !isUsed({i, forward})) {
                    out[static_cast<std::size_t>(piece)].push_back(ringFrom({i, forward}));
                }
            }
        }
        return out;
    }

private:
    static std::size_t stepOf(int direction) { return static_cast<std::size_t>(direction); }
    [[nodiscard]] std::int32_t pieceOf(Walk w) const {
        return w.forward ? arcs_[w.arc].left : arcs_[w.arc].right;
    }
    [[nodiscard]] bool isUsed(Walk w) const { return used_[2 * w.arc + (w.forward ? 0 : 1)] != 0; }

    /// The next arc round the same piece: the sharpest turn to the left, so that cells which touch
    /// only at a corner stay apart.
    [[nodiscard]] Walk next(Walk w) const {
        const Arc& arc = arcs_[w.arc];
        const Corner at = w.forward ? arc.corners.back() : arc.corners.front();
        const int came = w.forward ? arc.lastStep : (arc.firstStep + back) % 4;
        const auto& leaving = leaving_.at(borders_.index(at));
        for (const int turn : {leftTurn, 0, rightTurn}) {
            const Walk candidate = leaving[stepOf((came + turn) % 4)];
            if (candidate.arc < arcs_.size() && pieceOf(candidate) == pieceOf(w)) {
                return candidate;
            }
        }
        return w;
    }

    TracedRing ringFrom(Walk start) {
        TracedRing out;
        const Arc& first = arcs_[start.arc];
        out.inside = cellLeftOf(start.forward ? first.corners.front() : first.corners.back(),
                                start.forward ? first.firstStep : (first.lastStep + back) % 4);
        Walk w = start;
        do {
            used_[2 * w.arc + (w.forward ? 0 : 1)] = 1;
            geo::Path line = arcs_[w.arc].line;
            if (!w.forward) {
                std::reverse(line.begin(), line.end());
            }
            out.ring.insert(out.ring.end(), line.begin(), line.end() - 1);
            w = arcs_[w.arc].closed ? start : next(w);
        } while (!isUsed(w));
        return out;
    }

    [[nodiscard]] WaterPoint cellLeftOf(Corner c, int direction) const {
        constexpr std::array<int, 4> col{0, 0, -1, -1};
        constexpr std::array<int, 4> row{-1, 0, 0, -1};
        return frame_.centre({c.col + col[stepOf(direction)], c.row + row[stepOf(direction)]});
    }

    const std::vector<Arc>& arcs_;
    const Borders& borders_;
    const GridFrame& frame_;
    std::vector<std::uint8_t> used_;
    std::unordered_map<std::size_t, std::array<Walk, 4>> leaving_;
};

bool holds(const Ring& ring, WaterPoint p) {
    bool inside = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        const WaterPoint& a = ring[i];
        const WaterPoint& b = ring[j];
        if ((a.y_m > p.y_m) != (b.y_m > p.y_m) &&
            p.x_m < a.x_m + (p.y_m - a.y_m) / (b.y_m - a.y_m) * (b.x_m - a.x_m)) {
            inside = !inside;
        }
    }
    return inside;
}

/// Outer rings with the holes that lie in them.
std::vector<geo::Piece> nested(std::vector<TracedRing> rings) {
    std::vector<geo::Piece> out;
    std::vector<double> area_m2;
    for (TracedRing& r : rings) {
        if (geo::signedArea_m2(r.ring) > 0.0) {
            area_m2.push_back(geo::signedArea_m2(r.ring));
            out.push_back({std::move(r.ring), {}});
            r.ring.clear();
        }
    }
    for (TracedRing& r : rings) {
        std::size_t best = out.size();
        for (std::size_t k = 0; k < out.size() && !r.ring.empty(); ++k) {
            if (holds(out[k].outer, r.inside) &&
                (best == out.size() || area_m2[k] < area_m2[best])) {
                best = k;
            }
        }
        if (best < out.size()) {
            out[best].islands.push_back(std::move(r.ring));
        }
    }
    return out;
}

} // namespace

std::vector<std::vector<geo::Piece>> polygonsOf(const PieceGrid& pieces, std::size_t count) {
    Borders borders(pieces);
    std::vector<Arc> arcs = borders.arcs();
    for (Arc& arc : arcs) {
        smooth(arc, pieces.frame());
    }
    std::vector<std::vector<geo::Piece>> out;
    out.reserve(count);
    for (std::vector<TracedRing>& rings : Assembly(arcs, borders, pieces.frame()).rings(count)) {
        out.push_back(nested(std::move(rings)));
    }
    return out;
}

} // namespace grid
