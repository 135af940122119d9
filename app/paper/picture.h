// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"

#include <QImage>
#include <QSize>

namespace paper {

/// The chart of the whole water as a picture, with its name and what it is made of above it. What
/// is shown is `content.shown`; where that is empty, the usual layers.
[[nodiscard]] QImage renderPicture(const chart::ChartContent& content, QSize size);

} // namespace paper
