// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/inks.h"
#include "core/rates/hour_rates.h"
#include "core/water/questions/fished_light.h"

#include <QImage>
#include <QPainter>
#include <QSize>
#include <QString>

#include <optional>
#include <vector>

namespace paper {

/// What the curve over the day shows.
struct HoursShown {
    rates::HourRates hours;
    std::optional<water::FishedLight> light;
    QString title;
};

/// Points that hang together: hours that were not fished part the curve.
[[nodiscard]] std::vector<std::vector<rates::HourRate>> fishedRuns(const rates::HourRates& hours);

/// The curve with the band in which it may lie, its title, axes with their units, the best hours as
/// a bar along the foot, and sunrise and sunset of the days that were fished as stripes.
void paintHours(QPainter& painter, const QRectF& box, const HoursShown& shown,
                chart::Inks inks = chart::Inks::light, double scale = 1.0);
[[nodiscard]] QImage renderHours(const HoursShown& shown, QSize size);

} // namespace paper
