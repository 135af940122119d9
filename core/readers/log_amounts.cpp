// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/log_amounts.h"

#include "core/base/number_text.h"
#include "core/units/written.h"
#include "core/units/written_time.h"

#include <algorithm>

namespace readers {

namespace {

using logbook::LogColumn;

template <class Amount, class Read>
std::optional<double> si(const std::optional<Amount>& amount, Read read) {
    return amount ? std::optional<double>(read(*amount)) : std::nullopt;
}

std::optional<double> writtenAmount(LogColumn column, const std::string& text) {
    constexpr auto bare = units::Bare::metric;
    switch (column) {
    case LogColumn::weightKg:
        return si(units::weightWritten(text, bare), [](auto w) { return w.inKilograms(); });
    case LogColumn::lengthMm:
        return si(units::fishLengthWritten(text, bare),
                  [](auto l) { return 1000.0 * l.inMetres(); });
    case LogColumn::baitDepthM:
    case LogColumn::levelM:
        return si(units::lengthWritten(text, bare), [](auto l) { return l.inMetres(); });
    case LogColumn::windFromDeg:
        return si(units::bearingWritten(text), [](auto b) { return b.inDegrees(); });
    case LogColumn::windSpeedMS:
        return si(units::speedWritten(text, bare), [](auto v) { return v.inMetresPerSecond(); });
    case LogColumn::waterTemperatureC:
        return si(units::temperatureWritten(text, bare), [](auto t) { return t.inCelsius(); });
    case LogColumn::hours:
        return si(units::spanWritten(text),
                  [](auto span) { return static_cast<double>(span.count()) / 3600.0; });
    default:
        return std::nullopt;
    }
}

/// What a column can hold.
struct Range {
    LogColumn column;
    double least;
    double most;
};
constexpr std::array ranges{
    Range{LogColumn::rods, 1, 100},
    Range{LogColumn::weightKg, 0, units::heaviestFish.inKilograms()},
    Range{LogColumn::lengthMm, 0, 1000.0 * units::longestFish.inMetres()},
    Range{LogColumn::baitDepthM, 0, 500},
    Range{LogColumn::windFromDeg, 0, 360},
    Range{LogColumn::windSpeedMS, 0, 60},
    Range{LogColumn::waterTemperatureC, units::coldestWater.inCelsius(),
          units::warmestWater.inCelsius()},
    Range{LogColumn::levelM, -500, 10'000}, // gauges read from their foot, or from the sea
    Range{LogColumn::hours, 0, 24}};

bool isIn(LogColumn column, double number) {
    const auto* const range = std::ranges::find(ranges, column, &Range::column);
    return range == ranges.end() || (number >= range->least && number <= range->most);
}

} // namespace

void LogCells::tell(Column column) const {
    report_->dropField(nameOf(column), table_->line(), table_->text(column));
}

void LogCells::tellIfAny(std::initializer_list<Column> columns) const {
    for (const Column column : columns) {
        if (!table_->text(column).empty()) {
            tell(column);
        }
    }
}

std::optional<double> LogCells::amount(Column column) const {
    const std::string& cell = table_->text(column);
    if (cell.empty()) {
        return std::nullopt;
    }
    const auto plain = table_->number(column);
    // Digits alone that this table's decimal mark does not read are not read by another either.
    const bool isBare = base::numberFrom(cell).has_value();
    const auto number = plain || isBare ? plain : writtenAmount(column, cell);
    if (!number || !isIn(column, *number)) {
        tell(column);
        return std::nullopt;
    }
    return number;
}

std::optional<units::Weight> LogCells::weight() const {
    if (const auto kg = amount(Column::weightKg)) {
        return units::Weight::kilograms(*kg);
    }
    const std::string& cell = table_->text(Column::weight);
    if (cell.empty()) {
        return std::nullopt;
    }
    const auto plain = table_->number(Column::weight);
    const auto written =
        plain ? units::Weight::kilograms(*plain) : units::weightWritten(cell, units::Bare::metric);
    if (!written || !isIn(Column::weightKg, written->inKilograms())) {
        tell(Column::weight);
        return std::nullopt;
    }
    return written;
}

std::optional<units::Length> LogCells::length() const {
    if (const auto mm = amount(Column::lengthMm)) {
        // The digits themselves are moved, so that what was written reads back as the same length.
        const auto exact = base::numberFrom(table_->text(Column::lengthMm) + "e-3");
        return units::Length::metres(exact.value_or(*mm / 1000.0));
    }
    const std::string& cell = table_->text(Column::length);
    if (cell.empty()) {
        return std::nullopt;
    }
    const auto plain = table_->number(Column::length);
    const auto written = plain ? units::Length::metres(*plain / 100.0)
                               : units::fishLengthWritten(cell, units::Bare::metric);
    if (!written || !isIn(Column::lengthMm, 1000.0 * written->inMetres())) {
        tell(Column::length);
        return std::nullopt;
    }
    return written;
}

std::optional<bool> LogCells::yesOrNo(Column column) const {
    const std::string cell = base::lowerCase(text(column));
    if (cell.empty()) {
        return std::nullopt;
    }
    for (const std::string_view yes : {"yes", "y", "true", "1", "ja", "returned", "released"}) {
        if (cell == yes) {
            return true;
        }
    }
    for (const std::string_view no : {"no", "n", "false", "0", "nein", "kept"}) {
        if (cell == no) {
            return false;
        }
    }
    tell(column);
    return std::nullopt;
}

std::optional<geo::LonLat> LogCells::place(Column lon, Column lat) const {
    const auto place = table_->place(lon, lat);
    if (!place) {
        tellIfAny({lon, lat});
    }
    return place;
}

std::optional<units::Moment> LogCells::moment(Column column, std::optional<units::Moment> near,
                                              const units::Clock& clock) const {
    if (table_->text(column).empty()) {
        return std::nullopt;
    }
    if (const auto moment = table_->moment(column, clock)) {
        return moment;
    }
    const auto time = units::timeOfDayFrom(table_->text(column));
    if (time && near) {
        return clock.at(clock.dayOf(*near), *time);
    }
    tell(column);
    return std::nullopt;
}

} // namespace readers
