// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/typed_amount.h"

#include "core/base/number_text.h"

#include <QRegularExpression>

#include <map>
#include <vector>

namespace wording {

using preferences::UnitSystem;

namespace {

/// Factor to SI for each way of writing a unit.
using UnitTable = std::map<QString, double>;

const UnitTable& lengthUnits() {
    static const UnitTable table{
        {"m", 1.0},     {"metre", 1.0}, {"metres", 1.0},  {"cm", 0.01},       {"mm", 0.001},
        {"km", 1000.0}, {"ft", 0.3048}, {"feet", 0.3048}, {"foot", 0.3048},   {"'", 0.3048},
        {"in", 0.0254}, {"\"", 0.0254}, {"mi", 1609.344}, {"fathom", 1.8288}, {"fathoms", 1.8288}};
    return table;
}

/// Sum of "number unit" pairs in SI: "12 lb 8 oz". A number without a unit takes `bare`. A sign
/// stands before all of it: "-1 ft 6 in" is a foot and a half below.
std::optional<double> sumTyped(const QString& text, const UnitTable& table, double bare) {
    static const QRegularExpression pair(
        QStringLiteral(R"(\s*([+\-−]?)(\d+(?:[.,]\d+)?)\s*([^\d\s+\-−.,]*(?:/[a-z]+)?)\s*)"));
    double sum = 0.0;
    double sign = 1.0;
    qsizetype at = 0;
    bool any = false;
    while (at < text.size()) {
        const auto match = pair.match(text, at, QRegularExpression::NormalMatch,
                                      QRegularExpression::AnchorAtOffsetMatchOption);
        if (!match.hasMatch() || (any && !match.captured(1).isEmpty())) {
            return std::nullopt;
        }
        if (!match.captured(1).isEmpty() && match.captured(1) != '+') {
            sign = -1.0;
        }
        const auto value = base::numberFrom(match.captured(2).replace(',', '.').toStdString());
        const QString unit = match.captured(3).toLower();
        const auto found = table.find(unit);
        if (!value || (!unit.isEmpty() && found == table.end()) || (unit.isEmpty() && any)) {
            return std::nullopt;
        }
        sum += *value * (unit.isEmpty() ? bare : found->second);
        any = true;
        at = match.capturedEnd();
    }
    return any ? std::optional(sign * sum) : std::nullopt;
}

double bareLength(UnitSystem units) {
    return units == UnitSystem::metric ? 1.0 : 0.3048;
}

} // namespace

std::optional<units::Depth> depthTyped(const QString& text, UnitSystem units) {
    const auto metres = sumTyped(text, lengthUnits(), bareLength(units));
    return metres ? std::optional(units::Depth::metres(*metres)) : std::nullopt;
}

std::optional<std::vector<units::Depth>> depthsTyped(const QString& text, UnitSystem units) {
    static const QRegularExpression blanks(QStringLiteral("\\s+"));
    const QString typed = text.trimmed();
    // Where semicolons part the depths, a comma is the decimal mark.
    const QStringList parts = typed.contains(';')   ? typed.split(';')
                              : typed.contains(',') ? typed.split(',')
                                                    : typed.split(blanks);
    std::vector<units::Depth> depths;
    for (const QString& part : parts) {
        const auto depth = depthTyped(part, units);
        if (!depth) {
            return std::nullopt;
        }
        depths.push_back(*depth);
    }
    return depths;
}

std::optional<units::Length> lengthTyped(const QString& text, UnitSystem units) {
    const auto metres = sumTyped(text, lengthUnits(), bareLength(units));
    return metres ? std::optional(units::Length::metres(*metres)) : std::nullopt;
}

std::optional<units::Area> areaTyped(const QString& text, UnitSystem units) {
    static const double acre = units::Area::acres(1.0).inSquareMetres();
    static const UnitTable table{
        {"ha", 1e4}, {"hectares", 1e4}, {"ac", acre}, {"acres", acre}, {"acre", acre}};
    const auto m2 = sumTyped(text, table, units == UnitSystem::metric ? 1e4 : acre);
    return m2 ? std::optional(units::Area::squareMetres(*m2)) : std::nullopt;
}

std::optional<units::Weight> weightTyped(const QString& text, UnitSystem units) {
    static const double pound = units::Weight::pounds(1.0).inKilograms();
    static const UnitTable table{
        {"kg", 1.0}, {"g", 0.001}, {"lb", pound}, {"lbs", pound}, {"oz", pound / 16.0}};
    const auto kg = sumTyped(text, table, units == UnitSystem::metric ? 1.0 : pound);
    return kg ? std::optional(units::Weight::kilograms(*kg)) : std::nullopt;
}

std::optional<units::Speed> speedTyped(const QString& text, UnitSystem units) {
    static const double mph = units::Speed::milesPerHour(1.0).inMetresPerSecond();
    static const double knot = units::Speed::knots(1.0).inMetresPerSecond();
    static const UnitTable table{{"m/s", 1.0}, {"mph", mph},    {"kn", knot},
                                 {"kt", knot}, {"knots", knot}, {"km/h", 1.0 / 3.6}};
    const auto speed = sumTyped(text, table, units == UnitSystem::metric ? 1.0 : mph);
    return speed ? std::optional(units::Speed::metresPerSecond(*speed)) : std::nullopt;
}

std::optional<units::Speed> soundSpeedTyped(const QString& text, UnitSystem units) {
    static const UnitTable table{{"m/s", 1.0}, {"ft/s", 0.3048}};
    const auto speed = sumTyped(text, table, units == UnitSystem::metric ? 1.0 : 0.3048);
    return speed ? std::optional(units::Speed::metresPerSecond(*speed)) : std::nullopt;
}

std::optional<double> percentTyped(const QString& text) {
    static const UnitTable table{{"%", 1.0}, {"percent", 1.0}};
    return sumTyped(text, table, 1.0);
}

std::optional<units::Temperature> temperatureTyped(const QString& text, UnitSystem units) {
    static const UnitTable table{{"c", 1.0}, {"°c", 1.0}, {"f", 1.0}, {"°f", 1.0}, {"°", 1.0}};
    const auto degrees = sumTyped(text, table, 1.0);
    if (!degrees) {
        return std::nullopt;
    }
    const QString lower = text.toLower();
    const bool isFahrenheit =
        lower.contains('f') || (units == UnitSystem::imperial && !lower.contains('c'));
    return isFahrenheit ? units::Temperature::fahrenheit(*degrees)
                        : units::Temperature::celsius(*degrees);
}

} // namespace wording
