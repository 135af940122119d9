// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"

#include <cmath>
#include <cstdint>
#include <unordered_map>
#include <vector>

namespace marks {

/// Places that keep a least distance from each other: asks in constant time whether one more is
/// clear of all taken.
class Apart {
public:
    explicit Apart(double apart_m) : apart_m_(apart_m) {}

    [[nodiscard]] bool isClear(geo::WaterPoint p) const {
        if (!(apart_m_ > 0.0)) {
            return true;
        }
        for (int row = -1; row <= 1; ++row) {
            for (int col = -1; col <= 1; ++col) {
                const auto bin = bins_.find(key(p, col, row));
                if (bin == bins_.end()) {
                    continue;
                }
                for (const geo::WaterPoint taken : bin->second) {
                    if (geo::distance_m(taken, p) < apart_m_ * (1.0 - 1e-9)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
    void take(geo::WaterPoint p) {
        if (apart_m_ > 0.0) {
            bins_[key(p, 0, 0)].push_back(p);
        }
    }

private:
    [[nodiscard]] std::int64_t key(geo::WaterPoint p, int col, int row) const {
        constexpr std::int64_t stride = std::int64_t{1} << 31;
        return (static_cast<std::int64_t>(std::floor(p.y_m / apart_m_)) + row) * stride +
               static_cast<std::int64_t>(std::floor(p.x_m / apart_m_)) + col;
    }
    double apart_m_;
    std::unordered_map<std::int64_t, std::vector<geo::WaterPoint>> bins_;
};

} // namespace marks
