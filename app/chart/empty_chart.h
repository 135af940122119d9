// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

#include <QPainter>
#include <QRectF>

namespace chart {

/// Height of the room above the soundings in which is said that they are not drawn yet.
inline constexpr double firstHintHeight = 56.0;

/// True where there is no depth to show yet.
[[nodiscard]] bool isEmptyChart(const ChartContent& content);

/// What the chart says as long as it has no soundings: what to drop on it, and what comes of it.
void paintEmptyChart(QPainter& painter, const QRectF& page, const ChartContent& content);

} // namespace chart
