// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/box_mean.h"

#include <algorithm>
#include <cmath>

namespace grid {

namespace {

/// Sum and count of the numbers met so far.
struct Tally {
    double sum = 0.0;
    double count = 0.0;
};

/// Sums and counts along the rows over 2 r + 1 cells.
std::vector<Tally> alongRows(const Grid<float>& values, int r) {
    const GridFrame& f = values.frame();
    std::vector<Tally> out(values.size());
    std::vector<Tally> upTo(static_cast<std::size_t>(f.cols()) + 1);
    for (int row = 0; row < f.rows(); ++row) {
        const std::size_t start = f.index({0, row});
        for (std::size_t c = 0; c + 1 < upTo.size(); ++c) {
            const float v = values[start + c];
            const bool is = !std::isnan(v);
            upTo[c + 1] = {upTo[c].sum + (is ? static_cast<double>(v) : 0.0),
                           upTo[c].count + (is ? 1.0 : 0.0)};
        }
        for (int col = 0; col < f.cols(); ++col) {
            const Tally& high = upTo[static_cast<std::size_t>(std::min(col + r + 1, f.cols()))];
            const Tally& low = upTo[static_cast<std::size_t>(std::max(col - r, 0))];
            out[start + static_cast<std::size_t>(col)] = {high.sum - low.sum,
                                                          high.count - low.count};
        }
    }
    return out;
}

} // namespace

Grid<float> boxMean(const Grid<float>& values, int radiusCells) {
    if (radiusCells <= 0) {
        return values;
    }
    const GridFrame& f = values.frame();
    const std::vector<Tally> rows = alongRows(values, radiusCells);
    std::vector<Tally> sum(static_cast<std::size_t>(f.cols()));
    Grid<float> out(f, NAN);
    const auto addRow = [&](int row, double sign) {
        if (row < 0 || row >= f.rows()) {
            return;
        }
        const std::size_t start = f.index({0, row});
        for (std::size_t c = 0; c < sum.size(); ++c) {
            sum[c].sum += sign * rows[start + c].sum;
            sum[c].count += sign * rows[start + c].count;
        }
    };
    for (int row = 0; row < radiusCells; ++row) {
        addRow(row, 1.0);
    }
    for (int row = 0; row < f.rows(); ++row) {
        addRow(row + radiusCells, 1.0);
        addRow(row - radiusCells - 1, -1.0);
        const std::size_t start = f.index({0, row});
        for (std::size_t c = 0; c < sum.size(); ++c) {
            if (!std::isnan(values[start + c])) {
                out[start + c] = static_cast<float>(sum[c].sum / sum[c].count);
            }
        }
    }
    return out;
}

} // namespace grid
