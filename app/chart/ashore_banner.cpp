// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/ashore_banner.h"

#include "app/chart/lettering.h"
#include "app/wording/cautions.h"
#include "core/water/steps/day_cautions.h"

namespace chart {

namespace {

constexpr double height = 34.0;
constexpr double pad = 18.0;
constexpr double top = 10.0;

QFont letters(double scale) {
    return typeface(TypeSize::normal, 1.1 * scale, TypeStyle::bold);
}

} // namespace

std::optional<FurniturePiece> ashoreBanner(const LayerContext& on) {
    const ChartContent& content = on.content;
    if (!content.water || content.inks == Inks::grey || !content.shown.contains(LayerKind::marks)) {
        return std::nullopt;
    }
    const auto ashore = water::ashoreCaution(content.water->plan.day);
    if (!ashore) {
        return std::nullopt;
    }
    const double s = on.scale;
    const QString text = wording::said(*ashore, content.words);
    const double width = boxOf(letters(s), text, {}).width() + 2.0 * pad * s;
    const QRectF band(0.5 * (on.view.size().width() - width), top * s, width, height * s);
    return FurniturePiece{band, [text](LayerContext& chart, const QRectF& box) {
                              chart.painter.fillRect(box, chart.palette.rust);
                              drawText(chart.painter, letters(chart.scale), box.center(), text,
                                       {chart.palette.card, chart.palette.rust}, 0.0);
                          }};
}

} // namespace chart
