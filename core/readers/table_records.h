// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/readers/line_reader.h"
#include "core/readers/reading_report.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace readers {

/// A comma-separated table with a header, read row by row; cells are asked for by column. For our
/// own small tables (log, weed notes, lead line).
class TableRecords {
public:
    /// \return unusableInput where the file cannot be read or one of the `needed` columns is
    /// missing.
    [[nodiscard]] static base::Result<TableRecords> open(const std::filesystem::path& path,
                                                         const std::vector<std::string>& needed);

    /// The next row with something in it; false at the end. A row of another number of cells than
    /// the header is refused in the report and passed over.
    [[nodiscard]] bool next(ReadingReport& report);
    /// Empty where there is no such column. A doubled quote in a quoted cell is one quote.
    [[nodiscard]] std::string text(std::string_view column) const;
    [[nodiscard]] std::optional<double> number(std::string_view column) const;
    /// From the columns lon and lat, on the Earth.
    [[nodiscard]] std::optional<geo::LonLat> place() const;
    [[nodiscard]] std::size_t line() const { return lines_.lineNumber(); }
    [[nodiscard]] std::string_view row() const { return row_; }
    [[nodiscard]] const std::string& where() const { return where_; }

private:
    explicit TableRecords(LineReader lines) : lines_(std::move(lines)) {}

    LineReader lines_;
    std::string where_;
    std::map<std::string, std::size_t, std::less<>> columns_;
    std::size_t cellCount_ = 0; ///< Of the header.
    std::string row_;
    std::vector<std::string_view> cells_;
};

} // namespace readers
