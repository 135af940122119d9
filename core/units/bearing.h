// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <numbers>

namespace units {

/// A direction: degrees true, clockwise from north, 0 <= b < 360.
class Bearing {
public:
    constexpr Bearing() = default;
    /// Any finite number of degrees; it is turned into the range.
    [[nodiscard]] static Bearing degrees(double degrees) {
        double turned = std::fmod(degrees, 360.0);
        if (turned < 0.0) {
            turned += 360.0;
        }
        return Bearing(turned >= 360.0 ? 0.0 : turned);
    }
    [[nodiscard]] static Bearing radians(double radians) {
        return degrees(radians * 180.0 / std::numbers::pi);
    }
    /// The direction of a step of `east` and `north`, in any one unit.
    [[nodiscard]] static Bearing ofStep(double east, double north) {
        return radians(std::atan2(east, north));
    }

    [[nodiscard]] constexpr double inDegrees() const { return degrees_; }
    [[nodiscard]] constexpr double inRadians() const { return degrees_ * std::numbers::pi / 180.0; }
    [[nodiscard]] Bearing opposite() const { return degrees(degrees_ + 180.0); }
    [[nodiscard]] Bearing turnedBy(double clockwise_deg) const {
        return degrees(degrees_ + clockwise_deg);
    }
    /// East and north parts of a unit step in this direction.
    [[nodiscard]] double east() const { return std::sin(inRadians()); }
    [[nodiscard]] double north() const { return std::cos(inRadians()); }
    /// The smaller angle between two directions, 0 to 180 degrees.
    [[nodiscard]] double angleTo_deg(Bearing other) const {
        const double apart = std::fabs(degrees_ - other.degrees_);
        return apart > 180.0 ? 360.0 - apart : apart;
    }
    friend constexpr bool operator==(Bearing, Bearing) = default;

private:
    constexpr explicit Bearing(double degrees) : degrees_(degrees) {}
    double degrees_ = 0.0;
};

} // namespace units
