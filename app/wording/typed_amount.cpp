// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/typed_amount.h"

#include "app/wording/tongue.h"
#include "app/wording/words.h"
#include "core/units/written.h"
#include "core/wind/beaufort.h"

#include <QRegularExpression>

#include <QDate>
#include <QLocale>

namespace wording {

using preferences::UnitSystem;

namespace {

units::Bare bareOf(UnitSystem system) {
    return system == UnitSystem::metric ? units::Bare::metric : units::Bare::imperial;
}

/// "F4", "force 4": the middle of that force; nothing where the text does not begin so.
std::optional<units::Speed> forceTyped(const QString& text) {
    static const QRegularExpression force(QStringLiteral(R"(^\s*(?:f|force|bft)\s*(\d{1,2})\s*$)"),
                                          QRegularExpression::CaseInsensitiveOption);
    const auto match = force.match(text);
    const int number = match.captured(1).toInt();
    return match.hasMatch() && number <= 12 ? std::optional(wind::middleOfForce(number))
                                            : std::nullopt;
}

bool hasDecimalComma() {
    return Tongue::locale().decimalPoint() == QLatin1String(",");
}

/// One of the sixteen points as the language of the desk calls it: "SO" is south-east in German.
std::optional<units::Bearing> pointTyped(const QString& text) {
    constexpr double step_deg = 22.5;
    for (int i = 0; i < 16; ++i) {
        const auto bearing = units::Bearing::degrees(step_deg * i);
        if (text.trimmed().compare(Words::windPoint(bearing), Qt::CaseInsensitive) == 0) {
            return bearing;
        }
    }
    return std::nullopt;
}

/// Where semicolons part the depths, a comma is the decimal mark; so it is in a language that
/// writes it, unless a blank follows: "2,5" is no two depths there.
QStringList depthsIn(const QString& typed, UnitSystem units) {
    static const QRegularExpression blanks(QStringLiteral("\\s+"));
    static const QRegularExpression commaAndBlank(QStringLiteral(",\\s+"));
    if (typed.contains(';')) {
        return typed.split(';');
    }
    if (!typed.contains(',')) {
        return typed.split(blanks);
    }
    if (!hasDecimalComma()) {
        return typed.split(',');
    }
    return typed.contains(commaAndBlank) ? typed.split(commaAndBlank)
           : depthTyped(typed, units)    ? QStringList(typed)
                                         : typed.split(blanks);
}

} // namespace

std::optional<units::Depth> depthTyped(const QString& text, UnitSystem system) {
    const auto length = lengthTyped(text, system);
    return length ? std::optional(units::Depth::fromLength(*length)) : std::nullopt;
}

QString depthsApart() {
    return hasDecimalComma() ? QStringLiteral("; ") : QStringLiteral(", ");
}

std::optional<std::vector<units::Depth>> depthsTyped(const QString& text, UnitSystem system) {
    const QStringList parts = depthsIn(text.trimmed(), system);
    std::vector<units::Depth> depths;
    for (const QString& part : parts) {
        const auto depth = depthTyped(part, system);
        if (!depth) {
            return std::nullopt;
        }
        depths.push_back(*depth);
    }
    return depths;
}

std::optional<units::Length> lengthTyped(const QString& text, UnitSystem system) {
    return units::lengthWritten(text.toStdString(), bareOf(system));
}

std::optional<units::Length> fishLengthTyped(const QString& text, UnitSystem system) {
    const auto length = units::fishLengthWritten(text.toStdString(), bareOf(system));
    return length && *length > units::Length() && *length <= units::longestFish ? length
                                                                                : std::nullopt;
}

std::optional<units::Area> areaTyped(const QString& text, UnitSystem system) {
    return units::areaWritten(text.toStdString(), bareOf(system));
}

std::optional<units::Weight> weightTyped(const QString& text, UnitSystem system) {
    return units::weightWritten(text.toStdString(), bareOf(system));
}

std::optional<units::Weight> fishWeightTyped(const QString& text, UnitSystem system) {
    const auto weight = weightTyped(text, system);
    return weight && *weight > units::Weight() && *weight <= units::heaviestFish ? weight
                                                                                 : std::nullopt;
}

std::optional<units::Speed> speedTyped(const QString& text, UnitSystem system) {
    const auto force = forceTyped(text);
    return force ? force : units::speedWritten(text.toStdString(), bareOf(system));
}

std::optional<units::Speed> soundSpeedTyped(const QString& text, UnitSystem system) {
    return units::soundSpeedWritten(text.toStdString(), bareOf(system));
}

std::optional<double> percentTyped(const QString& text) {
    return units::sumWritten(text.toStdString(), {{"%", 1.0}, {"percent", 1.0}}, 1.0);
}

std::optional<units::Temperature> temperatureTyped(const QString& text, UnitSystem system) {
    return units::temperatureWritten(text.toStdString(), bareOf(system));
}

std::optional<units::Temperature> waterTemperatureTyped(const QString& text, UnitSystem system) {
    const auto warmth = temperatureTyped(text, system);
    return warmth && *warmth >= units::coldestWater && *warmth <= units::warmestWater
               ? warmth
               : std::nullopt;
}

std::optional<units::Day> dayTyped(const QString& text) {
    const QString day = text.simplified();
    if (const auto iso = units::dayFrom(day.toStdString())) {
        return iso;
    }
    // The first form is how days are shown, so that what a field shows can be left as it is.
    for (const QString& form : {Tongue::tr("ddd d MMM yyyy"), QStringLiteral("d.M.yyyy"),
                                QStringLiteral("d. M. yyyy"), QStringLiteral("d/M/yyyy"),
                                QStringLiteral("d MMM yyyy"), QStringLiteral("d MMMM yyyy")}) {
        for (const QLocale& locale : {Tongue::locale(), QLocale::c()}) {
            const QDate date = locale.toDate(day, form);
            if (date.isValid() && date.year() >= 1900) {
                return units::Day(std::chrono::year(date.year()),
                                  std::chrono::month(static_cast<unsigned>(date.month())),
                                  std::chrono::day(static_cast<unsigned>(date.day())));
            }
        }
    }
    return std::nullopt;
}

std::optional<units::Bearing> bearingTyped(const QString& text) {
    const auto point = pointTyped(text);
    return point ? point : units::bearingWritten(text.toStdString());
}

} // namespace wording
