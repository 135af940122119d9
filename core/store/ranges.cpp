// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/ranges.h"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>

namespace store {

namespace {

constexpr Range anything{-1e9, 1e9};
constexpr Range depth_m{-100.0, 12'000.0}; // No water on Earth is deeper than 11 km.
constexpr Range level_m{-12'000.0, 12'000.0};
constexpr Range angle_deg{-720.0, 720.0};
constexpr Range wind_m_s{0.0, 200.0};
constexpr Range rope_m{0.0, 10'000.0};
constexpr Range timeOfDay_s{-1e6, 1e6};
constexpr Range dayOfYear{101.0, 1231.0};

constexpr std::array<std::pair<std::string_view, Range>, 40> ranges{{
    {"agreed_delay_s", {-1e5, 1e5}},
    {"agreed_offset_m", {-1000.0, 1000.0}},
    {"assumed_sound_speed_m_s", {100.0, 10'000.0}},
    {"bait_depth_m", depth_m},
    {"boat_length_m", {0.0, 1000.0}},
    {"boat_speed_m_s", {0.001, 100.0}},
    {"bow_height_m", {-10.0, 100.0}},
    {"bow_rope_m", rope_m},
    {"cast_m", rope_m},
    {"cell_m", {0.01, 10'000.0}},
    {"chart_level_m", level_m},
    {"count", {0.0, 1000.0}},
    {"depth_m", depth_m},
    {"draft_m", {-100.0, 100.0}},
    {"end_s", timeOfDay_s},
    {"gauge_level_m", level_m},
    {"height_m", {-100.0, 100.0}},
    {"length_m", {0.0, 100.0}},
    {"level_change_m", level_m},
    {"level_m", level_m},
    {"north_m", {-1e7, 1e7}},
    {"over_depth_m", {-100.0, 100.0}},
    {"rod_limit", {0.0, 1000.0}},
    {"rods", {-1000.0, 1000.0}},
    {"scope", {0.0, 1000.0}},
    {"season_first_month_day", dayOfYear},
    {"season_last_month_day", dayOfYear},
    {"section_area_m2", {1.0, 1e9}},
    {"shown_depth_m", depth_m},
    {"start_s", timeOfDay_s},
    {"stern_rope_m", rope_m},
    {"water_temperature_c", {-100.0, 100.0}},
    {"weight", {-1000.0, 1000.0}},
    {"weight_kg", {0.0, 10'000.0}},
    {"west_m", {-1e7, 1e7}},
    {"wind_from_deg", angle_deg},
    {"wind_later_at_s", timeOfDay_s},
    {"wind_later_from_deg", angle_deg},
    {"wind_later_speed_m_s", wind_m_s},
    {"wind_speed_m_s", wind_m_s},
}};

static_assert(std::ranges::is_sorted(ranges, {}, &std::pair<std::string_view, Range>::first));

std::string saidOf(Range range) {
    return fmt::format("{:g} to {:g} can be", range.low, range.high);
}

} // namespace

Range rangeOf(std::string_view name) {
    const auto found =
        std::ranges::lower_bound(ranges, name, {}, &std::pair<std::string_view, Range>::first);
    if (found != ranges.end() && found->first == name) {
        return found->second;
    }
    return name.starts_with("weight_") ? rangeOf("weight") : anything;
}

double kept(Connection& connection, std::string_view name, double value) {
    if (const Range range = rangeOf(name); !range.holds(value)) {
        connection.fail({base::ErrorKind::wrongUse,
                         fmt::format("{} of {:g} cannot be kept, {}; nothing was changed", name,
                                     value, saidOf(range)),
                         connection.path().string(), "correct the value and save again"});
    }
    return value;
}

std::optional<double> kept(Connection& connection, std::string_view name,
                           std::optional<double> value) {
    return value ? std::optional(kept(connection, name, *value)) : std::nullopt;
}

double withinRange(Connection& connection, std::string_view name, Range range, double value) {
    if (!range.holds(value)) {
        connection.failDamaged(fmt::format("{} is {:g}, and {}", name, value, saidOf(range)));
        return 0.0;
    }
    return value;
}

} // namespace store
