// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/mask.h"

#include <array>
#include <cstdint>
#include <vector>

namespace surface::solver {

/// A value for each place of the padded rectangle of an ActiveCells; 0 where no cell is active.
using Field = std::vector<double>;

/// The active cells of a water for the solver: a rectangle of places padded by two on each side, so
/// that a 5 x 5 stencil never leaves it, and the runs of active cells in its rows. Unknowns are
/// counted along the runs.
class ActiveCells {
public:
    /// Neighbouring active cells of one row.
    struct Run {
        int row = 0;
        int begin = 0; ///< First column.
        int end = 0;   ///< One past the last column.
        std::size_t firstUnknown = 0;
    };
    static constexpr int padding = 2;

    [[nodiscard]] static ActiveCells of(const grid::Mask& mask);
    /// Two by two cells become one, active if one of the four is.
    [[nodiscard]] ActiveCells coarsened() const;

    [[nodiscard]] int cols() const { return cols_; }
    [[nodiscard]] int rows() const { return rows_; }
    [[nodiscard]] double cell_m() const { return cell_m_; }
    /// Places in the rectangle.
    [[nodiscard]] std::size_t places() const { return unknown_.size(); }
    /// Active cells.
    [[nodiscard]] std::size_t unknowns() const { return unknowns_; }
    [[nodiscard]] std::size_t place(int col, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(cols_) +
               static_cast<std::size_t>(col);
    }
    [[nodiscard]] bool isActive(std::size_t place) const { return unknown_[place] >= 0; }
    /// Number of the unknown at this place; negative where the cell is not active.
    [[nodiscard]] std::int32_t unknownAt(std::size_t place) const { return unknown_[place]; }
    [[nodiscard]] const std::vector<Run>& runs() const { return runs_; }
    /// The runs of one row: positions from runsOfRow(row) to runsOfRow(row + 1).
    [[nodiscard]] std::size_t runsOfRow(int row) const {
        return rowRuns_[static_cast<std::size_t>(row)];
    }

    /// Calls `act(place, unknown)` for every active cell, in order.
    template <class Act>
    void forEach(Act act) const {
        for (const Run& run : runs_) {
            std::size_t unknown = run.firstUnknown;
            for (std::size_t p = place(run.begin, run.row); p < place(run.end, run.row); ++p) {
                act(p, unknown++);
            }
        }
    }

    /// A field from the values of a grid on the mask's own frame; NaN becomes 0.
    [[nodiscard]] Field fieldOf(const grid::Grid<float>& values) const;
    /// The value of each active cell on the mask's own frame, `elsewhere` in the others.
    [[nodiscard]] grid::Grid<float> gridOf(const Field& field, const grid::GridFrame& frame,
                                           float elsewhere) const;

private:
    void countRuns();

    int cols_ = 0;
    int rows_ = 0;
    double cell_m_ = 1.0;
    std::size_t unknowns_ = 0;
    std::vector<std::int32_t> unknown_;
    std::vector<Run> runs_;
    std::vector<std::size_t> rowRuns_;
};

} // namespace surface::solver
