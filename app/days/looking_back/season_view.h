// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/paper/season_page.h"
#include "core/base/progress.h"
#include "core/logbook/log_sum.h"

namespace days::looking_back {

/// "3 Sep 2026 to 28 Nov 2026: 33 trips, 134 stays, 95 fish"; says that nothing was fished where it
/// was not.
[[nodiscard]] QString spanLine(const logbook::LogSum& sum);

/// The season counted for its page: of places what the sections gave, as far as the water is drawn.
/// \param content as the chart shows it, with the whole log. \return the errors of
/// water::reviewLog() and reviewHours(); wrongUse where nothing is logged; cancelled.
[[nodiscard]] base::Result<paper::SeasonPage> seasonPage(const chart::ChartContent& content,
                                                         const logbook::LogSum& sum,
                                                         base::Progress& progress);

} // namespace days::looking_back
