// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/position_index.h"

#include <algorithm>
#include <cmath>

namespace structure {

using grid::Cell;
using grid::Grid;
using grid::GridFrame;

namespace {

/// One row of the ring as seen from its middle: the columns from `inner` exclusive to `outer` on
/// both sides.
struct RingRow {
    int row = 0;
    int outer = -1; ///< Half-width of the outer disc in this row; -1 where it does not reach.
    int inner = -1; ///< Half-width of the hole; -1 where it does not reach.
};

std::vector<RingRow> ringRows(double inner, double outer) {
    const auto halfWidth = [](double radius, int row) {
        const double left = radius * radius - static_cast<double>(row) * row;
        return left < 0.0 ? -1 : static_cast<int>(std::floor(std::sqrt(left)));
    };
    std::vector<RingRow> rows;
    for (int row = -static_cast<int>(outer); row <= static_cast<int>(outer); ++row) {
        // The hole is open: cells at the inner radius itself belong to the ring.
        rows.push_back({row, halfWidth(outer, row), halfWidth(std::nextafter(inner, 0.0), row)});
    }
    return rows;
}

/// Running sums and counts of the depths of each row, one more than there are columns.
class RowSums {
public:
    explicit RowSums(const grid::DepthGrid& depth)
        : cols_(depth.frame().cols()), rows_(depth.frame().rows()),
          sum_m_(static_cast<std::size_t>(cols_ + 1) * static_cast<std::size_t>(rows_), 0.0),
          count_(sum_m_.size(), 0) {
        for (int row = 0; row < rows_; ++row) {
            for (int col = 0; col < cols_; ++col) {
                const std::size_t from = at(col, row);
                const std::size_t cell = depth.frame().index({col, row});
                const bool has = depth.has(cell);
                sum_m_[from + 1] =
                    sum_m_[from] + (has ? static_cast<double>(depth.raw_m()[cell]) : 0.0);
                count_[from + 1] = count_[from] + (has ? 1 : 0);
            }
        }
    }

    /// Adds the columns within `half` of `c` in the row `row` rows below it, times `sign`.
    void add(Cell c, int row, int half, int sign, double& sum_m, int& count) const {
        const int at_row = c.row + row;
        if (half < 0 || at_row < 0 || at_row >= rows_) {
            return;
        }
        const std::size_t low = at(std::clamp(c.col - half, 0, cols_), at_row);
        const std::size_t high = at(std::clamp(c.col + half + 1, 0, cols_), at_row);
        sum_m += sign * (sum_m_[high] - sum_m_[low]);
        count += sign * (count_[high] - count_[low]);
    }

private:
    [[nodiscard]] std::size_t at(int col, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(cols_ + 1) +
               static_cast<std::size_t>(col);
    }
    int cols_;
    int rows_;
    std::vector<double> sum_m_;
    std::vector<int> count_;
};

double median(std::vector<float> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return static_cast<double>(*middle);
}

double robustSpread_m(const Grid<float>& rise_m) {
    constexpr double sigmaPerMad = 1.4826; // of a normal distribution
    constexpr double least_m = 0.01;
    std::vector<float> known;
    std::copy_if(rise_m.values().begin(), rise_m.values().end(), std::back_inserter(known),
                 [](float v) { return !std::isnan(v); });
    if (known.empty()) {
        return least_m;
    }
    const auto middle = static_cast<float>(median(known));
    for (float& v : known) {
        v = std::fabs(v - middle);
    }
    return std::max(sigmaPerMad * median(std::move(known)), least_m);
}

} // namespace

PositionIndex PositionIndex::of(const grid::DepthGrid& depth, units::Length inner,
                                units::Length outer, int every) {
    constexpr double leastShare = 0.25; // of the ring that must hold depths
    const GridFrame& f = depth.frame();
    PositionIndex out;
    out.rise_m_ = Grid<float>(f, NAN);
    const std::vector<RingRow> ring = ringRows(std::max(inner.inMetres() / f.cell_m(), 0.5),
                                               std::max(outer.inMetres() / f.cell_m(), 1.0));
    int whole = 0;
    for (const RingRow& r : ring) {
        whole += (r.outer >= 0 ? 2 * r.outer + 1 : 0) - (r.inner >= 0 ? 2 * r.inner + 1 : 0);
    }
    const RowSums sums(depth);
    const auto look = [&](Cell c) {
        double sum_m = 0.0;
        int count = 0;
        for (const RingRow& r : ring) {
            sums.add(c, r.row, r.outer, 1, sum_m, count);
            sums.add(c, r.row, r.inner, -1, sum_m, count);
        }
        if (count > 0 && count >= leastShare * whole) {
            out.rise_m_[c] = static_cast<float>(sum_m / count) - depth.raw_m()[f.index(c)];
        }
    };
    for (int row = 0; row < f.rows(); row += every) {
        for (int col = 0; col < f.cols(); col += every) {
            if (depth.has(f.index({col, row}))) {
                look({col, row});
            }
        }
    }
    out.spread_m_ = robustSpread_m(out.rise_m_);
    return out;
}

std::optional<units::Length> PositionIndex::riseAt(Cell c) const {
    if (!frame().holds(c) || std::isnan(rise_m_[c])) {
        return std::nullopt;
    }
    return units::Length::metres(static_cast<double>(rise_m_[c]));
}

} // namespace structure
