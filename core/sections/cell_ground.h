// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sections/water_graph.h"

namespace sections {

/// The cells of the water as ground whose borders can settle (BorderSettling).
class CellGround {
public:
    /// \param partOfCell negative where not fishable; changed as cells move. All outlive this.
    CellGround(const grid::DepthGrid& depth, const grid::Mask& mask, grid::PieceGrid& partOfCell)
        : depth_(depth), mask_(mask), part_(partOfCell),
          side_m_(sideBorder_m(partOfCell.frame().cell_m())),
          corner_m_(cornerBorder_m(partOfCell.frame().cell_m())) {}

    [[nodiscard]] std::size_t size() const { return part_.size(); }
    [[nodiscard]] std::int32_t partOf(std::size_t v) const { return part_[v]; }
    void setPart(std::size_t v, std::int32_t part) { part_[v] = part; }
    [[nodiscard]] PartSums sumsOf(std::size_t v) const { return sumsOfCell(depth_, mask_, v); }
    template <class F>
    void each(std::size_t v, F f) const {
        const grid::Cell c = part_.frame().cellAt(v);
        for (int dr = -1; dr <= 1; ++dr) {
            for (int dc = -1; dc <= 1; ++dc) {
                if (dr != 0 || dc != 0) {
                    f(fishableAt(c.col + dc, c.row + dr), dr == 0 || dc == 0 ? side_m_ : corner_m_);
                }
            }
        }
    }
    template <class F>
    void eachSide(std::size_t v, F f) const {
        const grid::Cell c = part_.frame().cellAt(v);
        for (const std::int64_t to : {fishableAt(c.col, c.row - 1), fishableAt(c.col - 1, c.row),
                                      fishableAt(c.col + 1, c.row), fishableAt(c.col, c.row + 1)}) {
            if (to >= 0) {
                f(static_cast<std::size_t>(to));
            }
        }
    }
    /// True where the part's cells among the eight round v hang together along sides: then taking v
    /// away parts nothing.
    [[nodiscard]] bool hangsTogetherWithout(std::size_t v) const;

private:
    /// Its index; -1 outside the fishable water.
    [[nodiscard]] std::int64_t fishableAt(int col, int row) const {
        const grid::Cell c{col, row};
        if (!part_.frame().holds(c)) {
            return -1;
        }
        const std::size_t i = part_.frame().index(c);
        return part_[i] < 0 ? -1 : static_cast<std::int64_t>(i);
    }

    const grid::DepthGrid& depth_;
    const grid::Mask& mask_;
    grid::PieceGrid& part_;
    double side_m_;
    double corner_m_;
};

} // namespace sections
