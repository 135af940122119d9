// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/furniture.h"

#include "app/chart/ashore_banner.h"
#include "app/chart/change_sign.h"
#include "app/chart/crossing_dot.h"
#include "app/chart/depth_colours.h"
#include "app/chart/key_letters.h"
#include "app/chart/key_room.h"
#include "app/chart/lettering.h"
#include "app/chart/never_fished.h"
#include "app/chart/rate_shade.h"
#include "app/chart/todays_form.h"
#include "app/wording/tongue.h"
#include "core/wind/beaufort.h"

#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

namespace chart {

namespace {

constexpr double edge = 16.0;      // from the edge of the page
constexpr double rowHeight = 21.0; // of the key
constexpr double keyPad = 10.0;
constexpr double levelLine = 16.0; // height of the line that tells the level

bool isAtOtherLevel(const ChartContent& content) {
    const auto& form = formOf(content.derived);
    return form && form->rise != units::Length();
}

QPen penOf(const QColor& colour, double width) {
    return {colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

void drawCard(LayerContext& on, const QRectF& box) {
    on.painter.setPen(penOf(withAlpha(on.palette.ink, 0.28), 0.8 * on.scale));
    on.painter.setBrush(withAlpha(on.palette.card, 0.90));
    on.painter.drawRect(box);
}

void drawNorth(LayerContext& on, const QRectF& box) {
    const QPointF top(box.center().x(), box.top());
    const double s = on.scale;
    QPainterPath needle;
    needle.moveTo(top);
    needle.lineTo(top + QPointF(5.0 * s, 24.0 * s));
    needle.lineTo(top + QPointF(0.0, 19.0 * s));
    needle.closeSubpath();
    QPainterPath other;
    other.moveTo(top);
    other.lineTo(top + QPointF(-5.0 * s, 24.0 * s));
    other.lineTo(top + QPointF(0.0, 19.0 * s));
    other.closeSubpath();
    on.painter.fillPath(needle, on.palette.ink);
    on.painter.strokePath(other, penOf(on.palette.ink, 1.0 * s));
    drawText(on.painter, typeface(TypeSize::small, s), top + QPointF(0.0, 33.0 * s),
             wording::Tongue::tr("N"), {on.palette.ink, on.palette.paper}, 2.0 * s);
}

QString windLine(const logbook::Wind& wind) {
    if (!wind.speed) {
        return wording::Tongue::tr("look at the forecast");
    }
    const int force = wind::beaufortForce(*wind.speed);
    const auto name = wind::beaufortName(force);
    return wording::Tongue::tr("force %1, %2")
        .arg(force)
        .arg(wording::Tongue::ofCore(std::string(name)));
}

QString laterLine(const marks::LaterWind& later, const wording::Words& words) {
    return wording::Tongue::tr("from %1 %2")
        .arg(wording::Words::timeOfDay(later.at), words.wind(later.wind));
}

void drawWind(LayerContext& on, const QRectF& box) {
    const marks::ExpectedDay& day = on.content.planned->plan.day;
    const logbook::Wind& wind = day.wind;
    const double s = on.scale;
    drawCard(on, box);
    const WindArrow arrow = windArrowIn(box, s);
    on.painter.setBrush(Qt::NoBrush);
    on.painter.setPen(QPen(withAlpha(on.palette.ink, 0.35), 1.0 * s));
    on.painter.drawEllipse(arrow.middle, arrow.reach, arrow.reach);
    if (wind.from) {
        drawWindArrow(on.painter, arrow.middle, 2.0 * arrow.reach - 4.0 * s, *wind.from,
                      on.palette.ink, 2.0 * s);
    }
    const QPointF left = box.topLeft() + QPointF(56.0 * s, 0.0);
    drawFrom(on, left + QPointF(0.0, 17.0 * s), on.content.words.wind(wind), on.palette.ink);
    drawFrom(on, left + QPointF(0.0, 35.0 * s), windLine(wind), on.palette.faintInk);
    if (day.windLater) {
        drawFrom(on, left + QPointF(0.0, 53.0 * s), laterLine(*day.windLater, on.content.words),
                 on.palette.ink);
    }
}

void drawScale(LayerContext& on, const QRectF& box) {
    const double s = on.scale;
    const units::Length length = roundLength(on.content.words, on.view.pixelsPerMetre(), 150.0 * s);
    const double width = length.inMetres() * on.view.pixelsPerMetre();
    const QPointF left(box.left() + 10.0 * s, box.bottom() - 12.0 * s);
    drawCard(on, box);
    on.painter.fillRect(QRectF(left.x(), left.y() - 2.0 * s, 0.5 * width, 4.0 * s), on.palette.ink);
    on.painter.setPen(penOf(on.palette.ink, 1.0 * s));
    on.painter.setBrush(on.palette.card);
    on.painter.drawRect(QRectF(left.x() + 0.5 * width, left.y() - 2.0 * s, 0.5 * width, 4.0 * s));
    const bool isFoot = !on.content.words.isMetric();
    QString text = on.content.words.length(length);
    if (!isFoot) {
        text.replace(QStringLiteral(".0 "), QStringLiteral(" "));
    }
    drawFrom(on, left + QPointF(0.0, -14.0 * s), text, on.palette.ink);
}

/// A sample of the hatching that a guess gets.
void drawGuessSample(LayerContext& on, const QRectF& box) {
    on.painter.save();
    on.painter.setClipRect(box, Qt::IntersectClip);
    on.painter.fillRect(box, mixed(on.palette.depthAt(0.55), on.palette.paper, 0.65));
    QPainterPath lines;
    for (double x = box.left() - box.height(); x < box.right(); x += 6.4 * on.scale) {
        lines.moveTo(x, box.bottom());
        lines.lineTo(x + box.height(), box.top());
    }
    on.painter.strokePath(lines, penOf(withAlpha(on.palette.ink, 0.45), 0.8 * on.scale));
    on.painter.restore();
    on.painter.setBrush(Qt::NoBrush);
    on.painter.setPen(penOf(withAlpha(on.palette.ink, 0.5), 0.7 * on.scale));
    on.painter.drawRect(box);
}

void drawKey(LayerContext& on, const QRectF& box) {
    const double s = on.scale;
    const contours::Bands& bands = bandsOf(on.content);
    const wording::Words& words = on.content.words;
    drawCard(on, box);
    const double left = box.left() + keyPad * s;
    double y = box.top() + 16.0 * s;
    drawFrom(on, {left, y}, wording::Tongue::tr("depth, %1").arg(words.depthUnit()),
             on.palette.faintInk);
    if (isAtOtherLevel(on.content)) {
        y += levelLine * s;
        drawFrom(on, {left, y},
                 wording::Tongue::tr("level %1")
                     .arg(words.levelChange(formOf(on.content.derived)->rise)),
                 on.palette.faintInk);
    }
    y += 14.0 * s;
    const double swatch = 26.0 * s;
    for (std::size_t i = 0; i < bands.count(); ++i) {
        const QRectF sample(left, y, swatch, rowHeight * s);
        on.painter.fillRect(sample, mixed(on.palette.paper, on.palette.band(i, bands.count()),
                                          strengthOf(on.content, LayerKind::depth)));
        const QPointF beside(left + swatch + 8.0 * s, y + 0.5 * rowHeight * s);
        const auto to = bands.to(i);
        const QString range =
            to ? wording::Tongue::tr("%1 to %2")
                     .arg(words.shortDepthNumber(bands.from(i)), words.shortDepthNumber(*to))
               : wording::Tongue::tr("over %1").arg(words.shortDepthNumber(bands.from(i)));
        drawFrom(on, beside, range, on.palette.ink);
        const bool isLimit = to && std::abs((*to - bands.limit()).inMetres()) < 0.005;
        if (isLimit) {
            on.painter.setPen(penOf(on.palette.rust, 1.6 * s));
            on.painter.drawLine(QPointF(left, y + rowHeight * s),
                                QPointF(box.right() - keyPad * s, y + rowHeight * s));
        }
        y += rowHeight * s;
    }
    on.painter.setBrush(Qt::NoBrush);
    on.painter.setPen(penOf(withAlpha(on.palette.ink, 0.5), 0.7 * s));
    on.painter.drawRect(QRectF(left, y - rowHeight * s * static_cast<double>(bands.count()), swatch,
                               rowHeight * s * static_cast<double>(bands.count())));
    y += 15.0 * s;
    drawFrom(on, {left, y},
             wording::Tongue::tr("limit %1").arg(words.shortDepthNumber(bands.limit())),
             on.palette.rust);
    y += 13.0 * s;
    drawGuessSample(on, QRectF(left, y, swatch, 0.8 * rowHeight * s));
    drawFrom(on, {left + swatch + 8.0 * s, y + 0.4 * rowHeight * s}, wording::Tongue::tr("a guess"),
             on.palette.ink);
    if (showsNeverFished(on.content)) {
        y += rowHeight * s;
        const QString sign(neverFishedSign);
        drawFrom(on, {left + 0.5 * swatch - 5.0 * s, y + 0.4 * rowHeight * s}, sign,
                 on.palette.ink);
        drawFrom(on, {left + swatch + 8.0 * s, y + 0.4 * rowHeight * s},
                 wording::Tongue::tr("never fished"), on.palette.ink);
    }
}

double scaleWidthOf(const LayerContext& on) {
    const units::Length length =
        roundLength(on.content.words, on.view.pixelsPerMetre(), 150.0 * on.scale);
    return std::max(length.inMetres() * on.view.pixelsPerMetre() + 20.0 * on.scale,
                    74.0 * on.scale);
}

/// Where a card of `size` hides the least water and none of `others`: at the upper left, the upper
/// right below north, the lower left above the scale, or at the foot beside it. Nothing where there
/// is no room.
std::optional<QRectF> driest(const LayerContext& on, QSizeF size,
                             const std::vector<FurniturePiece>& others) {
    const double s = on.scale;
    const QRectF page(QPointF(0.0, 0.0), on.view.size());
    const double left = edge * s;
    const double foot = page.bottom() - edge * s - size.height();
    const std::array corners{
        QPointF(left, edge * s), QPointF(page.right() - size.width() - (edge + 36.0) * s, edge * s),
        QPointF(left, foot - 46.0 * s), QPointF(2.0 * edge * s + scaleWidthOf(on), foot)};
    const auto waterIn = [&](const QRectF& card) {
        int wet = 0;
        for (int i = 0; i <= 8; ++i) {
            for (int j = 0; j <= 4; ++j) {
                const QPointF at(card.x() + card.width() * i / 8.0,
                                 card.y() + card.height() * j / 4.0);
                wet += on.content.derived.outline->contains(on.view.toWater(at)) ? 1 : 0;
            }
        }
        return wet;
    };
    std::optional<QRectF> best;
    int least = std::numeric_limits<int>::max();
    for (const QPointF corner : corners) {
        const QRectF card(corner, size);
        const bool isFree =
            page.contains(card) && std::ranges::none_of(others, [&](const FurniturePiece& piece) {
                return piece.box.intersects(card);
            });
        const int wet = isFree ? waterIn(card) : least;
        if (wet < least) {
            least = wet;
            best = card;
        }
    }
    return best;
}

double keyHeight(const ChartContent& content, double scale) {
    return ((isAtOtherLevel(content) ? levelLine : 0.0) + 16.0 + 14.0 + 15.0 + 13.0 +
            0.8 * rowHeight + keyPad + (showsNeverFished(content) ? rowHeight : 0.0) +
            rowHeight * static_cast<double>(bandsOf(content).count())) *
           scale;
}

} // namespace

bool keyHasRoom(const ChartContent& content, QSizeF page, double scale) {
    return formOf(content.derived) && page.height() > keyHeight(content, scale) + 90.0 * scale;
}

double keyWidth(double scale) {
    return (112.0 + 2.0 * keyPad) * scale;
}

units::Length roundLength(const wording::Words& words, double pixelsPerMetre, double most) {
    const double unit_m = words.isMetric() ? 1.0 : units::Length::feet(1.0).inMetres();
    const double inUnits = most / (pixelsPerMetre * unit_m);
    const double power = std::pow(10.0, std::floor(std::log10(inUnits)));
    const double lead = inUnits / power;
    const double round = lead >= 5.0 ? 5.0 : lead >= 2.0 ? 2.0 : 1.0;
    return units::Length::metres(round * power * unit_m);
}

WindArrow windArrowIn(const QRectF& box, double scale) {
    return {box.topLeft() + QPointF(28.0 * scale, 0.5 * box.height()), 20.0 * scale};
}

std::optional<WindArrow> windArrowOf(const ChartContent& content, const ViewFrame& view) {
    if (!content.planned || !content.shown.contains(LayerKind::furniture)) {
        return std::nullopt;
    }
    QPainter nothing;
    LabelSpace labels(QRectF(QPointF(0.0, 0.0), view.size()));
    const LayerContext on{nothing,          view, content, Palette::of(content.inks), labels,
                          content.typeScale};
    for (const FurniturePiece& piece : furnitureOf(on)) {
        if (piece.isWind) {
            return windArrowIn(piece.box, content.typeScale);
        }
    }
    return std::nullopt;
}

void drawWindArrow(QPainter& painter, QPointF middle, double side, units::Bearing from,
                   const QColor& colour, double width) {
    const double half = 0.5 * side;
    painter.save();
    painter.translate(middle);
    painter.rotate(from.opposite().inDegrees());
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawLine(QPointF(0.0, half), QPointF(0.0, -half));
    painter.drawLine(QPointF(0.0, -half), QPointF(0.26 * side, -half + 0.32 * side));
    painter.drawLine(QPointF(0.0, -half), QPointF(-0.26 * side, -half + 0.32 * side));
    painter.restore();
}

std::vector<FurniturePiece> furnitureOf(const LayerContext& on) {
    const double s = on.scale;
    const QRectF page(QPointF(0.0, 0.0), on.view.size());
    std::vector<FurniturePiece> pieces;
    if (!on.content.derived.outline) {
        return pieces;
    }
    pieces.push_back(
        {QRectF(page.right() - (edge + 26.0) * s, edge * s, 20.0 * s, 42.0 * s), drawNorth});
    pieces.push_back(
        {QRectF(edge * s, page.bottom() - (edge + 38.0) * s, scaleWidthOf(on), 38.0 * s),
         drawScale});
    if (auto banner = ashoreBanner(on)) {
        pieces.push_back(std::move(*banner));
    }
    if (keyHasRoom(on.content, page.size(), s)) {
        const double height = keyHeight(on.content, s);
        pieces.push_back({QRectF(page.right() - edge * s - keyWidth(s),
                                 page.bottom() - edge * s - height, keyWidth(s), height),
                          drawKey});
    }
    const auto add = [&](QSizeF size, auto draw, bool isWind = false) {
        if (const auto card = driest(on, size, pieces)) {
            pieces.push_back({*card, draw, isWind});
        }
    };
    if (on.content.rates && on.content.shown.contains(LayerKind::rates)) {
        add(rateKeySize(on), drawRateKey);
    }
    // It is the plan's, and belongs to its marks.
    if (on.content.planned && on.content.shown.contains(LayerKind::marks)) {
        const QFont font = typeface(TypeSize::small, s);
        const marks::ExpectedDay& day = on.content.planned->plan.day;
        double text = std::max(boxOf(font, on.content.words.wind(day.wind), {}).width(),
                               boxOf(font, windLine(day.wind), {}).width());
        if (day.windLater) {
            text = std::max(text,
                            boxOf(font, laterLine(*day.windLater, on.content.words), {}).width());
        }
        add({text + 66.0 * s, (day.windLater ? 70.0 : 52.0) * s}, drawWind, true);
    }
    if (on.content.derived.checked && !on.content.derived.checked->crossings.empty() &&
        on.content.shown.contains(LayerKind::crossings)) {
        add(crossingKeySize(s), drawCrossingKey);
    }
    if (on.content.years && on.content.shown.contains(LayerKind::change)) {
        add(changeKeySize(s), drawChangeKey);
    }
    return pieces;
}

} // namespace chart
