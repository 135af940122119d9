// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/depth_layer.h"

#include "app/chart/depth_colours.h"
#include "app/chart/layers/backdrop_layer.h"
#include "app/chart/todays_form.h"
#include "app/chart/trust_fade.h"
#include "app/chart/water_path.h"

#include <algorithm>
#include <cmath>

namespace chart {

namespace {

void paintBands(LayerContext& on) {
    const contours::Bands& bands = bandsOf(on.content);
    for (const contours::BandPolygons& band : formOf(on.content.derived)->bandPolygons) {
        const QColor colour = colourOf(on.palette, bands, band.from);
        on.painter.setBrush(colour);
        // A hairline of its own colour closes the seam that smooth edges leave between bands.
        on.painter.setPen(QPen(colour, 0.9 * on.scale));
        on.painter.drawPath(screenPath(band.pieces, on.view));
    }
}

/// The water as drawn before its bands are made: each cell in the colour of the band that it will
/// belong to.
void paintCells(LayerContext& on) {
    const grid::DepthGrid& depth = on.content.derived.drawn->depth;
    const grid::GridFrame& frame = depth.frame();
    const contours::Bands& bands = bandsOf(on.content);
    QImage cells(frame.cols(), frame.rows(), QImage::Format_ARGB32_Premultiplied);
    cells.fill(Qt::transparent);
    for (int row = 0; row < frame.rows(); ++row) {
        for (int col = 0; col < frame.cols(); ++col) {
            if (const auto here = depth.at(grid::Cell{col, row})) {
                cells.setPixel(col, row, colourOf(on.palette, bands, *here).rgb());
            }
        }
    }
    const geo::Box box = frame.box();
    on.painter.setRenderHint(QPainter::SmoothPixmapTransform, true);
    on.painter.drawImage(QRectF(on.view.toScreen({box.west_m, box.north_m}),
                                on.view.toScreen({box.east_m, box.south_m})),
                         cells);
}

/// Slanting lines through all that is a guess, at places fixed to the water so that they do not
/// swim when it is moved.
void hatchGuesses(LayerContext& on, const TrustFade& fade) {
    const double gap_m = 9.0 * on.scale / on.view.pixelsPerMetre();
    const double step_m = 2.5 * on.scale / on.view.pixelsPerMetre();
    const geo::Box box = on.view.box();
    QPainterPath hatching;
    const auto first = static_cast<int>(std::floor((box.west_m - box.north_m) / gap_m));
    const auto last = static_cast<int>(std::ceil((box.east_m - box.south_m) / gap_m));
    for (int k = first; k <= last; ++k) {
        const double apart_m = k * gap_m; // x - y along this line
        const double from_m = std::max(box.west_m, box.south_m + apart_m);
        const double to_m = std::min(box.east_m, box.north_m + apart_m);
        bool isDrawing = false;
        for (double x_m = from_m; x_m < to_m; x_m += step_m) {
            const geo::WaterPoint p{x_m, x_m - apart_m};
            const bool isGuess = fade.isGuess(p);
            if (isGuess && !isDrawing) {
                hatching.moveTo(on.view.toScreen(p));
            } else if (!isGuess && isDrawing) {
                hatching.lineTo(on.view.toScreen(p));
            }
            isDrawing = isGuess;
        }
        if (isDrawing) {
            hatching.lineTo(on.view.toScreen({to_m, to_m - apart_m}));
        }
    }
    on.painter.strokePath(hatching, QPen(withAlpha(on.palette.ink, 0.38), 0.8 * on.scale));
}

void paintTrust(LayerContext& on) {
    const auto fade = TrustFade::of(on.content.derived.drawn, on.content.inks);
    // Only the cells in sight: a page holds several charts, and each would carry the whole image.
    const grid::GridFrame& frame = fade->frame;
    const geo::Box sight = on.view.box();
    const grid::Cell first = frame.cellOf({sight.west_m, sight.north_m});
    const grid::Cell last = frame.cellOf({sight.east_m, sight.south_m});
    const int left = std::clamp(first.col - 1, 0, frame.cols());
    const int top = std::clamp(first.row - 1, 0, frame.rows());
    const int right = std::clamp(last.col + 2, left, frame.cols());
    const int bottom = std::clamp(last.row + 2, top, frame.rows());
    if (left == right || top == bottom) {
        return;
    }
    const auto corner = [&](int col, int row) {
        return on.view.toScreen(
            {frame.west_m() + col * frame.cell_m(), frame.north_m() - row * frame.cell_m()});
    };
    on.painter.setRenderHint(QPainter::SmoothPixmapTransform, true);
    on.painter.drawImage(QRectF(corner(left, top), corner(right, bottom)), fade->veil,
                         QRectF(left, top, right - left, bottom - top));
    hatchGuesses(on, *fade);
}

} // namespace

void DepthLayer::paint(LayerContext& on) const {
    const water::Derived& derived = on.content.derived;
    if (!derived.outline) {
        return;
    }
    const QPainterPath shore = screenPath(derived.outline->pieces(), on.view, 0.3);
    // The land along the shore in two steps of sand, on a coarser line: wide strokes are dear.
    const QPainterPath coarse = screenPath(derived.outline->pieces(), on.view, 3.0 * on.scale);
    const double opacity = depthOpacity(on.content);
    on.painter.setOpacity(opacity);
    for (const double width : {16.0, 7.0}) {
        on.painter.strokePath(coarse,
                              QPen(withAlpha(on.palette.sand, width > 10.0 ? 0.30 : 0.45),
                                   width * on.scale, Qt::SolidLine, Qt::FlatCap, Qt::BevelJoin));
    }
    const auto waterLeft = waterLeftOf(derived, on.view);
    on.painter.save();
    on.painter.setClipPath(shore, Qt::IntersectClip);
    if (waterLeft) {
        // The bank that the water has left, up to the shoreline of the chart.
        on.painter.fillPath(shore, mixed(on.palette.paper, on.palette.sand, 0.55));
        on.painter.setClipPath(*waterLeft, Qt::IntersectClip);
    }
    on.painter.fillPath(shore, derived.drawn ? on.palette.band(0, bandsOf(on.content).count())
                                             : on.palette.card);
    if (formOf(derived)) {
        paintBands(on);
    } else if (derived.drawn) {
        paintCells(on);
    }
    if (derived.drawn) {
        paintTrust(on);
    }
    on.painter.restore();
    on.painter.setOpacity(1.0);
    QPen line(on.palette.ink, 1.8 * on.scale, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    if (waterLeft) {
        on.painter.save();
        on.painter.setClipPath(shore, Qt::IntersectClip);
        on.painter.strokePath(*waterLeft, line);
        on.painter.restore();
        line = QPen(withAlpha(on.palette.ink, 0.55), 0.9 * on.scale);
    }
    if (derived.outlineIsAssumed) {
        line.setDashPattern({4.0, 2.5});
    }
    on.painter.strokePath(shore, line);
}

} // namespace chart
