// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

#include <QString>

namespace chart {

/// What the chart shows, for somebody who hears it: the size of the water, its sections with their
/// mean depths, and the marks with what they are called and how deep they are, best first.
[[nodiscard]] QString spokenChart(const ChartContent& content);

} // namespace chart
