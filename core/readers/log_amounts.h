// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/harmless_text.h"
#include "core/readers/log_table.h"
#include "core/units/length.h"
#include "core/units/weight.h"

#include <initializer_list>

namespace readers {

/// The cells of a log's row as values; a cell that is none is told in the report and left out.
class LogCells {
public:
    LogCells(const LogTable& table, ReadingReport& report) : table_(&table), report_(&report) {}

    using Column = logbook::LogColumn;

    [[nodiscard]] std::string text(Column column) const {
        return base::harmless(logbook::unguarded(table_->text(column)));
    }
    /// In the unit that the column's name gives: a number as it stands, or as people write it with
    /// its unit ("21lb 4oz" under weight_kg, "SW" under wind_from_deg).
    [[nodiscard]] std::optional<double> amount(Column column) const;
    /// From weight_kg, else from weight.
    [[nodiscard]] std::optional<units::Weight> weight() const;
    /// From length_mm, else from length: a number without a unit counts centimetres there.
    [[nodiscard]] std::optional<units::Length> length() const;
    [[nodiscard]] std::optional<bool> yesOrNo(Column column) const;
    [[nodiscard]] std::optional<geo::LonLat> place(Column lon, Column lat) const;
    /// A moment, or a time of day on the day of `near`.
    [[nodiscard]] std::optional<units::Moment>
    moment(Column column, std::optional<units::Moment> near, const units::Clock& clock) const;
    /// Tells that what the row says there belongs to no such row.
    void tellIfAny(std::initializer_list<Column> columns) const;
    void tell(Column column) const;

private:
    const LogTable* table_;
    ReadingReport* report_;
};

} // namespace readers
