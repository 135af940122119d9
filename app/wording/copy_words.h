// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/copies.h"

#include <QString>

#include <optional>

namespace wording {

/// When a copy was taken, by the machine's clock: "Fri 27 Nov 2026, 12:05".
[[nodiscard]] QString takenWords(const store::Copy& copy);

/// What a copy holds beside what the water holds now: "2 stays fewer, 1 survey day more", "as now".
/// Where either cannot be counted: what the copy holds, or that it cannot be read.
[[nodiscard]] QString differenceWords(const std::optional<store::CopyCounts>& copy,
                                      const std::optional<store::CopyCounts>& now);

} // namespace wording
