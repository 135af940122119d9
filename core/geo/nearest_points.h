// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace geo {

/// Finds the nearest of many points: built once in n log n, asked in log n. Immutable; safe to ask
/// from several threads.
class NearestPoints {
public:
    explicit NearestPoints(std::span<const WaterPoint> points);
    ~NearestPoints();
    NearestPoints(NearestPoints&&) noexcept;
    NearestPoints& operator=(NearestPoints&&) noexcept;
    NearestPoints(const NearestPoints&) = delete;
    NearestPoints& operator=(const NearestPoints&) = delete;

    struct Found {
        std::size_t index; ///< Position in the points given.
        double distance_m;
    };
    /// Nothing where there are no points.
    [[nodiscard]] std::optional<Found> nearest(WaterPoint p) const;
    /// At most `count` of them, nearest first; of equal distance the lower index first.
    [[nodiscard]] std::vector<Found> nearest(WaterPoint p, std::size_t count) const;
    /// All within `radius_m`, by index.
    [[nodiscard]] std::vector<Found> within(WaterPoint p, double radius_m) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace geo
