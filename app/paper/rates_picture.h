// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "core/rates/rate.h"

#include <QImage>
#include <QPainter>
#include <QSize>
#include <QString>

namespace paper {

/// Rates as bars with their 95 % intervals, the effort behind each beside it, and what may be said
/// below. Rows that do not fit are counted in the last line. \param title "Fish by section".
void paintRates(QPainter& painter, const QRectF& box, const rates::RateTable& table,
                const QString& title, chart::Inks inks = chart::Inks::light, double scale = 1.0);
[[nodiscard]] QImage renderRates(const rates::RateTable& table, const QString& title, QSize size);

} // namespace paper
