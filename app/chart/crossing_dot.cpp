// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/crossing_dot.h"

#include "app/chart/key_letters.h"
#include "app/wording/tongue.h"
#include "core/reduction/crossing_check.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

namespace chart {

namespace {

constexpr double fullAt_m = 0.6; // a difference that gets the full size and colour of its side
constexpr double leastRadius = 2.6;
constexpr double fullRadius = 6.4;
constexpr double ringApart = 3.2;
constexpr double roomAbout = 15.0; // pixels that a dot keeps from the next

constexpr double boxWidth = 276.0;
constexpr double boxHeight = 70.0;
constexpr double keyPad = 10.0;
constexpr std::array keyShares{-1.0, -0.5, 0.0, 0.5, 1.0};

double radiusFor(double share, double scale) {
    return (leastRadius + (fullRadius - leastRadius) * std::abs(share)) * scale;
}

/// "-0.6 m" to "+0.6 m", "-2 ft" to "+2 ft": feet are rounded to whole ones.
QString keyWords(double share, const wording::Words& words) {
    if (share == 0.0) {
        return QStringLiteral("0");
    }
    const QString size = words.isMetric() ? wording::Tongue::number(std::abs(share) * fullAt_m, 1)
                                          : QString::number(std::lround(std::abs(share) * 2.0));
    return (share < 0.0 ? QStringLiteral("−") : QStringLiteral("+")) + size;
}

} // namespace

CrossingDot dotOf(const reduction::Crossing& crossing, double scale) {
    const double share = std::clamp(crossing.difference_m() / fullAt_m, -1.0, 1.0);
    return {share, radiusFor(share, scale), !reduction::isWithinOrder2(crossing)};
}

void drawDot(QPainter& painter, QPointF at, const CrossingDot& dot, const Palette& palette,
             double scale) {
    if (dot.isBeyond) {
        const double ring = dot.radius + ringApart * scale;
        painter.setBrush(palette.card);
        painter.setPen(QPen(palette.ink, 2.0 * scale));
        painter.drawEllipse(at, ring, ring);
    }
    painter.setPen(QPen(withAlpha(palette.card, 0.8), 2.6 * scale));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(at, dot.radius, dot.radius);
    painter.setPen(QPen(withAlpha(palette.ink, 0.85), 0.9 * scale));
    painter.setBrush(palette.difference(dot.share));
    painter.drawEllipse(at, dot.radius, dot.radius);
}

std::vector<std::size_t> crossingsShown(const ChartContent& content, const ViewFrame& view,
                                        double scale) {
    if (!content.derived.checked) {
        return {};
    }
    const auto& crossings = content.derived.checked->crossings;
    const geo::Box sight = view.box();
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < crossings.size(); ++i) {
        if (sight.holds(crossings[i].at)) {
            order.push_back(i);
        }
    }
    std::ranges::stable_sort(order, std::ranges::greater{}, [&crossings](std::size_t i) {
        return std::abs(crossings[i].difference_m());
    });
    // Taken ones by squares of the page as large as the room that each keeps about it.
    const double room = roomAbout * scale;
    std::map<std::pair<int, int>, std::vector<QPointF>> taken;
    std::vector<std::size_t> shown;
    for (const std::size_t i : order) {
        const QPointF at = view.toScreen(crossings[i].at);
        const int col = static_cast<int>(std::floor(at.x() / room));
        const int row = static_cast<int>(std::floor(at.y() / room));
        bool isCrowded = false;
        for (int c = col - 1; c <= col + 1; ++c) {
            for (int r = row - 1; r <= row + 1; ++r) {
                const auto square = taken.find({c, r});
                isCrowded = isCrowded || (square != taken.end() &&
                                          std::ranges::any_of(square->second, [&](QPointF other) {
                                              const QPointF way = other - at;
                                              return std::hypot(way.x(), way.y()) < room;
                                          }));
            }
        }
        if (!isCrowded) {
            taken[{col, row}].push_back(at);
            shown.push_back(i);
        }
    }
    std::ranges::reverse(shown);
    return shown;
}

QSizeF crossingKeySize(double scale) {
    return {boxWidth * scale, boxHeight * scale};
}

void drawCrossingKey(LayerContext& on, const QRectF& box) {
    const double s = on.scale;
    const wording::Words& words = on.content.words;
    on.painter.setPen(QPen(withAlpha(on.palette.ink, 0.28), 0.8 * s));
    on.painter.setBrush(withAlpha(on.palette.card, 0.90));
    on.painter.drawRect(box);
    const QPointF left = box.topLeft() + QPointF(keyPad * s, 0.0);
    drawFrom(on, left + QPointF(0.0, 14.0 * s),
             wording::Tongue::tr("crossings, later pass deeper by, %1").arg(words.depthUnit()),
             on.palette.faintInk);
    double x = left.x() + fullRadius * s;
    for (const double share : keyShares) {
        const QPointF at(x, box.top() + 34.0 * s);
        drawDot(on.painter, at, {share, radiusFor(share, s), false}, on.palette, s);
        drawFrom(on, at + QPointF((fullRadius + 3.0) * s, 0.0), keyWords(share, words),
                 on.palette.ink);
        x += (share == 0.0 ? 36.0 : 55.0) * s;
    }
    const QPointF ringed(left.x() + (fullRadius + ringApart) * s, box.top() + 55.0 * s);
    drawDot(on.painter, ringed, {1.0, 0.72 * fullRadius * s, true}, on.palette, s);
    drawFrom(on, ringed + QPointF((fullRadius + ringApart + 5.0) * s, 0.0),
             wording::Tongue::tr("beyond IHO S-44 order 2"), on.palette.ink);
}

} // namespace chart
