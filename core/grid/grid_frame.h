// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/water_point.h"

#include <cstddef>
#include <cstdint>

namespace grid {

/// A cell by column (from the west) and row (from the north).
struct Cell {
    int col = 0;
    int row = 0;
    friend bool operator==(Cell, Cell) = default;
};

/// Where the cells of a grid lie in the water's frame: square cells, row 0 in the north, as rasters
/// are kept.
class GridFrame {
public:
    GridFrame() = default;
    /// \param west_m,north_m the outer corner of cell (0, 0).
    GridFrame(double west_m, double north_m, double cell_m, int cols, int rows)
        : west_m_(west_m), north_m_(north_m), cell_m_(cell_m), cols_(cols), rows_(rows) {}

    /// The frame of cells of `cell` that holds `box` with `marginCells` to spare on each side; its
    /// corner lies on a whole multiple of the cell, so that the same water always gets the same
    /// cells. \return wrongUse for a cell that is not positive, or more than `mostCells` cells.
    [[nodiscard]] static base::Result<GridFrame> covering(const geo::Box& box, units::Length cell,
                                                          int marginCells = 2,
                                                          std::int64_t mostCells = 40'000'000);

    [[nodiscard]] double west_m() const { return west_m_; }
    [[nodiscard]] double north_m() const { return north_m_; }
    [[nodiscard]] double cell_m() const { return cell_m_; }
    [[nodiscard]] int cols() const { return cols_; }
    [[nodiscard]] int rows() const { return rows_; }
    [[nodiscard]] std::size_t size() const {
        return static_cast<std::size_t>(cols_) * static_cast<std::size_t>(rows_);
    }
    [[nodiscard]] double cellArea_m2() const { return cell_m_ * cell_m_; }

    [[nodiscard]] bool holds(Cell c) const {
        return c.col >= 0 && c.row >= 0 && c.col < cols_ && c.row < rows_;
    }
    [[nodiscard]] std::size_t index(Cell c) const {
        return static_cast<std::size_t>(c.row) * static_cast<std::size_t>(cols_) +
               static_cast<std::size_t>(c.col);
    }
    [[nodiscard]] Cell cellAt(std::size_t index) const {
        return {static_cast<int>(index % static_cast<std::size_t>(cols_)),
                static_cast<int>(index / static_cast<std::size_t>(cols_))};
    }
    [[nodiscard]] geo::WaterPoint centre(Cell c) const {
        return {west_m_ + (c.col + 0.5) * cell_m_, north_m_ - (c.row + 0.5) * cell_m_};
    }
    /// The cell that p lies in; it may be outside the frame (ask holds()).
    [[nodiscard]] Cell cellOf(geo::WaterPoint p) const;
    [[nodiscard]] geo::Box box() const {
        return {west_m_, north_m_ - rows_ * cell_m_, west_m_ + cols_ * cell_m_, north_m_};
    }
    friend bool operator==(const GridFrame&, const GridFrame&) = default;

private:
    double west_m_ = 0.0;
    double north_m_ = 0.0;
    double cell_m_ = 1.0;
    int cols_ = 0;
    int rows_ = 0;
};

} // namespace grid
