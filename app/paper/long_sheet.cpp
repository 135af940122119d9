// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/long_sheet.h"

#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"

namespace paper {

namespace {

constexpr double chartHeight = 96.0 * unitsPerMillimetre;
constexpr std::size_t drawnMarks = 4; // marks that get a plan and a side view
constexpr int catchRows = 10;

void writeOverview(SheetWriter& sheet, const chart::ChartContent& content,
                   const std::vector<MarkOfDay>& ordered, const DayWords& said) {
    const wording::Words& words = content.words;
    std::vector<QStringList> rows;
    for (const MarkOfDay& entry : ordered) {
        const marks::Mark& mark = entry.mark;
        const QString when = entry.stop ? wording::Tongue::tr("%1 to %2")
                                              .arg(timeOf(content, entry.stop->arrive),
                                                   timeOf(content, entry.stop->leave))
                                        : QStringLiteral("-");
        const QString move = entry.stop ? words.length(entry.stop->move) : QString();
        rows.push_back(
            {QString::number(mark.rank), when, move, wording::calledBy(mark, words),
             QStringLiteral("%1 %2").arg(words.depth(mark.depth), words.plusMinus(mark.trust)),
             wording::Words::place(mark.lonLat),
             wording::Words::bearing(mark.anchors.lie.heading)});
    }
    const double width = sheet.room().width();
    sheet.heading(wording::Tongue::tr("The day"), 60.0);
    sheet.table({{wording::Tongue::tr("mark"), 0.07 * width},
                 {wording::Tongue::tr("arrive, leave"), 0.16 * width},
                 {wording::Tongue::tr("move"), 0.10 * width},
                 {wording::Tongue::tr("place"), 0.18 * width},
                 {wording::Tongue::tr("depth today"), 0.16 * width},
                 {wording::Tongue::tr("position"), 0.23 * width},
                 {wording::Tongue::tr("heading"), 0.10 * width}},
                rows);
    if (!said.moves.isEmpty()) {
        sheet.space(4.0);
        sheet.paragraph(chart::typeface(chart::TypeSize::small, 1.0), said.moves);
    }
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

} // namespace

void writeLongSheet(SheetWriter& sheet, const chart::ChartContent& content) {
    const std::vector<MarkOfDay> ordered = marksOfDay(*content.planned);
    const DayWords said = wordsOf(content, ordered);
    writeAshore(sheet, said.ashore);
    writeHead(sheet, content);
    writeChart(sheet, content, chartHeight);
    writeOverview(sheet, content, ordered, said);
    writeList(sheet, wording::Tongue::tr("Of this plan"), said.ofThisPlan);
    writeList(sheet, wording::Tongue::tr("Cautions"), said.cautions);
    writeList(sheet, wording::Tongue::tr("At every mark"), said.atEveryMark);
    writeList(sheet, wording::Tongue::tr("Rules of this water"), said.rules);
    writeList(sheet, wording::Tongue::tr("For the fish"), said.forTheFish);
    sheet.space(4.0);
    sheet.paragraph(chart::typeface(chart::TypeSize::small, 1.0), said.smallPrint);
    for (std::size_t i = 0; i < ordered.size(); ++i) {
        writeMark(sheet, content, ordered[i], i < drawnMarks, said.cautions + said.atEveryMark);
    }
    writeCatchTable(sheet, catchRows);
}

} // namespace paper
