// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/unit_system.h"
#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"
#include "core/units/weight.h"

#include <QString>

#include <optional>
#include <vector>

namespace wording {

// What the user typed to amounts: "12ft", "3.6 m", "12' 6\"", "12 lb 8 oz", "5,2 kg" all work; a
// number without a unit is in the user's own. Nothing where the text is no such amount.

[[nodiscard]] std::optional<units::Depth> depthTyped(const QString& text,
                                                     preferences::UnitSystem units);
/// Several depths with commas or semicolons between them, or blanks where there are neither:
/// "2, 4, 6", "2,5; 4; 6", "2 4 6".
[[nodiscard]] std::optional<std::vector<units::Depth>> depthsTyped(const QString& text,
                                                                   preferences::UnitSystem units);
[[nodiscard]] std::optional<units::Length> lengthTyped(const QString& text,
                                                       preferences::UnitSystem units);
[[nodiscard]] std::optional<units::Area> areaTyped(const QString& text,
                                                   preferences::UnitSystem units);
[[nodiscard]] std::optional<units::Weight> weightTyped(const QString& text,
                                                       preferences::UnitSystem units);
[[nodiscard]] std::optional<units::Speed> speedTyped(const QString& text,
                                                     preferences::UnitSystem units);
/// The speed of sound in water: a number without a unit is in metres, or feet, a second.
[[nodiscard]] std::optional<units::Speed> soundSpeedTyped(const QString& text,
                                                          preferences::UnitSystem units);
/// "14 %", "14": the number of percent.
[[nodiscard]] std::optional<double> percentTyped(const QString& text);
[[nodiscard]] std::optional<units::Temperature> temperatureTyped(const QString& text,
                                                                 preferences::UnitSystem units);

} // namespace wording
