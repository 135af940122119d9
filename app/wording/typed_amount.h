// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/unit_system.h"
#include "core/units/area.h"
#include "core/units/bearing.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/moment.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"
#include "core/units/weight.h"

#include <QString>

#include <optional>
#include <vector>

namespace wording {

// What the user typed to amounts, as units::...Written() reads them; a number without a unit is in
// the user's own. Nothing where the text is no such amount.

[[nodiscard]] std::optional<units::Depth> depthTyped(const QString& text,
                                                     preferences::UnitSystem system);
/// Several depths with commas or semicolons between them, or blanks where there are neither:
/// "2, 4, 6", "2,5; 4; 6", "2 4 6". In a language with decimal commas one parts depths only where a
/// blank follows.
[[nodiscard]] std::optional<std::vector<units::Depth>> depthsTyped(const QString& text,
                                                                   preferences::UnitSystem system);
/// What stands between depths where the desk shows several, so that they can be typed back.
[[nodiscard]] QString depthsApart();
[[nodiscard]] std::optional<units::Length> lengthTyped(const QString& text,
                                                       preferences::UnitSystem system);
[[nodiscard]] std::optional<units::Area> areaTyped(const QString& text,
                                                   preferences::UnitSystem system);
[[nodiscard]] std::optional<units::Weight> weightTyped(const QString& text,
                                                       preferences::UnitSystem system);
/// Of a fish, more than nothing and at most units::heaviestFish.
[[nodiscard]] std::optional<units::Weight> fishWeightTyped(const QString& text,
                                                           preferences::UnitSystem system);
/// Of a fish, a bare number in centimetres or inches, more than nothing and at most
/// units::longestFish.
[[nodiscard]] std::optional<units::Length> fishLengthTyped(const QString& text,
                                                           preferences::UnitSystem system);
/// Also by Beaufort's number, "F4": the middle of that force.
[[nodiscard]] std::optional<units::Speed> speedTyped(const QString& text,
                                                     preferences::UnitSystem system);
/// The speed of sound in water: a number without a unit is in metres, or feet, a second.
[[nodiscard]] std::optional<units::Speed> soundSpeedTyped(const QString& text,
                                                          preferences::UnitSystem system);
/// "14 %", "14": the number of percent.
[[nodiscard]] std::optional<double> percentTyped(const QString& text);
[[nodiscard]] std::optional<units::Temperature> temperatureTyped(const QString& text,
                                                                 preferences::UnitSystem system);
/// Of a water: from units::coldestWater to units::warmestWater.
[[nodiscard]] std::optional<units::Temperature>
waterTemperatureTyped(const QString& text, preferences::UnitSystem system);
/// "2026-08-20", "20.8.2026", "20/8/2026", "20 Aug 2026".
[[nodiscard]] std::optional<units::Day> dayTyped(const QString& text);
/// "230", "230°", "SW".
[[nodiscard]] std::optional<units::Bearing> bearingTyped(const QString& text);

} // namespace wording
