// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid_frame.h"

#include <vector>

namespace grid {

/// One value for each cell of a frame. What the value means is in the name of whoever holds it
/// (`slope_percent`).
template <class T>
class Grid {
public:
    Grid() = default;
    explicit Grid(const GridFrame& frame, T fill = T{})
        : frame_(frame), values_(frame.size(), fill) {}

    [[nodiscard]] const GridFrame& frame() const { return frame_; }
    [[nodiscard]] T& operator[](Cell c) { return values_[frame_.index(c)]; }
    [[nodiscard]] const T& operator[](Cell c) const { return values_[frame_.index(c)]; }
    [[nodiscard]] T& operator[](std::size_t index) { return values_[index]; }
    [[nodiscard]] const T& operator[](std::size_t index) const { return values_[index]; }
    [[nodiscard]] std::vector<T>& values() { return values_; }
    [[nodiscard]] const std::vector<T>& values() const { return values_; }
    [[nodiscard]] std::size_t size() const { return values_.size(); }
    friend bool operator==(const Grid&, const Grid&) = default;

private:
    GridFrame frame_;
    std::vector<T> values_;
};

} // namespace grid
