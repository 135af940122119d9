// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/one_sheet.h"

#include "app/paper/mark_card.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <numeric>

namespace paper {

namespace {

constexpr double leastChart = 30.0 * unitsPerMillimetre;
/// Where the day takes more than one sheet, and no page has to be saved.
constexpr double roomyChart = 60.0 * unitsPerMillimetre;
constexpr double mostChart = 100.0 * unitsPerMillimetre;
constexpr double afterParagraph = 3.0; // as SheetWriter leaves
constexpr int mostCatchRows = 10;

/// Ends as a sentence does: the fishery's own words may not.
QString sentence(const QString& line) {
    return line.endsWith(QLatin1Char('.')) ? line : line + QLatin1Char('.');
}

/// A heading that runs on into its text, or a list of what can kill, a line each.
struct Passage {
    QString heading;
    QStringList lines;
    bool isList = false;
    [[nodiscard]] QStringList paragraphs() const {
        if (!isList) {
            QStringList sentences;
            std::ranges::transform(lines, std::back_inserter(sentences), sentence);
            return {QStringLiteral("%1: %2").arg(heading, sentences.join(QLatin1Char(' ')))};
        }
        QStringList out;
        for (const QString& line : lines) {
            out << QStringLiteral("•  ") + line;
        }
        return out;
    }
};

/// What can kill first and line by line; the rest run on.
std::vector<Passage> passagesOf(const DayWords& said) {
    std::vector<Passage> out{{wording::Tongue::tr("Cautions"), said.cautions, true},
                             {wording::Tongue::tr("At every mark"), said.atEveryMark, true},
                             {wording::Tongue::tr("Rules of this water"), said.rules, false},
                             {wording::Tongue::tr("For the fish"), said.forTheFish, false},
                             {wording::Tongue::tr("Of this plan"), said.ofThisPlan, false}};
    if (!said.moves.isEmpty()) {
        out.back().lines << said.moves;
    }
    std::erase_if(out, [](const Passage& passage) { return passage.lines.isEmpty(); });
    return out;
}

double heightOf(const Passage& passage, double width) {
    double height = passage.isList ? paper::heightOf(cardFont(true), passage.heading, width) + 8.0 +
                                         afterParagraph
                                   : 0.0;
    for (const QString& paragraph : passage.paragraphs()) {
        height += paper::heightOf(cardFont(), paragraph, width) + afterParagraph;
    }
    return height;
}

/// How high the chart may be: as high as leaves all the rest on two pages, and cards whole.
double chartHeightFor(const QRectF& room, double above, const std::vector<double>& cards,
                      double rest) {
    const double page = room.height();
    for (std::size_t onFront = 0; onFront <= cards.size(); ++onFront) {
        const auto split = cards.begin() + static_cast<std::ptrdiff_t>(onFront);
        const double front = above + chartTakes(0.0) + std::accumulate(cards.begin(), split, 0.0);
        const double back = std::accumulate(split, cards.end(), rest);
        if (front + leastChart > page) {
            break;
        }
        if (back <= page) {
            return std::min(mostChart, page - front);
        }
    }
    return roomyChart;
}

void writePassage(SheetWriter& sheet, const Passage& passage) {
    if (passage.isList) {
        sheet.need(2.0 * heightOf(Passage{passage.heading, {passage.lines.front()}, true}, 1e6));
        sheet.space(8.0);
        sheet.paragraph(cardFont(true), passage.heading);
    }
    for (const QString& paragraph : passage.paragraphs()) {
        sheet.paragraph(cardFont(), paragraph);
    }
}

} // namespace

void writeOneSheet(SheetWriter& sheet, const chart::ChartContent& content) {
    const std::vector<MarkOfDay> ordered = marksOfDay(*content.planned);
    const DayWords said = wordsOf(content, ordered);
    const QStringList saidBefore = said.cautions + said.atEveryMark;
    const double width = sheet.room().width();
    const QFont small = chart::typeface(chart::TypeSize::small, 1.0);
    std::vector<double> cards;
    for (const MarkOfDay& entry : ordered) {
        cards.push_back(cardHeight(content, entry, width, saidBefore));
    }
    const std::vector<Passage> passages = passagesOf(said);
    double rest = paper::heightOf(small, said.smallPrint, width) + afterParagraph;
    for (const Passage& passage : passages) {
        rest += heightOf(passage, width);
    }
    writeAshore(sheet, said.ashore);
    writeHead(sheet, content);
    writeChart(
        sheet, content,
        chartHeightFor(sheet.room(), ashoreHeight(sheet, said.ashore) + headHeight, cards, rest));
    for (const MarkOfDay& entry : ordered) {
        writeCard(sheet, content, entry, saidBefore);
    }
    for (const Passage& passage : passages) {
        writePassage(sheet, passage);
    }
    sheet.paragraph(small, said.smallPrint);
    const int rows = std::min(mostCatchRows, catchRowsIn(sheet.room().bottom() - sheet.y()));
    if (rows > 1) {
        writeCatchTable(sheet, rows);
    }
}

} // namespace paper
