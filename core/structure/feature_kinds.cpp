// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/feature_kinds.h"

#include "core/base/two_at_once.h"
#include "core/grid/connected_pieces.h"
#include "core/grid/piece_middles.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace structure {

using grid::Cell;
using grid::Grid;
using grid::GridFrame;

namespace {

constexpr double hold = 0.5; // a feature reaches on while it stands out by this share

std::array<Cell, 4> sidesOf(Cell c) {
    return {Cell{c.col, c.row - 1}, Cell{c.col - 1, c.row}, Cell{c.col + 1, c.row},
            Cell{c.col, c.row + 1}};
}

/// The deepest of the cells just outside a piece.
float deepestRound(const std::vector<std::size_t>& cells, std::int32_t piece,
                   const grid::PieceGrid& pieces, const grid::DepthGrid& depth) {
    constexpr int reach = 2; // cells
    const GridFrame& f = depth.frame();
    float deepest_m = -INFINITY;
    for (const std::size_t i : cells) {
        const Cell c = f.cellAt(i);
        for (int dr = -reach; dr <= reach; ++dr) {
            for (int dc = -reach; dc <= reach; ++dc) {
                const Cell n{c.col + dc, c.row + dr};
                if (depth.has(n) && pieces[n] != piece) {
                    deepest_m = std::max(deepest_m, depth.raw_m()[f.index(n)]);
                }
            }
        }
    }
    return deepest_m;
}

/// Not 0 in every connected piece of cells from `downTo` up that somewhere `reaches`.
template <class Reaches>
Grid<std::uint8_t> piecesReaching(const Grid<float>& values, double downTo, Reaches reaches) {
    Grid<std::int32_t> held(values.frame(), -1);
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (static_cast<double>(values[i]) >= downTo) {
            held[i] = 0;
        }
    }
    Grid<std::uint8_t> out(values.frame(), 0);
    for (const std::vector<std::size_t>& cells : grid::connectedPieces(held).cells) {
        const bool isWanted = std::any_of(cells.begin(), cells.end(), reaches);
        for (const std::size_t i : cells) {
            out[i] = isWanted ? 1 : 0;
        }
    }
    return out;
}

/// The piece by itself on a frame just large enough, with a cell to spare all round.
grid::PieceGrid cutOut(const std::vector<std::size_t>& cells, const GridFrame& f) {
    Cell first{f.cols(), f.rows()};
    Cell last{0, 0};
    for (const std::size_t i : cells) {
        const Cell c = f.cellAt(i);
        first = {std::min(first.col, c.col), std::min(first.row, c.row)};
        last = {std::max(last.col, c.col), std::max(last.row, c.row)};
    }
    grid::PieceGrid out(
        GridFrame(0.0, 0.0, f.cell_m(), last.col - first.col + 3, last.row - first.row + 3), -1);
    for (const std::size_t i : cells) {
        const Cell c = f.cellAt(i);
        out[Cell{c.col - first.col + 1, c.row - first.row + 1}] = 0;
    }
    return out;
}

/// True where the piece is about as wide as it is long: it fills much of the circle that fits into
/// its widest place, also where it winds.
bool isCompact(const std::vector<std::size_t>& cells, const GridFrame& f) {
    constexpr double mostCircles = 4.0; // 1 for a disc, 4 for a strip three times as long as wide
    const Grid<float> toBorder_m = grid::distanceToBorder_m(cutOut(cells, f));
    const auto radius_m = static_cast<double>(
        *std::max_element(toBorder_m.values().begin(), toBorder_m.values().end()));
    return static_cast<double>(cells.size()) * f.cellArea_m2() <
           mostCircles * std::numbers::pi * radius_m * radius_m;
}

class FeatureMarking {
public:
    FeatureMarking(KindGrid& kinds, const grid::DepthGrid& depth, const GroundForm& form,
                   const FeatureLimits& limits)
        : kinds_(kinds), depth_(depth), form_(form), limits_(limits),
          high_m_(limits.high.inMetres()), met_(kinds.frame(), 0) {}

    void mark() {
        Grid<std::uint8_t> isHigh;
        Grid<std::uint8_t> isLow;
        base::twoAtOnce([&] { isHigh = standingOut(form_.ridge_m, form_.ridge_m); },
                        [&] { isLow = standingOut(form_.valley_m, form_.trough_m); });
        Grid<std::int32_t> high(kinds_.frame(), -1);
        Grid<std::int32_t> low(kinds_.frame(), -1);
        for (std::size_t i = 0; i < kinds_.size(); ++i) {
            if (isHigh[i] != 0 && isLow[i] != 0) {
                kinds_[i] = codeOf(ZoneKind::saddle);
            } else if (isHigh[i] != 0) {
                high[i] = 0;
            } else if (isLow[i] != 0) {
                low[i] = 0;
            }
        }
        markHigh(high);
        markHoles(low);
        markTroughs(low);
    }

private:
    /// Pieces that stand out by the hold, and somewhere (in `peak_m`) by what counts there.
    [[nodiscard]] Grid<std::uint8_t> standingOut(const Grid<float>& values_m,
                                                 const Grid<float>& peak_m) const {
        return piecesReaching(values_m, hold * high_m_,
                              [&](std::size_t i) { return counts(peak_m, i); });
    }

    [[nodiscard]] bool counts(const Grid<float>& standsOut_m, std::size_t i) const {
        constexpr float ofDepth = 0.1F;
        const float by_m = standsOut_m[i];
        // nothing is known against it where the trust is not (NaN)
        const bool isDoubtful =
            limits_.trustHalfWidth_m != nullptr &&
            by_m < std::numbers::sqrt2_v<float> * (*limits_.trustHalfWidth_m)[i];
        return static_cast<double>(by_m) >= high_m_ && by_m >= ofDepth * depth_.raw_m()[i] &&
               !isDoubtful;
    }

    void put(const std::vector<std::size_t>& cells, ZoneKind kind) {
        for (const std::size_t i : cells) {
            kinds_[i] = codeOf(kind);
        }
    }

    void markHigh(const Grid<std::int32_t>& high) {
        for (const std::vector<std::size_t>& cells : grid::connectedPieces(high).cells) {
            if (standsAlone(cells)) {
                put(cells, ZoneKind::hump);
            } else if (cells.size() >= limits_.leastLine) {
                put(cells, ZoneKind::spur);
            }
        }
    }

    /// True where nothing as shallow can be reached from the summit without going down by `high`
    /// first: a rise by itself, not the end of higher ground.
    [[nodiscard]] bool standsAlone(const std::vector<std::size_t>& cells) {
        const std::size_t summit =
            *std::min_element(cells.begin(), cells.end(), [&](std::size_t a, std::size_t b) {
                return depth_.raw_m()[a] < depth_.raw_m()[b];
            });
        const float summit_m = depth_.raw_m()[summit];
        const float foot_m = summit_m + static_cast<float>(high_m_);
        std::vector<std::size_t> reached{summit};
        met_[summit] = 1;
        bool isAlone = true;
        for (std::size_t k = 0; k < reached.size() && isAlone; ++k) {
            for (const Cell n : sidesOf(depth_.frame().cellAt(reached[k]))) {
                if (!depth_.has(n)) {
                    isAlone = false;
                    break;
                }
                const std::size_t i = depth_.frame().index(n);
                if (met_[i] == 0 && depth_.raw_m()[i] < foot_m) {
                    isAlone = isAlone && depth_.raw_m()[i] >= summit_m;
                    met_[i] = 1;
                    reached.push_back(i);
                }
            }
        }
        for (const std::size_t i : reached) {
            met_[i] = 0;
        }
        return isAlone;
    }

    /// Marks low pieces that are holes and takes them out of `low`.
    void markHoles(Grid<std::int32_t>& low) {
        const grid::ConnectedPieces pieces = grid::connectedPieces(low);
        for (std::size_t p = 0; p < pieces.cells.size(); ++p) {
            const std::vector<std::size_t>& cells = pieces.cells[p];
            const bool isHole = isClosed(cells, static_cast<std::int32_t>(p), pieces.pieceOfCell) &&
                                isCompact(cells, depth_.frame());
            if (isHole) {
                put(cells, ZoneKind::hole);
            }
            for (const std::size_t i : cells) {
                const bool stays =
                    !isHole && static_cast<double>(form_.trough_m[i]) >= hold * high_m_;
                low[i] = stays ? 0 : -1;
            }
        }
    }

    [[nodiscard]] bool isClosed(const std::vector<std::size_t>& cells, std::int32_t piece,
                                const grid::PieceGrid& pieces) const {
        float bottom_m = -INFINITY;
        for (const std::size_t i : cells) {
            bottom_m = std::max(bottom_m, depth_.raw_m()[i]);
        }
        return static_cast<double>(bottom_m - deepestRound(cells, piece, pieces, depth_)) >
               hold * high_m_;
    }

    /// Marks what is left of the low ground where it is lower than the floor of a basin is.
    void markTroughs(const Grid<std::int32_t>& low) {
        const grid::ConnectedPieces pieces = grid::connectedPieces(low);
        for (std::size_t p = 0; p < pieces.cells.size(); ++p) {
            const std::vector<std::size_t>& cells = pieces.cells[p];
            if (std::none_of(cells.begin(), cells.end(),
                             [&](std::size_t i) { return counts(form_.trough_m, i); })) {
                continue;
            }
            if (isClosed(cells, static_cast<std::int32_t>(p), pieces.pieceOfCell) &&
                isCompact(cells, depth_.frame())) {
                put(cells, ZoneKind::hole);
            } else if (cells.size() >= limits_.leastLine) {
                put(cells, ZoneKind::trough);
            }
        }
    }

    KindGrid& kinds_;
    const grid::DepthGrid& depth_;
    const GroundForm& form_;
    const FeatureLimits& limits_;
    double high_m_;
    Grid<std::uint8_t> met_; ///< All 0 between calls.
};

} // namespace

Grid<std::uint8_t> withHysteresis(const Grid<float>& values, double from, double downTo) {
    return piecesReaching(values, downTo,
                          [&](std::size_t i) { return static_cast<double>(values[i]) >= from; });
}

void markFeatures(KindGrid& kinds, const grid::DepthGrid& depth, const GroundForm& form,
                  const FeatureLimits& limits) {
    FeatureMarking(kinds, depth, form, limits).mark();
}

} // namespace structure
