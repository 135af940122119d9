// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/preferences/unit_system.h"
#include "core/geo/lon_lat.h"
#include "core/logbook/conditions.h"
#include "core/units/area.h"
#include "core/units/bearing.h"
#include "core/units/depth.h"
#include "core/units/length.h"
#include "core/units/level.h"
#include "core/units/moment.h"
#include "core/units/speed.h"
#include "core/units/temperature.h"
#include "core/units/volume.h"
#include "core/units/weight.h"

#include <QString>

#include <chrono>
#include <optional>

namespace wording {

/// Values to words in the user's units: the only place that writes a unit sign.
class Words {
public:
    explicit Words(preferences::UnitSystem units = preferences::UnitSystem::metric)
        : units_(units) {}

    [[nodiscard]] preferences::UnitSystem units() const { return units_; }
    [[nodiscard]] bool isMetric() const { return units_ == preferences::UnitSystem::metric; }

    [[nodiscard]] QString depth(units::Depth depth) const;            ///< "5.4 m", "17.7 ft"
    [[nodiscard]] QString depthNumber(units::Depth depth) const;      ///< "5.4", "17.7"
    [[nodiscard]] QString shortDepthNumber(units::Depth depth) const; ///< "4", "9.1", "30"
    [[nodiscard]] QString
    depthRange(units::Depth from,
               std::optional<units::Depth> to) const;              ///< "4 to 6 m", "over 20 m"
    [[nodiscard]] QString fineDepth(units::Depth depth) const;     ///< "0.25 m", "0.82 ft"
    [[nodiscard]] QString plusMinus(units::Depth halfWidth) const; ///< "±0.2 m"
    [[nodiscard]] QString length(units::Length length)
        const; ///< "18.3 m", "60 ft"; from 1 km or 1 mile on "2.9 km", "1.8 mi"
    /// With so many decimals in metres; in feet with one at most: "58 m", "190 ft".
    [[nodiscard]] QString lengthTo(units::Length length, int decimals) const;
    /// To about a boat's length: "110 m", "350 ft".
    [[nodiscard]] QString roughLength(units::Length length) const;
    [[nodiscard]] QString levelChange(units::Length rise) const; ///< "+0.35 m"
    [[nodiscard]] QString area(units::Area area) const;          ///< "4.1 ha", "10.2 ac", "0.02 ha"
    [[nodiscard]] QString
    areaInBoth(units::Area area) const; ///< The user's own unit first: "4.1 ha (10.1 ac)".
    [[nodiscard]] QString areaTo(units::Area area, int decimals) const; ///< "0.3 ha", "0.7 ac"
    [[nodiscard]] QString
    smallArea(units::Area area) const; ///< Within a cast: "310 m²", "3337 ft²"
    [[nodiscard]] QString volume(units::Volume volume) const; ///< "1.2 million m³", "980 ac-ft"
    [[nodiscard]] QString weight(units::Weight weight) const; ///< "5.67 kg", "12 lb 8 oz"
    [[nodiscard]] QString fishLength(units::Length length) const; ///< "78 cm", "30.7 in"
    [[nodiscard]] QString speed(units::Speed speed) const;        ///< "6 m/s", "13 mph"
    [[nodiscard]] QString speedTo(units::Speed speed,
                                  int decimals) const;                  ///< "6.0 m/s", "13.4 mph"
    [[nodiscard]] QString soundSpeed(units::Speed speed) const;         ///< "1500 m/s", "4921 ft/s"
    [[nodiscard]] QString temperature(units::Temperature t) const;      ///< "12.5 °C", "54.5 °F"
    [[nodiscard]] QString wholeTemperature(units::Temperature t) const; ///< "15 °C", "59 °F"
    [[nodiscard]] static QString bearing(units::Bearing bearing);       ///< "300°"
    [[nodiscard]] static QString windPoint(units::Bearing from);        ///< "WNW"
    [[nodiscard]] static QString timeOfDay(std::chrono::seconds sinceMidnight); ///< "07:40"
    /// "WNW 300° 6 m/s", "variable 3 m/s", "calm", "WNW 300°, strength not said", "wind not said"
    [[nodiscard]] QString wind(const logbook::Wind& wind) const;
    [[nodiscard]] static QString place(geo::LonLat place);   ///< "55.20341 N 3.11272 E"
    [[nodiscard]] static QString share(double share);        ///< "42 %"
    [[nodiscard]] static QString slope(double percent);      ///< "14 %", "8.5 %"
    [[nodiscard]] static QString count(std::size_t things);  ///< "41,208"
    [[nodiscard]] static QString rate(double per10RodHours); ///< "1.4"
    [[nodiscard]] static QString hours(double hours);        ///< "7 h 10"
    [[nodiscard]] static QString day(units::Day day);        ///< "Fri 27 Nov 2026"

    [[nodiscard]] QString depthUnit() const {
        return isMetric() ? QStringLiteral("m") : QStringLiteral("ft");
    }
    [[nodiscard]] QString speedUnit() const {
        return isMetric() ? QStringLiteral("m/s") : QStringLiteral("mph");
    }
    [[nodiscard]] QString areaUnit() const {
        return isMetric() ? QStringLiteral("ha") : QStringLiteral("ac");
    }
    /// Of volumeNumber(), in tables and curves.
    [[nodiscard]] QString volumeUnit() const {
        return isMetric() ? QStringLiteral("1000 m³") : QStringLiteral("ac-ft");
    }
    /// The bare amounts in these units, for curves and tables: "4.12" and 4.12.
    [[nodiscard]] double areaAmount(units::Area area) const;
    [[nodiscard]] double volumeAmount(units::Volume volume) const;
    [[nodiscard]] double depthAmount(units::Depth depth) const;
    [[nodiscard]] QString areaNumber(units::Area area) const;
    [[nodiscard]] QString volumeNumber(units::Volume volume) const;

    friend bool operator==(const Words&, const Words&) = default;

private:
    preferences::UnitSystem units_;
};

} // namespace wording
