// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/sheet_parts.h"

#include "app/chart/chart_painter.h"
#include "app/chart/furniture.h"
#include "app/wording/cautions.h"
#include "app/wording/one_line.h"
#include "app/wording/planned_words.h"
#include "app/wording/tongue.h"
#include "core/marks/overnight.h"
#include "core/water/steps/day_cautions.h"

#include <algorithm>

namespace paper {

namespace {

constexpr double catchRowHeight = 40.0;

QString lightLine(const chart::ChartContent& content) {
    const light::SunTimes& light = content.planned->light;
    return wording::Tongue::tr("first light %1   sunrise %2   sunset %3   dark after %4")
        .arg(timeOf(content, light.civilDawn), timeOf(content, light.sunrise),
             timeOf(content, light.sunset), timeOf(content, light.civilDusk));
}

QString conditionsLine(const chart::ChartContent& content) {
    const marks::ExpectedDay& day = content.planned->plan.day;
    QString line =
        wording::Tongue::tr("from %1 to %2   level %3 against the chart")
            .arg(wording::Words::timeOfDay(day.start),
                 wording::Words::timeOfDay(day.end) +
                     (marks::isOvernight(day) ? wording::Tongue::tr(" the next day") : QString()),
                 content.words.levelChange(day.levelChange));
    if (day.windLater) {
        line += wording::Tongue::tr("   wind from %1: %2")
                    .arg(wording::Words::timeOfDay(day.windLater->at),
                         content.words.wind(day.windLater->wind));
    }
    if (day.waterTemperature) {
        line += wording::Tongue::tr("   water %1")
                    .arg(content.words.temperature(*day.waterTemperature));
    }
    return line;
}

/// What holds at every mark is said once for the day.
QStringList commonCautions(const std::vector<MarkOfDay>& ordered, const wording::Words& words) {
    QStringList common =
        ordered.empty() ? QStringList() : wording::cautionsOf(ordered.front().mark, words);
    for (const MarkOfDay& entry : ordered) {
        const QStringList own = wording::cautionsOf(entry.mark, words);
        common.removeIf([&own](const QString& caution) { return !own.contains(caution); });
    }
    return common;
}

QString movesOf(const marks::DayPlan& day, const wording::Words& words) {
    QStringList tail;
    if (!day.stops.empty()) {
        tail << wording::Tongue::tr("Moves, back to the launch included: %1.")
                    .arg(words.length(day.moves));
    }
    if (!day.leftOut.empty()) {
        QStringList ranks;
        for (const int rank : day.leftOut) {
            ranks << QString::number(rank);
        }
        tail << wording::Tongue::tr("Left out, no time or no way: mark %1.")
                    .arg(ranks.join(QStringLiteral(", ")));
    }
    return tail.join(QLatin1Char(' '));
}

QFont ashoreFont() {
    return chart::typeface(chart::TypeSize::normal, 1.5, chart::TypeStyle::bold);
}

} // namespace

QString timeOf(const chart::ChartContent& content, const std::optional<units::Moment>& moment) {
    return moment ? QString::fromStdString(units::timeOfDayText(*moment, content.water->clock))
                  : QStringLiteral("-");
}

std::vector<MarkOfDay> marksOfDay(const water::PlannedDay& planned) {
    std::vector<MarkOfDay> ordered;
    const auto ofRank = [&](int rank) {
        return std::find_if(planned.marks.begin(), planned.marks.end(),
                            [rank](const marks::Mark& mark) { return mark.rank == rank; });
    };
    for (const marks::DayStop& stop : planned.day.stops) {
        if (const auto mark = ofRank(stop.rank); mark != planned.marks.end()) {
            ordered.push_back({*mark, stop});
        }
    }
    if (ordered.empty()) {
        for (const marks::Mark& mark : planned.marks) {
            ordered.push_back({mark, std::nullopt});
        }
    }
    return ordered;
}

DayWords wordsOf(const chart::ChartContent& content, const std::vector<MarkOfDay>& ordered) {
    const water::PlannedDay& planned = *content.planned;
    DayWords out;
    out.cautions = wording::cautionsOf(planned, content.words);
    out.ofThisPlan = wording::basisOf(planned, content.words) + wording::notesOf(planned);
    if (const auto ashore = water::ashoreCaution(planned.plan.day)) {
        out.ashore = wording::said(*ashore, content.words);
        out.cautions.removeAll(out.ashore);
    } else if (QString grave = wording::windNotSaid(planned, content.words); !grave.isEmpty()) {
        const auto isInIt = [&grave](const QString& line) { return grave.contains(line); };
        out.cautions.removeIf(isInIt);
        out.ofThisPlan.removeIf(isInIt);
        out.ashore = std::move(grave);
    }
    out.atEveryMark = commonCautions(ordered, content.words);
    out.moves = movesOf(planned.day, content.words);
    out.rules = wording::rulesOf(planned);
    out.forTheFish = wording::fishCareOf(planned, content.words);
    out.smallPrint =
        wording::Tongue::tr("All times by the clock of %1. Ropes are worked out from depth "
                            "plus bow height. Depths carry "
                            "the ± given, 95 times in 100. "
                            "Drawn from your own soundings: not for navigation.")
            .arg(QString::fromStdString(content.water->clock.zone()));
    return out;
}

double ashoreHeight(const SheetWriter& sheet, const QString& caution) {
    return caution.isEmpty() ? 0.0
                             : heightOf(ashoreFont(), caution, sheet.room().width() - 24.0) + 30.0;
}

void writeAshore(SheetWriter& sheet, const QString& caution) {
    if (caution.isEmpty()) {
        return;
    }
    sheet.block(ashoreHeight(sheet, caution), [&](const QRectF& box) {
        const QRectF band = box.adjusted(0.0, 0.0, 0.0, -10.0);
        sheet.painter().fillRect(band, sheet.palette().ink);
        sheet.painter().setPen(sheet.palette().paper);
        sheet.painter().setFont(ashoreFont());
        sheet.painter().drawText(band.adjusted(12.0, 10.0, -12.0, -10.0),
                                 Qt::AlignCenter | Qt::TextWordWrap, caution);
    });
}

void writeHead(SheetWriter& sheet, const chart::ChartContent& content) {
    const marks::ExpectedDay& day = content.planned->plan.day;
    const auto title = chart::typeface(chart::TypeSize::normal, 1.7, chart::TypeStyle::bold);
    const auto normal = chart::typeface(chart::TypeSize::normal, 1.0);
    sheet.block(headHeight, [&](const QRectF& box) {
        QPainter& painter = sheet.painter();
        const chart::Palette& palette = sheet.palette();
        const double windWidth = 210.0;
        const QRectF left = box.adjusted(0.0, 0.0, -windWidth, 0.0);
        painter.setPen(palette.ink);
        painter.setFont(title);
        const QString name = QFontMetricsF(title).elidedText(wording::oneLine(content.water->name),
                                                             Qt::ElideRight, left.width());
        painter.drawText(QRectF(left.left(), left.top(), left.width(), 34.0),
                         Qt::AlignLeft | Qt::AlignVCenter, name);
        const QRectF wind(box.right() - windWidth, box.top(), windWidth, 52.0);
        double y = left.top() + 36.0;
        for (const QString& line :
             {wording::Words::day(day.day), conditionsLine(content), lightLine(content)}) {
            const double width = y < wind.bottom() ? left.width() : box.width();
            const bool isLong = QFontMetricsF(normal).horizontalAdvance(line) > width;
            painter.setFont(isLong ? chart::typeface(chart::TypeSize::small, 1.0) : normal);
            painter.drawText(QRectF(left.left(), y, width, 18.0), Qt::AlignLeft | Qt::AlignVCenter,
                             line);
            y += 18.0;
        }
        painter.setFont(normal);
        if (day.wind.from) {
            chart::drawWindArrow(painter, {wind.right() - 24.0, wind.center().y()}, 40.0,
                                 *day.wind.from, palette.ink, 2.4);
        }
        painter.drawText(wind.adjusted(0.0, 0.0, -54.0, 0.0),
                         Qt::AlignRight | Qt::AlignVCenter | Qt::TextWordWrap,
                         (day.wind.from ? wording::Tongue::tr("wind from\n") : QString()) +
                             content.words.wind(day.wind));
    });
}

void writeChart(SheetWriter& sheet, const chart::ChartContent& content, double height) {
    sheet.block(height, [&](const QRectF& box) {
        constexpr double scale = 0.82;
        chart::ChartContent small = content;
        small.shown = chart::usualLayers();
        small.backdrop.reset();
        small.shown.erase(chart::LayerKind::nextLines);
        small.selection.mark.reset();
        QPainter& painter = sheet.painter();
        painter.save();
        painter.translate(box.topLeft());
        chart::paintChart(painter, chart::wholeWater(small, box.size(), scale), small, scale);
        painter.restore();
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(sheet.palette().ink, 1.0));
        painter.drawRect(box);
    });
    sheet.space(chartTakes(height) - height);
}

void writeCatchTable(SheetWriter& sheet, int rows) {
    const double width = sheet.room().width();
    const std::vector<Column> columns{{wording::Tongue::tr("mark"), 0.09 * width},
                                      {wording::Tongue::tr("anchored"), 0.14 * width},
                                      {wording::Tongue::tr("rods, bait"), 0.20 * width},
                                      {wording::Tongue::tr("run, time"), 0.12 * width},
                                      {wording::Tongue::tr("species"), 0.17 * width},
                                      {wording::Tongue::tr("weight"), 0.13 * width},
                                      {wording::Tongue::tr("bait depth"), 0.15 * width}};
    sheet.heading(wording::Tongue::tr("Catches and blanks: every stay, also the blank ones"),
                  std::min(rows, 6) * catchRowHeight);
    // Rows high enough for a pencil in a boat.
    const std::vector<QStringList> empty(static_cast<std::size_t>(rows),
                                         QStringList{QStringLiteral(" \n ")});
    sheet.table(columns, empty);
}

int catchRowsIn(double height) {
    constexpr double headings = 70.0; // of the table and of its columns
    return std::max(0, static_cast<int>((height - headings) / catchRowHeight));
}

} // namespace paper
