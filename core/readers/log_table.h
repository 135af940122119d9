// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/logbook/log_columns.h"
#include "core/logbook/other_field.h"
#include "core/readers/quoted_rows.h"
#include "core/readers/reading_report.h"
#include "core/readers/table_text.h"

#include <array>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace readers {

/// A log as somebody's spreadsheet wrote it: any of comma, semicolon, tab and stroke as separator,
/// point or comma as decimal mark, dates in one of three orders, the header on one of the first
/// rows, and perhaps once more further down. What was found out is told in the report's notes.
class LogTable {
public:
    using Column = logbook::LogColumn;

    /// \return unusableInput where the file cannot be read, or names too few of the columns.
    [[nodiscard]] static base::Result<LogTable> open(const std::filesystem::path& path,
                                                     ReadingReport& report);

    /// The next row with something in it; false at the end. One with more cells than the header is
    /// refused and passed over; what a shorter one lacks is empty.
    [[nodiscard]] bool next(ReadingReport& report);
    /// Empty where there is no such column.
    [[nodiscard]] const std::string& text(Column column) const;
    [[nodiscard]] std::optional<double> number(Column column) const;
    /// A number in this table's decimal mark.
    [[nodiscard]] std::optional<double> numberIn(const std::string& text) const;
    /// On the Earth; degrees as numbers or with minutes.
    [[nodiscard]] std::optional<geo::LonLat> place(Column lon, Column lat) const;
    [[nodiscard]] std::optional<units::Moment> moment(Column column,
                                                      const units::Clock& clock) const;
    /// What the row says under names that are no column of a log, by name.
    [[nodiscard]] std::vector<logbook::OtherField> others() const;
    [[nodiscard]] std::size_t line() const { return rows_->line(); }
    [[nodiscard]] std::string_view row() const { return rows_->row(); }
    [[nodiscard]] double share() const { return rows_->share(); }

private:
    using Cells = std::vector<std::string>;

    LogTable() = default;
    [[nodiscard]] char findSeparator() const;
    void layHeader(const Cells& names);
    [[nodiscard]] base::Result<void> checkHeader(const std::string& where) const;
    void lookAhead(ReadingReport& report);
    bool takeHeaderAgain(ReadingReport& report);

    std::unique_ptr<const std::string> text_; ///< Stays where it is when the table is moved.
    char separator_ = ',';
    char decimalMark_ = '.';
    DateOrder order_ = DateOrder::yearFirst;
    std::optional<QuotedRows> rows_;
    std::array<std::optional<std::size_t>, logbook::logColumnNames.size()> at_{};
    Cells otherNames_; ///< Of each cell; empty where it is a column of a log.
    std::size_t cellCount_ = 0;
    Cells cells_;
    bool wasShort_ = false;
    bool wasAgain_ = false;
};

} // namespace readers
