// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

#include <vector>

namespace chart {

/// Set before the name of a section that was never fished, and in the key.
inline constexpr QChar neverFishedSign{0x25cb};

/// By section: true where no stay of the log lies in it. Empty as long as nothing was logged at
/// all, because then it would say the same of every section.
[[nodiscard]] std::vector<bool> neverFished(const ChartContent& content);

/// Whether the chart shows the sign anywhere, and so owes its meaning.
[[nodiscard]] bool showsNeverFished(const ChartContent& content);

} // namespace chart
