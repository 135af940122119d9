// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/words.h"

#include "app/wording/tongue.h"
#include "core/base/number_text.h"
#include <QDate>

#include <algorithm>
#include <array>
#include <cmath>

namespace wording {

namespace {

QString number(double value, int decimals) {
    return Tongue::number(value, decimals);
}

QString shortNumber(double value, int most) {
    return Tongue::shortNumber(value, most);
}

} // namespace

QString Words::depthNumber(units::Depth depth) const {
    return number(isMetric() ? depth.inMetres() : depth.inFeet(), 1);
}

QString Words::depth(units::Depth depth) const {
    return depthNumber(depth) + ' ' + depthUnit();
}

QString Words::shortDepthNumber(units::Depth depth) const {
    return shortNumber(isMetric() ? depth.inMetres() : depth.inFeet(), 1);
}

QString Words::depthRange(units::Depth from, std::optional<units::Depth> to) const {
    if (!to) {
        return Tongue::tr("over %1 %2").arg(shortDepthNumber(from), depthUnit());
    }
    if (shortDepthNumber(from) == shortDepthNumber(*to)) {
        return QStringLiteral("%1 %2").arg(shortDepthNumber(from), depthUnit());
    }
    return Tongue::tr("%1 to %2 %3")
        .arg(shortDepthNumber(from), shortDepthNumber(*to), depthUnit());
}

QString Words::fineDepth(units::Depth depth) const {
    return number(isMetric() ? depth.inMetres() : depth.inFeet(), 2) + ' ' + depthUnit();
}

QString Words::plusMinus(units::Depth halfWidth) const {
    return QStringLiteral("±") + depth(halfWidth);
}

QString Words::length(units::Length length) const {
    if (isMetric()) {
        const double m = length.inMetres();
        return m < 1000.0 ? number(m, m < 100.0 ? 1 : 0) + QStringLiteral(" m")
                          : number(m / 1000.0, 1) + Tongue::tr(" km");
    }
    const double ft = length.inFeet();
    return ft < 5280.0 ? number(ft, 0) + QStringLiteral(" ft")
                       : number(length.inMiles(), 1) + Tongue::tr(" mi");
}

QString Words::lengthTo(units::Length length, int decimals) const {
    return isMetric() ? number(length.inMetres(), decimals) + QStringLiteral(" m")
                      : number(length.inFeet(), std::min(decimals, 1)) + QStringLiteral(" ft");
}

QString Words::roughLength(units::Length length) const {
    const double step = isMetric() ? 10.0 : 25.0;
    const double amount = isMetric() ? length.inMetres() : length.inFeet();
    return number(step * std::round(amount / step), 0) + ' ' + depthUnit();
}

QString Words::levelChange(units::Length rise) const {
    const QString size =
        number(std::fabs(isMetric() ? rise.inMetres() : rise.inFeet()), isMetric() ? 2 : 1);
    const bool isZero = std::ranges::none_of(size, [](QChar c) { return c >= u'1' && c <= u'9'; });
    const QString sign = isZero                  ? QStringLiteral("±")
                         : rise.inMetres() < 0.0 ? QStringLiteral("−")
                                                 : QStringLiteral("+");
    return sign + size + ' ' + depthUnit();
}

QString Words::area(units::Area area) const {
    const double size = isMetric() ? area.inHectares() : area.inAcres();
    return number(size, size < 0.1 ? 2 : size < 100.0 ? 1 : 0) + ' ' + areaUnit();
}

QString Words::areaTo(units::Area area, int decimals) const {
    return number(areaAmount(area), decimals) + ' ' + areaUnit();
}

QString Words::smallArea(units::Area area) const {
    const double foot_m = units::Length::feet(1.0).inMetres();
    return isMetric() ? number(area.inSquareMetres(), 0) + QStringLiteral(" m²")
                      : number(area.inSquareMetres() / (foot_m * foot_m), 0) + Tongue::tr(" ft²");
}

QString Words::areaInBoth(units::Area area) const {
    const Words others(isMetric() ? preferences::UnitSystem::imperial
                                  : preferences::UnitSystem::metric);
    return QStringLiteral("%1 (%2)").arg(this->area(area), others.area(area));
}

QString Words::slope(double percent) {
    return shortNumber(percent, percent < 10.0 ? 1 : 0) + QStringLiteral(" %");
}

double Words::areaAmount(units::Area area) const {
    return isMetric() ? area.inHectares() : area.inAcres();
}

double Words::volumeAmount(units::Volume volume) const {
    return isMetric() ? volume.inCubicMetres() / 1000.0 : volume.inAcreFeet();
}

double Words::depthAmount(units::Depth depth) const {
    return isMetric() ? depth.inMetres() : depth.inFeet();
}

QString Words::areaNumber(units::Area area) const {
    return number(areaAmount(area), 2);
}

QString Words::volumeNumber(units::Volume volume) const {
    return number(volumeAmount(volume), 1);
}

QString Words::volume(units::Volume volume) const {
    if (!isMetric()) {
        return count(static_cast<std::size_t>(std::llround(volume.inAcreFeet()))) +
               QStringLiteral(" ac-ft");
    }
    const double m3 = volume.inCubicMetres();
    return m3 < 1e6 ? count(static_cast<std::size_t>(std::llround(m3))) + QStringLiteral(" m³")
                    : number(m3 / 1e6, 2) + Tongue::tr(" million m³");
}

QString Words::weight(units::Weight weight) const {
    if (isMetric()) {
        return number(weight.inKilograms(), 2) + Tongue::tr(" kg");
    }
    const auto ounces = std::lround(weight.inOunces());
    return Tongue::tr("%1 lb %2 oz").arg(ounces / 16).arg(ounces % 16);
}

QString Words::fishLength(units::Length length) const {
    return isMetric() ? number(length.inMetres() * 100.0, 0) + Tongue::tr(" cm")
                      : number(length.inFeet() * 12.0, 1) + Tongue::tr(" in");
}

QString Words::speed(units::Speed speed) const {
    return shortNumber(isMetric() ? speed.inMetresPerSecond() : speed.inMilesPerHour(),
                       isMetric() ? 1 : 0) +
           ' ' + speedUnit();
}

QString Words::speedTo(units::Speed speed, int decimals) const {
    return number(isMetric() ? speed.inMetresPerSecond() : speed.inMilesPerHour(), decimals) + ' ' +
           speedUnit();
}

QString Words::soundSpeed(units::Speed speed) const {
    return isMetric() ? number(speed.inMetresPerSecond(), 0) + QStringLiteral(" m/s")
                      : number(speed.inMetresPerSecond() / 0.3048, 0) + Tongue::tr(" ft/s");
}

QString Words::temperature(units::Temperature t) const {
    return isMetric() ? number(t.inCelsius(), 1) + QStringLiteral(" °C")
                      : number(t.inFahrenheit(), 1) + QStringLiteral(" °F");
}

QString Words::wholeTemperature(units::Temperature t) const {
    return isMetric() ? number(t.inCelsius(), 0) + QStringLiteral(" °C")
                      : number(t.inFahrenheit(), 0) + QStringLiteral(" °F");
}

QString Words::bearing(units::Bearing bearing) {
    return QStringLiteral("%1°").arg(static_cast<int>(std::lround(bearing.inDegrees())) % 360, 3,
                                     10, QLatin1Char('0'));
}

QString Words::windPoint(units::Bearing from) {
    static constexpr std::array points{
        QT_TRANSLATE_NOOP("wording", "N"),  QT_TRANSLATE_NOOP("wording", "NNE"),
        QT_TRANSLATE_NOOP("wording", "NE"), QT_TRANSLATE_NOOP("wording", "ENE"),
        QT_TRANSLATE_NOOP("wording", "E"),  QT_TRANSLATE_NOOP("wording", "ESE"),
        QT_TRANSLATE_NOOP("wording", "SE"), QT_TRANSLATE_NOOP("wording", "SSE"),
        QT_TRANSLATE_NOOP("wording", "S"),  QT_TRANSLATE_NOOP("wording", "SSW"),
        QT_TRANSLATE_NOOP("wording", "SW"), QT_TRANSLATE_NOOP("wording", "WSW"),
        QT_TRANSLATE_NOOP("wording", "W"),  QT_TRANSLATE_NOOP("wording", "WNW"),
        QT_TRANSLATE_NOOP("wording", "NW"), QT_TRANSLATE_NOOP("wording", "NNW")};
    return Tongue::tr(
        points[static_cast<std::size_t>(std::lround(from.inDegrees() / 22.5)) % points.size()]);
}

QString Words::timeOfDay(std::chrono::seconds sinceMidnight) {
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(sinceMidnight).count();
    return QStringLiteral("%1:%2")
        .arg(minutes / 60 % 24, 2, 10, QLatin1Char('0')) // After midnight hours count on.
        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString Words::wind(const logbook::Wind& wind) const {
    if (!wind.from && !wind.speed) {
        return Tongue::tr("wind not said");
    }
    if (!wind.from) {
        return *wind.speed > units::Speed() ? Tongue::tr("variable %1").arg(speed(*wind.speed))
                                            : Tongue::tr("calm");
    }
    const QString from = QStringLiteral("%1 %2").arg(windPoint(*wind.from), bearing(*wind.from));
    return wind.speed ? QStringLiteral("%1 %2").arg(from, speed(*wind.speed))
                      : from + Tongue::tr(", strength not said");
}

QString Words::place(geo::LonLat place) {
    // The same in every language: it is copied into plotters and messages, and typed back.
    const auto degrees = [](double deg) {
        return QString::fromStdString(base::fixedText(std::fabs(deg), 5));
    };
    return QStringLiteral("%1 %2  %3 %4")
        .arg(degrees(place.lat_deg),
             place.lat_deg < 0.0 ? QStringLiteral("S") : QStringLiteral("N"),
             degrees(place.lon_deg),
             place.lon_deg < 0.0 ? QStringLiteral("W") : QStringLiteral("E"));
}

QString Words::share(double share) {
    return QStringLiteral("%1 %").arg(std::lround(100.0 * share));
}

QString Words::count(std::size_t things) {
    return Tongue::whole(static_cast<qint64>(things));
}

QString Words::rate(double per10RodHours) {
    return number(per10RodHours, per10RodHours < 10.0 ? 1 : 0);
}

QString Words::hours(double hours) {
    const auto minutes = std::lround(hours * 60.0);
    return minutes < 60 ? Tongue::tr("%1 min").arg(minutes)
                        : QStringLiteral("%1 h %2")
                              .arg(minutes / 60)
                              .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString Words::day(units::Day day) {
    const QDate date(static_cast<int>(day.year()),
                     static_cast<int>(static_cast<unsigned>(day.month())),
                     static_cast<int>(static_cast<unsigned>(day.day())));
    return Tongue::locale().toString(date, Tongue::tr("ddd d MMM yyyy"));
}

} // namespace wording
