// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/depth.h"
#include "core/units/length.h"

#include <compare>

namespace units {

/// Where the water surface stands on the gauge: a point on a vertical scale that counts up. Two
/// levels cannot be added; their difference is a Length. (Adding the levels of two survey days is
/// the mistake most likely to spoil a map.)
class WaterLevel {
public:
    constexpr WaterLevel() = default;
    [[nodiscard]] static constexpr WaterLevel metresOnGauge(double metres) {
        return WaterLevel(metres);
    }
    [[nodiscard]] constexpr double inMetresOnGauge() const { return metres_; }

    friend constexpr auto operator<=>(WaterLevel, WaterLevel) = default;
    friend constexpr Length operator-(WaterLevel a, WaterLevel b) {
        return Length::metres(a.metres_ - b.metres_);
    }
    friend constexpr WaterLevel operator+(WaterLevel a, Length rise) {
        return WaterLevel(a.metres_ + rise.inMetres());
    }
    friend constexpr WaterLevel operator-(WaterLevel a, Length fall) {
        return WaterLevel(a.metres_ - fall.inMetres());
    }

private:
    constexpr explicit WaterLevel(double metres) : metres_(metres) {}
    double metres_ = 0.0;
};

/// Where the bottom lies on the same scale. Water minus bed is a Depth.
class BedLevel {
public:
    constexpr BedLevel() = default;
    [[nodiscard]] static constexpr BedLevel metresOnGauge(double metres) {
        return BedLevel(metres);
    }
    [[nodiscard]] constexpr double inMetresOnGauge() const { return metres_; }

    friend constexpr auto operator<=>(BedLevel, BedLevel) = default;

private:
    constexpr explicit BedLevel(double metres) : metres_(metres) {}
    double metres_ = 0.0;
};

[[nodiscard]] constexpr Depth operator-(WaterLevel water, BedLevel bed) {
    return Depth::metres(water.inMetresOnGauge() - bed.inMetresOnGauge());
}

/// The bed that lies so deep below the water.
[[nodiscard]] constexpr BedLevel operator-(WaterLevel water, Depth depth) {
    return BedLevel::metresOnGauge(water.inMetresOnGauge() - depth.inMetres());
}

} // namespace units
