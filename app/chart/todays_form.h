// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/view_frame.h"

#include <QPainterPath>
#include <QString>

#include <memory>
#include <optional>

namespace chart {

/// What is drawn: the water at today's level, or at chart level as long as that is all there is.
[[nodiscard]] const std::shared_ptr<const water::WaterForm>& formOf(const water::Derived& derived);

/// The water as far as it reaches today where that is short of the shoreline.
[[nodiscard]] std::optional<QPainterPath> waterLeftOf(const water::Derived& derived,
                                                      const ViewFrame& view);

/// To what the depths of the chart refer: "depths at chart level", "depths at -0.40 m from chart
/// level".
[[nodiscard]] QString levelOfDepths(const ChartContent& content);

} // namespace chart
