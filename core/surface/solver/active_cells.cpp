// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/active_cells.h"

#include <cmath>

namespace surface::solver {

ActiveCells ActiveCells::of(const grid::Mask& mask) {
    ActiveCells cells;
    const grid::GridFrame& frame = mask.frame();
    cells.cols_ = frame.cols() + 2 * padding;
    cells.rows_ = frame.rows() + 2 * padding;
    cells.cell_m_ = frame.cell_m();
    cells.unknown_.assign(
        static_cast<std::size_t>(cells.cols_) * static_cast<std::size_t>(cells.rows_), -1);
    for (int row = 0; row < frame.rows(); ++row) {
        for (int col = 0; col < frame.cols(); ++col) {
            if (mask.isActive(grid::Cell{col, row})) {
                cells.unknown_[cells.place(col + padding, row + padding)] = 0;
            }
        }
    }
    cells.countRuns();
    return cells;
}

ActiveCells ActiveCells::coarsened() const {
    ActiveCells coarse;
    coarse.cols_ = (cols_ - 2 * padding + 1) / 2 + 2 * padding;
    coarse.rows_ = (rows_ - 2 * padding + 1) / 2 + 2 * padding;
    coarse.cell_m_ = 2.0 * cell_m_;
    coarse.unknown_.assign(
        static_cast<std::size_t>(coarse.cols_) * static_cast<std::size_t>(coarse.rows_), -1);
    for (const Run& run : runs_) {
        for (int col = run.begin; col < run.end; ++col) {
            coarse.unknown_[coarse.place((col + 2) / 2, (run.row + 2) / 2)] = 0;
        }
    }
    coarse.countRuns();
    return coarse;
}

void ActiveCells::countRuns() {
    std::int32_t next = 0;
    rowRuns_.clear();
    for (int row = 0; row < rows_; ++row) {
        rowRuns_.push_back(runs_.size());
        for (int col = 0; col < cols_; ++col) {
            std::int32_t& unknown = unknown_[place(col, row)];
            if (unknown < 0) {
                continue;
            }
            if (runs_.size() == rowRuns_.back() || runs_.back().end != col) {
                runs_.push_back({row, col, col, static_cast<std::size_t>(next)});
            }
            runs_.back().end = col + 1;
            unknown = next++;
        }
    }
    rowRuns_.push_back(runs_.size());
    unknowns_ = static_cast<std::size_t>(next);
}

Field ActiveCells::fieldOf(const grid::Grid<float>& values) const {
    Field field(places(), 0.0);
    for (const Run& run : runs_) {
        for (int col = run.begin; col < run.end; ++col) {
            const float value = values[grid::Cell{col - padding, run.row - padding}];
            field[place(col, run.row)] = std::isnan(value) ? 0.0 : static_cast<double>(value);
        }
    }
    return field;
}

grid::Grid<float> ActiveCells::gridOf(const Field& field, const grid::GridFrame& frame,
                                      float elsewhere) const {
    grid::Grid<float> values(frame, elsewhere);
    for (const Run& run : runs_) {
        for (int col = run.begin; col < run.end; ++col) {
            values[grid::Cell{col - padding, run.row - padding}] =
                static_cast<float>(field[place(col, run.row)]);
        }
    }
    return values;
}

} // namespace surface::solver
