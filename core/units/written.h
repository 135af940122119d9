// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"
#include "core/units/bearing.h"
#include "core/units/length.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"
#include "core/units/weight.h"

#include <initializer_list>
#include <optional>
#include <string_view>

namespace units {

// Amounts as people write them, at the desk and in tables alike: "12ft", "3.6 m", "12' 6\"", "12 lb
// 8 oz", "21-4", "9,6 kg", "1,200 g". UTF-8. Nothing where the text is no such amount, or could be
// read in two ways.

/// What a number without a unit is in.
enum class Bare { metric, imperial };

/// One way of writing a unit: what one of it is in SI, and the unit of a number that follows it
/// without one ("12 lb 8"), 0 where none may. \param isSmall so small that three digits behind a
/// comma are thousands: nobody weighs fish to the milligram.
struct UnitName {
    std::string_view name; ///< Lower case.
    double si = 1.0;
    double nextSi = 0.0;
    bool isSmall = false;
};

/// The sum of "number unit" pairs in SI. A number without a unit is in `bareSi`, or in the unit
/// that goes with the one before it (below one of that). A sign stands before all of it: "-1 ft 6
/// in" is a foot and a half below. A comma is the decimal mark, but before exactly three digits it
/// may part thousands: that is read for small units, and refused for others unless the number
/// begins with a nought.
[[nodiscard]] std::optional<double> sumWritten(std::string_view text,
                                               std::initializer_list<UnitName> names, double bareSi,
                                               bool isBareSmall = false);

[[nodiscard]] std::optional<Length> lengthWritten(std::string_view text, Bare bare);
/// Of a fish: a number without a unit is in centimetres or inches.
[[nodiscard]] std::optional<Length> fishLengthWritten(std::string_view text, Bare bare);
[[nodiscard]] std::optional<Area> areaWritten(std::string_view text, Bare bare);
/// Also "21-4": pounds and ounces, whatever the user counts in.
[[nodiscard]] std::optional<Weight> weightWritten(std::string_view text, Bare bare);
[[nodiscard]] std::optional<Speed> speedWritten(std::string_view text, Bare bare);
/// The speed of sound: a number without a unit is in metres, or feet, a second.
[[nodiscard]] std::optional<Speed> soundSpeedWritten(std::string_view text, Bare bare);
[[nodiscard]] std::optional<Temperature> temperatureWritten(std::string_view text, Bare bare);
/// Degrees true from 0 to 360, with or without the sign, or one of the sixteen points: "230",
/// "230°", "SW", "ssw".
[[nodiscard]] std::optional<Bearing> bearingWritten(std::string_view text);

// Nobody's fish or water: what lies beyond is refused, and the limit named.
inline constexpr Weight heaviestFish = Weight::kilograms(100.0);
inline constexpr Length longestFish = Length::metres(3.0);
inline constexpr Temperature warmestWater = Temperature::celsius(40.0);
/// Salt or moving water aside, nothing that a boat floats on is colder.
inline constexpr Temperature coldestWater = Temperature::celsius(-1.0);

} // namespace units
