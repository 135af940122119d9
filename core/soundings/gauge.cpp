// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/soundings/gauge.h"

#include <algorithm>

namespace soundings {

Gauge Gauge::constant(units::WaterLevel level) {
    Gauge gauge;
    gauge.constant_ = level;
    return gauge;
}

Gauge Gauge::table(std::vector<GaugeReading> readings) {
    Gauge gauge;
    std::stable_sort(readings.begin(), readings.end(),
                     [](const GaugeReading& a, const GaugeReading& b) { return a.time < b.time; });
    for (const GaugeReading& reading : readings) {
        if (!gauge.readings_.empty() && gauge.readings_.back().time == reading.time) {
            gauge.readings_.back() = reading;
        } else {
            gauge.readings_.push_back(reading);
        }
    }
    return gauge;
}

std::optional<units::WaterLevel> Gauge::levelAt(std::optional<units::Moment> time) const {
    if (constant_ || readings_.empty()) {
        return constant_;
    }
    if (!time) {
        units::Length above;
        for (const GaugeReading& reading : readings_) {
            above += reading.level - readings_.front().level;
        }
        return readings_.front().level + above / static_cast<double>(readings_.size());
    }
    const auto after =
        std::lower_bound(readings_.begin(), readings_.end(), *time,
                         [](const GaugeReading& r, units::Moment t) { return r.time < t; });
    if (after == readings_.begin()) {
        return readings_.front().level;
    }
    if (after == readings_.end()) {
        return readings_.back().level;
    }
    const auto before = after - 1;
    const double share = static_cast<double>((*time - before->time).count()) /
                         static_cast<double>((after->time - before->time).count());
    return before->level + (after->level - before->level) * share;
}

} // namespace soundings
