// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/day_sheet.h"

#include "app/chart/chart_painter.h"
#include "app/chart/furniture.h"
#include "app/paper/mark_block.h"
#include "app/paper/pdf_file.h"
#include "app/paper/sheet_writer.h"
#include "app/wording/cautions.h"
#include "app/wording/planned_words.h"
#include "core/water/day_cautions.h"

#include <algorithm>

namespace paper {

namespace {

constexpr double chartHeight = 96.0 * unitsPerMillimetre;
constexpr std::size_t drawnMarks = 4; // marks that get a plan and a side view

QString timeOf(const chart::ChartContent& content, const std::optional<units::Moment>& moment) {
    return moment ? QString::fromStdString(units::timeOfDayText(*moment, content.water->clock))
                  : QStringLiteral("-");
}

QString hourOf(std::chrono::seconds sinceMidnight) {
    const auto minutes = sinceMidnight.count() / 60;
    return QStringLiteral("%1:%2")
        .arg(minutes / 60, 2, 10, QLatin1Char('0'))
        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString lightLine(const chart::ChartContent& content) {
    const light::SunTimes& light = content.planned->light;
    return QStringLiteral("first light %1   sunrise %2   sunset %3   dark after %4")
        .arg(timeOf(content, light.civilDawn), timeOf(content, light.sunrise),
             timeOf(content, light.sunset), timeOf(content, light.civilDusk));
}

QString conditionsLine(const chart::ChartContent& content) {
    const marks::ExpectedDay& day = content.planned->plan.day;
    QString line =
        QStringLiteral("from %1 to %2   level %3 against the chart")
            .arg(hourOf(day.start), hourOf(day.end), content.words.levelChange(day.levelChange));
    if (day.waterTemperature) {
        line += QStringLiteral("   water %1").arg(content.words.temperature(*day.waterTemperature));
    }
    return line;
}

void writeHead(SheetWriter& sheet, const chart::ChartContent& content) {
    const marks::ExpectedDay& day = content.planned->plan.day;
    const auto title = chart::typeface(chart::TypeSize::normal, 1.7, chart::TypeStyle::bold);
    const auto normal = chart::typeface(chart::TypeSize::normal, 1.0);
    sheet.block(92.0, [&](const QRectF& box) {
        QPainter& painter = sheet.painter();
        const chart::Palette& palette = sheet.palette();
        const double windWidth = 210.0;
        const QRectF left = box.adjusted(0.0, 0.0, -windWidth, 0.0);
        painter.setPen(palette.ink);
        painter.setFont(title);
        const QString name = QFontMetricsF(title).elidedText(
            QString::fromStdString(content.water->name), Qt::ElideRight, left.width());
        painter.drawText(QRectF(left.left(), left.top(), left.width(), 34.0),
                         Qt::AlignLeft | Qt::AlignVCenter, name);
        painter.setFont(normal);
        double y = left.top() + 36.0;
        for (const QString& line :
             {wording::Words::day(day.day), conditionsLine(content), lightLine(content)}) {
            painter.drawText(QRectF(left.left(), y, left.width(), 18.0),
                             Qt::AlignLeft | Qt::AlignVCenter, line);
            y += 18.0;
        }
        const QRectF wind(box.right() - windWidth, box.top(), windWidth, 52.0);
        chart::drawWindArrow(painter, {wind.right() - 24.0, wind.center().y()}, 40.0, day.wind.from,
                             palette.ink, 2.4);
        painter.drawText(wind.adjusted(0.0, 0.0, -54.0, 0.0),
                         Qt::AlignRight | Qt::AlignVCenter | Qt::TextWordWrap,
                         QStringLiteral("wind from\n") + content.words.wind(day.wind));
    });
}

void writeChart(SheetWriter& sheet, const chart::ChartContent& content) {
    sheet.block(chartHeight, [&](const QRectF& box) {
        constexpr double scale = 0.82;
        chart::ChartContent small = content;
        small.shown = chart::usualLayers();
        small.backdrop.reset();
        small.shown.erase(chart::LayerKind::nextLines);
        small.selectedMark.reset();
        QPainter& painter = sheet.painter();
        painter.save();
        painter.translate(box.topLeft());
        chart::paintChart(painter, chart::wholeWater(small, box.size(), scale), small, scale);
        painter.restore();
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(sheet.palette().ink, 1.0));
        painter.drawRect(box);
    });
    sheet.space(8.0);
}

/// The marks in the order of the day, with what the day says of each; by rank without a day.
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

void writeOverview(SheetWriter& sheet, const chart::ChartContent& content,
                   const std::vector<MarkOfDay>& ordered) {
    const wording::Words& words = content.words;
    std::vector<QStringList> rows;
    for (const MarkOfDay& entry : ordered) {
        const marks::Mark& mark = entry.mark;
        const QString when = entry.stop ? QStringLiteral("%1 to %2")
                                              .arg(timeOf(content, entry.stop->arrive),
                                                   timeOf(content, entry.stop->leave))
                                        : QStringLiteral("-");
        const QString move = entry.stop ? words.length(entry.stop->move) : QString();
        rows.push_back(
            {QString::number(mark.rank), when, move, nameOf(mark),
             QStringLiteral("%1 %2").arg(words.depth(mark.depth), words.plusMinus(mark.trust)),
             wording::Words::place(mark.lonLat),
             wording::Words::bearing(mark.anchors.lie.heading)});
    }
    const double width = sheet.room().width();
    sheet.heading(QStringLiteral("The day"), 60.0);
    sheet.table({{QStringLiteral("mark"), 0.07 * width},
                 {QStringLiteral("arrive, leave"), 0.16 * width},
                 {QStringLiteral("move"), 0.10 * width},
                 {QStringLiteral("section"), 0.18 * width},
                 {QStringLiteral("depth today"), 0.16 * width},
                 {QStringLiteral("position"), 0.23 * width},
                 {QStringLiteral("heading"), 0.10 * width}},
                rows);
    const marks::DayPlan& day = content.planned->day;
    QStringList tail;
    if (!day.stops.empty()) {
        tail << QStringLiteral("Moves, back to the launch included: %1.")
                    .arg(words.length(day.moves));
    }
    if (!day.leftOut.empty()) {
        QStringList ranks;
        for (const int rank : day.leftOut) {
            ranks << QString::number(rank);
        }
        tail << QStringLiteral("Left out, no time or no way: mark %1.")
                    .arg(ranks.join(QStringLiteral(", ")));
    }
    if (!tail.isEmpty()) {
        sheet.space(4.0);
        sheet.paragraph(chart::typeface(chart::TypeSize::small, 1.0), tail.join(QLatin1Char(' ')));
    }
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

/// A list under its heading, each line once on the whole sheet; nothing where there is none.
void writeList(SheetWriter& sheet, const QString& heading, const QStringList& lines) {
    if (lines.isEmpty()) {
        return;
    }
    sheet.heading(heading, 20.0);
    for (const QString& line : lines) {
        sheet.paragraph(chart::typeface(chart::TypeSize::normal, 1.0),
                        QStringLiteral("•  ") + line);
    }
}

/// What nobody must overlook: white on black, across the page, before anything else.
void writeAshore(SheetWriter& sheet, const QString& caution) {
    const QFont font = chart::typeface(chart::TypeSize::normal, 1.5, chart::TypeStyle::bold);
    const double height = heightOf(font, caution, sheet.room().width() - 24.0) + 20.0;
    sheet.block(height + 10.0, [&](const QRectF& box) {
        const QRectF band(box.left(), box.top(), box.width(), height);
        sheet.painter().fillRect(band, sheet.palette().ink);
        sheet.painter().setPen(sheet.palette().paper);
        sheet.painter().setFont(font);
        sheet.painter().drawText(band.adjusted(12.0, 10.0, -12.0, -10.0),
                                 Qt::AlignCenter | Qt::TextWordWrap, caution);
    });
}

void writeCatchTable(SheetWriter& sheet) {
    constexpr int lines = 10;
    const double width = sheet.room().width();
    const std::vector<Column> columns{
        {QStringLiteral("mark"), 0.09 * width},       {QStringLiteral("anchored"), 0.14 * width},
        {QStringLiteral("rods, bait"), 0.20 * width}, {QStringLiteral("run, time"), 0.12 * width},
        {QStringLiteral("species"), 0.17 * width},    {QStringLiteral("weight"), 0.13 * width},
        {QStringLiteral("bait depth"), 0.15 * width}};
    sheet.heading(QStringLiteral("Catches and blanks: every stay, also the blank ones"), 240.0);
    // Rows high enough for a pencil in a boat.
    const std::vector<QStringList> rows(lines, QStringList{QStringLiteral(" \n ")});
    sheet.table(columns, rows);
}

} // namespace

base::Result<int> paintDaySheet(QPagedPaintDevice& device, const chart::ChartContent& content) {
    if (!content.planned || !content.water) {
        return base::fail(base::ErrorKind::wrongUse, "nothing is planned", "day sheet",
                          "work out the marks first");
    }
    if (content.age.isPlanOld || content.age.isMapOld) {
        return base::fail(base::ErrorKind::wrongUse, "the marks are older than the water",
                          "day sheet", "work them out anew first");
    }
    chart::ChartContent grey = content;
    grey.isGrey = true;
    SheetWriter sheet(
        device, SheetLayout::on(device.pageLayout().pageSize()),
        QStringLiteral("%1, %2").arg(QString::fromStdString(content.water->name),
                                     wording::Words::day(content.planned->plan.day.day)));
    if (!sheet.isOpen()) {
        return base::fail(base::ErrorKind::unwritableOutput, "the pages cannot be drawn",
                          "day sheet", "choose another printer or file");
    }
    const std::vector<MarkOfDay> ordered = marksOfDay(*content.planned);
    const water::PlannedDay& planned = *content.planned;
    QStringList cautions = wording::cautionsOf(planned, grey.words);
    if (const auto ashore = water::ashoreCaution(planned.plan.day.wind.speed)) {
        const QString sentence = wording::said(*ashore, grey.words);
        writeAshore(sheet, sentence);
        cautions.removeAll(sentence);
    }
    writeHead(sheet, grey);
    writeChart(sheet, grey);
    writeOverview(sheet, grey, ordered);
    writeList(sheet, QStringLiteral("Of this plan"),
              wording::basisOf(planned, grey.words) + wording::notesOf(planned));
    writeList(sheet, QStringLiteral("Cautions"), cautions);
    const QStringList common = commonCautions(ordered, grey.words);
    writeList(sheet, QStringLiteral("At every mark"), common);
    writeList(sheet, QStringLiteral("Rules of this water"), wording::rulesOf(planned));
    writeList(sheet, QStringLiteral("For the fish"), wording::fishCareOf(planned, grey.words));
    sheet.space(4.0);
    sheet.paragraph(chart::typeface(chart::TypeSize::small, 1.0),
                    QStringLiteral("Ropes are worked out from depth plus bow height. Depths carry "
                                   "the ± given, 95 times in 100. "
                                   "Drawn from your own soundings: not for navigation."));
    for (std::size_t i = 0; i < ordered.size(); ++i) {
        writeMark(sheet, grey, ordered[i], i < drawnMarks, cautions + common);
    }
    writeCatchTable(sheet);
    return sheet.pages();
}

base::Result<int> saveDaySheet(const std::filesystem::path& path,
                               const chart::ChartContent& content) {
    return savePdf(path, "day sheet",
                   [&](QPagedPaintDevice& device) { return paintDaySheet(device, content); });
}

} // namespace paper
