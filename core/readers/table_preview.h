// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readers/soundings_file.h"
#include "core/readers/table_text.h"

#include <cstddef>
#include <string>
#include <vector>

namespace readers {

enum class ColumnRole { none, x, y, depth, time, date };

/// What a delimited text looks like, so that the user can agree or choose otherwise before all of
/// it is read.
struct TablePreview {
    char separator = ',';
    char decimalMark = '.';
    bool hasHeader = false;
    std::vector<std::string> columns;           ///< Header, or "1", "2"... without one.
    std::vector<ColumnRole> roles;              ///< Guessed, or as chosen; one for each column.
    std::vector<std::vector<std::string>> rows; ///< The first 20 rows of data.
    DepthUnit unit = DepthUnit::metres;         ///< As chosen, or told by the depth column's name.
    bool isUnitTold = false; ///< True where the settings or the depth column's name say the unit.
    DateOrder dateOrder = DateOrder::yearFirst; ///< Of the dates in the time or date column.
    bool hasTimes = false; ///< False where the time column names no date: its times tell nothing.
    bool inDegrees = true; ///< False where the coordinates are too large for it.
    std::size_t firstDataLine = 1; ///< Line in the file, counted from 1.

    [[nodiscard]] std::optional<std::size_t> columnOf(ColumnRole role) const;
    /// The header's names for a message: "lon, lat, depth_m".
    [[nodiscard]] std::string columnList() const;
};

} // namespace readers
