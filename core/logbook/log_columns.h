// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace logbook {

/// The columns of a log as a table, in the order in which they are written; weight, length and
/// hours are only read.
enum class LogColumn : std::size_t {
    kind,
    stay,
    start,
    end,
    time,
    lon,
    lat,
    rods,
    bait,
    species,
    weightKg,
    lengthMm,
    baitDepthM,
    windFromDeg,
    windSpeedMS,
    waterTemperatureC,
    note,
    levelM,
    sky,
    baitLon,
    baitLat,
    hooked,
    returned,
    photograph,
    who,
    weight,
    length,
    hours,
};

inline constexpr std::size_t writtenLogColumns = 25;
inline constexpr std::array<std::string_view, 28> logColumnNames{"kind",
                                                                 "stay",
                                                                 "start",
                                                                 "end",
                                                                 "time",
                                                                 "lon",
                                                                 "lat",
                                                                 "rods",
                                                                 "bait",
                                                                 "species",
                                                                 "weight_kg",
                                                                 "length_mm",
                                                                 "bait_depth_m",
                                                                 "wind_from_deg",
                                                                 "wind_speed_m_s",
                                                                 "water_temperature_c",
                                                                 "note",
                                                                 "level_m",
                                                                 "sky",
                                                                 "bait_lon",
                                                                 "bait_lat",
                                                                 "hooked",
                                                                 "returned",
                                                                 "photograph",
                                                                 "who",
                                                                 "weight",
                                                                 "length",
                                                                 "hours"};

[[nodiscard]] constexpr std::string_view nameOf(LogColumn column) {
    return logColumnNames[static_cast<std::size_t>(column)];
}

/// \param name in small letters.
[[nodiscard]] std::optional<LogColumn> logColumnNamed(std::string_view name);

/// A text as a cell that no spreadsheet takes for a formula and runs: an apostrophe stands before
/// what would be one. unguarded() takes it off again, and leaves all other texts as they are.
/// Source of the characters: common practice against CSV injection (no source).
[[nodiscard]] std::string guarded(std::string_view text);
[[nodiscard]] std::string unguarded(std::string_view text);

} // namespace logbook
