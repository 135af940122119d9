// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/readers/table_preview.h"

#include <string>
#include <vector>

namespace readers {

/// A row of text at the beginning of a table and its line.
struct HeadRow {
    std::string text;
    std::size_t line = 0;
};

/// Guesses how a table is to be read from its first rows; what the settings say is taken as it is.
/// \return wrongUse where a chosen column is not there.
[[nodiscard]] base::Result<TablePreview> guessTable(const std::vector<HeadRow>& head,
                                                    const SoundingFileSettings& settings,
                                                    const std::string& where);

/// True for a row that says nothing: blank, or a remark behind '#', '%' or "//".
[[nodiscard]] bool isRemark(std::string_view row);

} // namespace readers
