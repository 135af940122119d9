// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/contours_layer.h"

#include "app/chart/contour_runs.h"
#include "app/chart/depth_colours.h"
#include "app/chart/layers/backdrop_layer.h"
#include "app/chart/lettering.h"
#include "app/chart/todays_form.h"
#include "app/chart/water_path.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace chart {

namespace {

constexpr double fineFrom_pixelsPerMetre = 0.45;    // lines between the band edges appear from here
constexpr double letteredFrom_pixelsPerMetre = 1.3; // and are lettered from here

bool isEdge(const contours::Bands& bands, units::Depth depth) {
    return std::any_of(bands.edges().begin(), bands.edges().end(), [depth](units::Depth edge) {
        return std::abs((edge - depth).inMetres()) < 0.005;
    });
}

bool isWanted(const LayerContext& on, units::Depth depth) {
    return depth.inMetres() > 0.0 &&
           (isEdge(bandsOf(on.content), depth) ||
            on.view.pixelsPerMetre() >= fineFrom_pixelsPerMetre * on.scale);
}

/// What the line lies on: on an edge, between two bands, the deeper one; paler where a guess.
QColor groundOf(const LayerContext& on, const ContourRun& run) {
    const QColor band = colourOf(on.palette, bandsOf(on.content), run.depth);
    const QColor trusted = run.isGuess ? mixed(band, on.palette.paper, 0.6) : band;
    return mixed(trusted, on.palette.paper, 1.0 - depthOpacity(on.content));
}

/// Where a label sits on a line: a straight bit of it.
struct Seat {
    QPointF middle;
    double angle_deg = 0.0;
};

std::vector<Seat> seatsOn(const QPolygonF& line, double width) {
    constexpr double apart = 34.0; // in label widths
    std::vector<Seat> seats;
    double along = 0.0;
    double next = 2.0 * width;
    for (qsizetype i = 1; i < line.size(); ++i) {
        along += std::hypot(line[i].x() - line[i - 1].x(), line[i].y() - line[i - 1].y());
        if (along < next) {
            continue;
        }
        // The chord over one label width, against the way along the line.
        qsizetype j = i;
        double way = 0.0;
        while (j + 1 < line.size() && way < width) {
            way += std::hypot(line[j + 1].x() - line[j].x(), line[j + 1].y() - line[j].y());
            ++j;
        }
        const QPointF chord = line[j] - line[i];
        const double straight = std::hypot(chord.x(), chord.y());
        if (way >= width && straight > 0.95 * way && way < 3.0 * width) {
            double angle_deg = std::atan2(chord.y(), chord.x()) * 180.0 / std::numbers::pi;
            if (angle_deg > 90.0 || angle_deg <= -90.0) {
                angle_deg += angle_deg > 0.0 ? -180.0 : 180.0;
            }
            seats.push_back({line[i] + 0.5 * chord, angle_deg});
            next = along + apart * width;
        }
    }
    return seats;
}

} // namespace

void ContoursLayer::paint(LayerContext& on) const {
    if (!formOf(on.content.derived)) {
        return;
    }
    const contours::Bands& bands = bandsOf(on.content);
    const geo::Box sight = on.view.box();
    const auto runs = contourRuns(on.content.derived);
    for (const ContourRun& run : *runs) {
        if (!meet(run.box, sight) || !isWanted(on, run.depth)) {
            continue;
        }
        const bool edge = isEdge(bands, run.depth);
        const QColor line = lineOn(on.palette, groundOf(on, run));
        QPen pen(withAlpha(line, edge ? 0.62 : 0.34), (edge ? 1.0 : 0.7) * on.scale);
        if (run.isGuess) {
            pen.setDashPattern({5.0, 4.0});
        }
        on.painter.setPen(pen);
        on.painter.drawPolyline(screenLine(run.line, on.view));
    }
}

void ContoursLayer::letter(LayerContext& on) const {
    if (!formOf(on.content.derived)) {
        return;
    }
    const contours::Bands& bands = bandsOf(on.content);
    const QFont font = typeface(TypeSize::small, 0.9 * on.scale);
    const QFontMetricsF metrics(font);
    const geo::Box sight = on.view.box();
    const auto runs = contourRuns(on.content.derived);
    for (const ContourRun& run : *runs) {
        if (!meet(run.box, sight) || !isWanted(on, run.depth)) {
            continue;
        }
        const bool isFine = !isEdge(bands, run.depth);
        if (isFine && on.view.pixelsPerMetre() < letteredFrom_pixelsPerMetre * on.scale) {
            continue;
        }
        const QString text = on.content.words.shortDepthNumber(run.depth);
        const double width = metrics.horizontalAdvance(text) + 6.0 * on.scale;
        for (const Seat& seat : seatsOn(screenLine(run.line, on.view, 1.0), width)) {
            const QSizeF size(width, 1.6 * metrics.capHeight());
            if (on.labels.takeTurned(seat.middle, size, seat.angle_deg)) {
                drawText(on.painter, font, seat.middle, text,
                         on.palette.lettersOn(groundOf(on, run)), 2.2 * on.scale, seat.angle_deg);
            }
        }
    }
}

} // namespace chart
