// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readers/reading_report.h"

#include <QString>

namespace wording {

/// The rows of a file that could not be used, by reason, the most of them first: "3 with a wrong
/// check sum (line 12: '$SDDPT...'), 1 without a depth (line 40: '3.1,55.2,')". Empty where there
/// are none. A reason without words of its own is written as core calls it.
[[nodiscard]] QString refusedRows(const readers::ReadingReport& report);

/// What of a small table was not used, rows and fields, a sentence each: "2 rows not used: ... 1
/// field left empty (first: height_m 'tall' in row 4)." Empty where all was.
[[nodiscard]] QString notUsed(const readers::ReadingReport& report);

} // namespace wording
