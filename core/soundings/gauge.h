// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/level.h"
#include "core/units/moment.h"

#include <optional>
#include <vector>

namespace soundings {

/// One look at the gauge board.
struct GaugeReading {
    units::Moment time;
    units::WaterLevel level;
    friend bool operator==(const GaugeReading&, const GaugeReading&) = default;
};

/// The water level over one survey day: nothing known, one level for the day, or a table of
/// readings.
class Gauge {
public:
    Gauge() = default;
    [[nodiscard]] static Gauge constant(units::WaterLevel level);
    /// Readings in any order; of two at one time the later one given counts.
    [[nodiscard]] static Gauge table(std::vector<GaugeReading> readings);

    [[nodiscard]] bool isKnown() const { return constant_.has_value() || !readings_.empty(); }
    /// Straight between readings, the nearest reading outside them; the middle of all readings
    /// where there is no time.
    [[nodiscard]] std::optional<units::WaterLevel> levelAt(std::optional<units::Moment> time) const;
    [[nodiscard]] std::optional<units::WaterLevel> constantLevel() const { return constant_; }
    [[nodiscard]] const std::vector<GaugeReading>& readings() const { return readings_; }
    friend bool operator==(const Gauge&, const Gauge&) = default;

private:
    std::optional<units::WaterLevel> constant_;
    std::vector<GaugeReading> readings_;
};

} // namespace soundings
