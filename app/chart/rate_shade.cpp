// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/rate_shade.h"

#include "app/chart/key_letters.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace chart {

namespace {

constexpr double palest = 0.10;
constexpr double darkest = 0.78;
constexpr double hole = 1.7;      // radius of what is left out of the shade
constexpr double roughGap = 11.0; // between holes
constexpr double hardlyGap = 6.0;
constexpr double slantGap = 9.0;
constexpr double rowHeight = 19.0;
constexpr double pad = 10.0;
constexpr double boxWidth = 208.0;
constexpr std::array shares{1.0, 0.5, 0.0};

double gapOf(Sureness sureness) {
    return sureness == Sureness::rough ? roughGap : hardlyGap;
}

} // namespace

QColor shadeOf(const Palette& palette, double per10RodHours, double most) {
    const double share = most > 0.0 ? std::clamp(per10RodHours / most, 0.0, 1.0) : 0.0;
    return mixed(palette.card, palette.plum, palest + share * (darkest - palest));
}

void breakUp(LayerContext& on, const QPainterPath& path, Sureness sureness) {
    if (sureness == Sureness::sure) {
        return;
    }
    // In rows that are shifted by half, fixed to the page: a pattern and no thing of the water.
    const double gap = gapOf(sureness) * on.scale;
    const QRectF box = path.boundingRect().intersected(QRectF(QPointF(), on.view.size()));
    QPainterPath holes;
    bool isShifted = false;
    for (double y = gap * std::floor(box.top() / gap); y <= box.bottom(); y += 0.8 * gap) {
        for (double x = gap * std::floor(box.left() / gap) + (isShifted ? 0.5 * gap : 0.0);
             x <= box.right(); x += gap) {
            holes.addEllipse(QPointF(x, y), hole * on.scale, hole * on.scale);
        }
        isShifted = !isShifted;
    }
    on.painter.save();
    on.painter.setClipPath(path, Qt::IntersectClip);
    on.painter.fillPath(holes, on.palette.card);
    on.painter.restore();
}

void slant(LayerContext& on, const QPainterPath& path) {
    const double gap = slantGap * on.scale;
    const QRectF box = path.boundingRect().intersected(QRectF(QPointF(), on.view.size()));
    QPainterPath lines;
    for (double x = gap * std::floor((box.left() - box.height()) / gap); x <= box.right();
         x += gap) {
        lines.moveTo(x, box.bottom());
        lines.lineTo(x + box.height(), box.top());
    }
    on.painter.save();
    on.painter.setClipPath(path, Qt::IntersectClip);
    on.painter.strokePath(lines, QPen(withAlpha(on.palette.plum, 0.45), 0.8 * on.scale));
    on.painter.restore();
}

QSizeF rateKeySize(const LayerContext& on) {
    return QSizeF(boxWidth, 2.0 * pad + 7.0 * rowHeight + 6.0) * on.scale;
}

void drawRateKey(LayerContext& on, const QRectF& box) {
    const double s = on.scale;
    const double most = on.content.rates->most();
    on.painter.setPen(QPen(withAlpha(on.palette.ink, 0.28), 0.8 * s));
    on.painter.setBrush(withAlpha(on.palette.card, 0.94));
    on.painter.drawRect(box);
    const double left = box.left() + pad * s;
    double y = box.top() + pad * s;
    const double swatch = 30.0 * s;
    const auto row = [&](const QString& words, const auto& draw) {
        QPainterPath sample;
        sample.addRect(QRectF(left, y, swatch, (rowHeight - 3.0) * s));
        draw(sample);
        on.painter.strokePath(sample, QPen(withAlpha(on.palette.ink, 0.5), 0.7 * s));
        drawFrom(on, {left + swatch + 8.0 * s, y + 0.42 * rowHeight * s}, words, on.palette.ink);
        y += rowHeight * s;
    };
    drawFrom(on, {left, y + 0.42 * rowHeight * s},
             wording::Tongue::tr("fish per 10 rod-hours, steadied"), on.palette.faintInk);
    y += rowHeight * s;
    for (const double share : shares) {
        row(wording::Words::rate(share * most), [&](const QPainterPath& sample) {
            on.painter.fillPath(sample, shadeOf(on.palette, share * most, most));
        });
    }
    y += 6.0 * s;
    const QColor middling = shadeOf(on.palette, 0.7 * most, most);
    for (const Sureness sureness : {Sureness::rough, Sureness::hardly}) {
        row(sureness == Sureness::rough ? wording::Tongue::tr("sure to within itself")
                                        : wording::Tongue::tr("hardly known"),
            [&](const QPainterPath& sample) {
                on.painter.fillPath(sample, middling);
                breakUp(on, sample, sureness);
            });
    }
    row(wording::Tongue::tr("not tried"), [&](const QPainterPath& sample) {
        on.painter.fillPath(sample, on.palette.card);
        slant(on, sample);
    });
}

} // namespace chart
