// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/hours_picture.h"

#include "app/chart/lettering.h"
#include "app/chart/palette.h"
#include "app/wording/tongue.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <ranges>

namespace paper {

namespace {

constexpr double hoursOfDay = 24.0;
constexpr double leastTop = 0.1; // of the axis, fish per 10 rod-hours
constexpr int labelEvery_h = 3;
/// A band that reaches far beyond the curve is cut: it says "nobody knows" anyway.
constexpr double mostOverCurve = 3.0;

/// Where the curve stands, and what its axes reach to.
struct Plot {
    QPainter& painter;
    const chart::Palette& palette;
    double scale = 1.0;
    QRectF area;
    double most = 1.0;
    double step = 0.5; ///< Between two lines of the rate.

    [[nodiscard]] double x(double hour) const {
        return area.left() + hour / hoursOfDay * area.width();
    }
    [[nodiscard]] double y(double rate) const {
        return area.bottom() - std::min(rate / most, 1.0) * area.height();
    }
};

/// Round steps of which three to six fill the axis.
double roundStep(double most) {
    const double power = std::pow(10.0, std::floor(std::log10(most / 3.0)));
    const double lead = most / 3.0 / power;
    return power * (lead >= 5.0 ? 5.0 : lead >= 2.0 ? 2.0 : 1.0);
}

double mostOf(const rates::HourRates& hours) {
    double high = leastTop;
    double rate = leastTop;
    for (const rates::HourRate& point : hours.points) {
        if (point.rate) {
            high = std::max(high, point.rate->high);
            rate = std::max(rate, point.rate->per10RodHours);
        }
    }
    return std::min(high, mostOverCurve * rate);
}

void write(const Plot& on, const QRectF& box, int align, const QString& text, const QColor& colour,
           chart::TypeStyle style = chart::TypeStyle::plain) {
    on.painter.setFont(chart::typeface(chart::TypeSize::small, on.scale, style));
    on.painter.setPen(colour);
    on.painter.drawText(box, align | Qt::AlignVCenter, text);
}

void paintAxes(const Plot& on) {
    const double s = on.scale;
    const QColor line = chart::withAlpha(on.palette.ink, 0.14);
    for (int k = 0; k * on.step <= on.most * 1.0001; ++k) {
        const double y = on.y(k * on.step);
        on.painter.setPen(QPen(line, s));
        on.painter.drawLine(QPointF(on.area.left(), y), QPointF(on.area.right(), y));
        write(on, QRectF(on.area.left() - 46.0 * s, y - 8.0 * s, 40.0 * s, 16.0 * s),
              Qt::AlignRight, wording::Tongue::shortNumber(k * on.step, 2), on.palette.ink);
    }
    for (int hour = 0; hour <= 24; hour += labelEvery_h) {
        on.painter.setPen(QPen(line, s));
        on.painter.drawLine(QPointF(on.x(hour), on.area.top()),
                            QPointF(on.x(hour), on.area.bottom()));
        write(on, QRectF(on.x(hour) - 20.0 * s, on.area.bottom() + 6.0 * s, 40.0 * s, 16.0 * s),
              Qt::AlignHCenter, QString::number(hour), on.palette.ink);
    }
    write(on, QRectF(on.area.left(), on.area.bottom() + 22.0 * s, on.area.width(), 16.0 * s),
          Qt::AlignHCenter, wording::Tongue::tr("hour of the day"), on.palette.faintInk);
    on.painter.save();
    on.painter.translate(on.area.left() - 54.0 * s, on.area.center().y());
    on.painter.rotate(-90.0);
    write(on, QRectF(-100.0 * s, -8.0 * s, 200.0 * s, 16.0 * s), Qt::AlignHCenter,
          wording::Tongue::tr("fish per 10 rod-hours"), on.palette.faintInk);
    on.painter.restore();
}

void paintLight(const Plot& on, const water::FishedLight& light) {
    const auto stripe = [&](const rates::HourSpan& span, const QString& name) {
        const double width = std::max(on.x(span.to) - on.x(span.from), 3.0 * on.scale);
        const QRectF box(on.x(span.from), on.area.top(), width, on.area.height());
        on.painter.fillRect(box, chart::withAlpha(on.palette.sand, 0.8));
        write(on,
              QRectF(box.center().x() - 40.0 * on.scale, on.area.top() - 16.0 * on.scale,
                     80.0 * on.scale, 15.0 * on.scale),
              Qt::AlignHCenter, name, on.palette.faintInk);
    };
    stripe(light.sunrise, wording::Tongue::tr("sunrise"));
    stripe(light.sunset, wording::Tongue::tr("sunset"));
}

void paintRun(const Plot& on, const std::vector<rates::HourRate>& run) {
    QPolygonF line;
    QPolygonF band;
    for (const rates::HourRate& point : run) {
        line << QPointF(on.x(point.hour), on.y(point.rate->per10RodHours));
        band << QPointF(on.x(point.hour), on.y(point.rate->high));
    }
    for (const rates::HourRate& point : run | std::views::reverse) {
        band << QPointF(on.x(point.hour), on.y(point.rate->low));
    }
    on.painter.setPen(Qt::NoPen);
    on.painter.setBrush(chart::withAlpha(on.palette.plum, 0.24));
    on.painter.drawPolygon(band);
    on.painter.setBrush(Qt::NoBrush);
    on.painter.setPen(
        QPen(on.palette.plum, 2.2 * on.scale, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    if (line.size() == 1) {
        on.painter.drawPoint(line.front()); // an hour by itself
    } else {
        on.painter.drawPolyline(line);
    }
}

/// Where the best hours are, as a range; past midnight in two.
void paintBest(const Plot& on, const rates::HourSpan& best) {
    const double s = on.scale;
    const auto bar = [&](double from, double to) {
        on.painter.fillRect(
            QRectF(on.x(from), on.area.bottom() - 2.0 * s, on.x(to) - on.x(from), 5.0 * s),
            on.palette.rust);
    };
    if (best.from < best.to) {
        bar(best.from, best.to);
    } else if (best.from > best.to) {
        bar(best.from, hoursOfDay);
        bar(0.0, best.to);
    }
}

} // namespace

std::vector<std::vector<rates::HourRate>> fishedRuns(const rates::HourRates& hours) {
    std::vector<std::vector<rates::HourRate>> runs;
    bool hangsTogether = false;
    for (const rates::HourRate& point : hours.points) {
        if (!point.rate) {
            hangsTogether = false;
            continue;
        }
        if (!hangsTogether) {
            runs.emplace_back();
        }
        runs.back().push_back(point);
        hangsTogether = true;
    }
    return runs;
}

void paintHours(QPainter& painter, const QRectF& box, const HoursShown& shown, chart::Inks inks,
                double scale) {
    const chart::Palette& palette = chart::Palette::of(inks);
    const double step = roundStep(mostOf(shown.hours));
    const double most = step * std::ceil(mostOf(shown.hours) / step);
    const Plot on{painter, palette,
                  scale,   box.adjusted(64.0 * scale, 46.0 * scale, -14.0 * scale, -42.0 * scale),
                  most,    step};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.fillRect(box, palette.card);
    write(on, QRectF(box.left() + 8.0 * scale, box.top() + 5.0 * scale, box.width(), 18.0 * scale),
          Qt::AlignLeft, shown.title, palette.ink, chart::TypeStyle::bold);
    if (shown.light) {
        paintLight(on, *shown.light);
    }
    paintAxes(on);
    for (const auto& run : fishedRuns(shown.hours)) {
        paintRun(on, run);
    }
    if (const auto best = rates::bestHours(shown.hours)) {
        paintBest(on, *best);
    }
    painter.restore();
}

QImage renderHours(const HoursShown& shown, QSize size) {
    QImage picture(size, QImage::Format_RGB32);
    QPainter painter(&picture);
    paintHours(painter, QRectF(picture.rect()), shown, chart::Inks::light,
               std::clamp(size.width() / 640.0, 0.75, 4.0));
    return picture;
}

} // namespace paper
