// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace units {

/// A temperature of water or air: a point on a scale, so that two of them cannot be added.
class Temperature {
public:
    constexpr Temperature() = default;
    [[nodiscard]] static constexpr Temperature celsius(double degrees) {
        return Temperature(degrees);
    }
    [[nodiscard]] static constexpr Temperature fahrenheit(double degrees) {
        return Temperature((degrees - 32.0) / 1.8);
    }
    [[nodiscard]] constexpr double inCelsius() const { return celsius_; }
    [[nodiscard]] constexpr double inFahrenheit() const { return celsius_ * 1.8 + 32.0; }
    friend constexpr auto operator<=>(Temperature, Temperature) = default;

private:
    constexpr explicit Temperature(double celsius) : celsius_(celsius) {}
    double celsius_ = 0.0;
};

} // namespace units
