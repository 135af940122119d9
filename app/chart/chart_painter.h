// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/label_space.h"
#include "app/chart/view_frame.h"

#include <QMarginsF>
#include <QPainter>

namespace chart {

/// Paints the layers that `content` shows, furniture and all, into the size of `view`. The same on
/// the screen, in a picture and on paper. Takes no widget; may run on any thread.
/// \param scale of letters and pens. \return where letters stand.
LabelSpace paintChart(QPainter& painter, const ViewFrame& view, const ChartContent& content,
                      double scale = 1.0);

/// The same layers' furniture left free at the edges: the whole water beside the key.
[[nodiscard]] ViewFrame wholeWater(const ChartContent& content, QSizeF size, double scale = 1.0);

/// Where the water lies, as far as is known: the shore, else the soundings.
[[nodiscard]] geo::Box waterBoxOf(const ChartContent& content);

/// What can be seen of the content at all: the water, else the backdrop.
[[nodiscard]] geo::Box extentOf(const ChartContent& content);

/// What is shown where nobody chose: everything but soundings, crossings, the log and the
/// graticule.
[[nodiscard]] std::set<LayerKind> usualLayers();

} // namespace chart
