// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/backdrop_layer.h"

#include "app/chart/pointer_cache.h"
#include "app/chart/water_path.h"

#include <QImage>

namespace chart {

namespace {

/// What a strong backdrop leaves of the depths: enough to tell water from land.
constexpr double leastDepths = 0.15;

std::shared_ptr<const QImage> imageOf(const std::shared_ptr<const water::Backdrop>& backdrop) {
    static PointerCache<water::Backdrop, QImage> cache(2);
    return cache.of(backdrop, [](const water::Backdrop& from) {
        const auto* pixels = reinterpret_cast<const uchar*>(from.argb.data());
        return QImage(pixels, from.window.cols, from.window.rows, QImage::Format_ARGB32)
            .convertToFormat(QImage::Format_ARGB32_Premultiplied);
    });
}

} // namespace

void BackdropLayer::paint(LayerContext& on) const {
    const auto& backdrop = on.content.backdrop;
    if (!backdrop) {
        return;
    }
    on.painter.setOpacity(on.content.backdropStrength);
    if (!backdrop->argb.empty()) {
        const gdal::PictureWindow& window = backdrop->window;
        const QPointF upperLeft = on.view.toScreen({window.west_m, window.north_m});
        const QPointF lowerRight =
            on.view.toScreen({window.west_m + window.cols * window.pixel_m,
                              window.north_m - window.rows * window.pixel_m});
        on.painter.setRenderHint(QPainter::SmoothPixmapTransform, true);
        on.painter.drawImage(QRectF(upperLeft, lowerRight), *imageOf(backdrop));
    }
    on.painter.setBrush(Qt::NoBrush);
    on.painter.setPen(QPen(on.palette.ink, 1.2 * on.scale));
    for (const geo::Path& line : backdrop->lines) {
        if (meet(boxOf(line), on.view.box())) {
            on.painter.drawPolyline(screenLine(line, on.view));
        }
    }
}

double depthOpacity(const ChartContent& content) {
    const double strength = strengthOf(content, LayerKind::depth);
    if (!content.backdrop || !content.shown.contains(LayerKind::backdrop)) {
        return strength;
    }
    return strength * (1.0 - (1.0 - leastDepths) * content.backdropStrength);
}

} // namespace chart
