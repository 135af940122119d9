// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

#include <QSizeF>

namespace chart {

/// Whether a page of this size has room for the key; without it the water has all of the page.
[[nodiscard]] bool keyHasRoom(const ChartContent& content, QSizeF page, double scale);

} // namespace chart
