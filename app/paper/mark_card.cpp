// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/mark_card.h"

#include "app/paper/sheet_parts.h"
#include "app/wording/cautions.h"
#include "app/wording/lie_words.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"

#include <algorithm>
#include <array>

namespace paper {

namespace {

constexpr double rowHeight = 19.0;
constexpr double headingHeight = 14.0;
constexpr double titleHeight = 24.0;
constexpr double below = 5.0;
constexpr double besideFrom = 700.0; // from this width on the rods stand beside the anchors
constexpr double between = 16.0;

/// What a row of the card says: who, where, how deep, and the figure to set.
using Row = std::array<QString, 4>;

/// Where its four cells begin, and where the last one ends.
struct Columns {
    std::array<double, 5> at{};
    [[nodiscard]] double width() const { return at.back() - at.front(); }
    /// \param last the cell that it reaches into; mostly itself.
    [[nodiscard]] QRectF cell(std::size_t i, std::size_t last, QPointF corner,
                              double height) const {
        return {corner.x() + at[i], corner.y(), at[last + 1] - at[i] - 4.0, height};
    }
};
constexpr Columns anchorColumns{{0.0, 54.0, 258.0, 328.0, 406.0}};
constexpr Columns rodColumns{{0.0, 36.0, 190.0, 262.0, 354.0}};

QFont headingFont() {
    return chart::typeface(chart::TypeSize::small, 1.0);
}

QFont titleFont() {
    return chart::typeface(chart::TypeSize::normal, 1.4, chart::TypeStyle::bold);
}

QString placeOf(const chart::ChartContent& content, geo::WaterPoint place) {
    return content.water->frame ? wording::Words::place(content.water->frame->toEarth(place))
                                : QString();
}

std::vector<Row> anchorRows(const chart::ChartContent& content, const marks::Mark& mark) {
    const wording::Words& words = content.words;
    const auto row = [&](const QString& name, const anchoring::Anchor& anchor) {
        return Row{name, placeOf(content, anchor.place), words.depth(anchor.depth),
                   words.length(anchor.rope)};
    };
    std::vector<Row> rows{row(wording::Tongue::tr("bow"), mark.anchors.bow)};
    if (mark.anchors.stern) {
        rows.push_back(row(wording::Tongue::tr("stern"), *mark.anchors.stern));
    }
    rows.push_back(
        {wording::Tongue::tr("boat"), wording::Words::place(mark.lonLat),
         QStringLiteral("%1 %2").arg(words.depth(mark.depth), words.plusMinus(mark.trust)),
         QString()});
    return rows;
}

std::vector<Row> rodRows(const chart::ChartContent& content, const marks::Mark& mark) {
    const wording::Words& words = content.words;
    std::vector<Row> rows;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        rows.push_back({QString::number(rows.size() + 1),
                        QStringLiteral("%1  %2").arg(wording::Words::bearing(rod.bearing),
                                                     words.length(rod.distance)),
                        words.depth(rod.depth), words.depth(rod.stopKnot)});
    }
    return rows;
}

QString howToLie(const chart::ChartContent& content, const MarkOfDay& entry) {
    QString how = wording::howToLie(entry.mark, content.words);
    if (const QString byHand = wording::laidByHand(entry.mark); !byHand.isEmpty()) {
        how += QStringLiteral(" (%1)").arg(byHand);
    }
    // On a day of one wind the head of the sheet says it.
    const bool turns = content.planned && content.planned->plan.day.windLater;
    return turns && entry.stop ? wording::Tongue::tr("%1 For wind %2.")
                                     .arg(how, content.words.wind(entry.stop->wind))
                               : how;
}

/// As many of the reasons as one line holds, the weightiest first; the first whole at any rate.
QString whyIn(const marks::Mark& mark, const wording::Words& words, double width) {
    const QFontMetricsF metrics(cardFont());
    QString line;
    for (const QString& reason : reasonsOf(mark, words)) {
        const QString longer = line.isEmpty() ? wording::Tongue::tr("Why: ") + reason
                                              : line + QStringLiteral("; ") + reason;
        if (!line.isEmpty() && metrics.horizontalAdvance(longer) > width) {
            break;
        }
        line = longer;
    }
    return line;
}

QStringList ownCautions(const marks::Mark& mark, const wording::Words& words,
                        const QStringList& saidBefore) {
    QStringList out;
    for (const QString& caution : wording::cautionsOf(mark, words)) {
        if (!saidBefore.contains(caution)) {
            out << wording::Tongue::tr("Caution: ") + caution;
        }
    }
    return out;
}

double tableHeight(std::size_t rows) {
    return rows == 0 ? 0.0 : headingHeight + rowHeight * static_cast<double>(rows);
}

/// The heights of what stands in a card.
struct CardShape {
    bool isBeside = true; ///< The rods beside the anchors.
    double anchors = 0.0;
    double lie = 0.0; ///< How to come to lie there.
    double rods = 0.0;
    double why = 0.0;
    double cautions = 0.0;
    [[nodiscard]] double whole() const {
        const double left = anchors + lie;
        return titleHeight + (isBeside ? std::max(left, rods) : left + rods) + why + cautions +
               below;
    }
};

CardShape shapeOf(const chart::ChartContent& content, const MarkOfDay& entry, double width,
                  const QStringList& saidBefore) {
    const marks::Mark& mark = entry.mark;
    CardShape shape;
    shape.isBeside = width >= besideFrom;
    shape.anchors = tableHeight(mark.anchors.stern ? 3 : 2);
    shape.lie = heightOf(cardFont(), howToLie(content, entry),
                         shape.isBeside ? anchorColumns.width() : width);
    shape.rods = tableHeight(mark.spread.rods.size());
    shape.why = heightOf(cardFont(), whyIn(mark, content.words, width), width);
    for (const QString& caution : ownCautions(mark, content.words, saidBefore)) {
        shape.cautions += heightOf(cardFont(true), caution, width);
    }
    return shape;
}

void drawTable(SheetWriter& sheet, const Columns& columns, const Row& headings,
               const std::vector<Row>& rows, QPointF at) {
    QPainter& painter = sheet.painter();
    painter.setPen(sheet.palette().ink);
    painter.setFont(headingFont());
    for (std::size_t i = 0; i < headings.size(); ++i) {
        painter.drawText(columns.cell(i, i, at, headingHeight), Qt::AlignLeft | Qt::AlignVCenter,
                         headings[i]);
    }
    double top = at.y() + headingHeight;
    for (const Row& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            painter.setFont(cardFont(i + 1 == row.size()));
            const std::size_t last = i + 2 == row.size() && row.back().isEmpty() ? i + 1 : i;
            painter.drawText(columns.cell(i, last, {at.x(), top}, rowHeight),
                             Qt::AlignLeft | Qt::AlignVCenter, row[i]);
        }
        top += rowHeight;
    }
}

QString timesOf(const chart::ChartContent& content, const MarkOfDay& entry) {
    if (!entry.stop) {
        return {};
    }
    const QString times =
        wording::Tongue::tr("%1 to %2")
            .arg(timeOf(content, entry.stop->arrive), timeOf(content, entry.stop->leave));
    const bool isFirstWithoutLaunch = entry.stop->move <= units::Length();
    return isFirstWithoutLaunch ? times
                                : wording::Tongue::tr("move %1, %2")
                                      .arg(content.words.length(entry.stop->move), times);
}

void drawTitle(SheetWriter& sheet, const chart::ChartContent& content, const MarkOfDay& entry,
               const QRectF& box) {
    QPainter& painter = sheet.painter();
    painter.setPen(QPen(sheet.palette().ink, 1.4));
    painter.drawLine(box.topLeft(), box.topRight());
    const QString when = timesOf(content, entry);
    const double whenWidth = QFontMetricsF(cardFont(true)).horizontalAdvance(when);
    painter.setFont(titleFont());
    const QString name = QFontMetricsF(titleFont())
                             .elidedText(QStringLiteral("%1  %2")
                                             .arg(entry.mark.rank)
                                             .arg(wording::calledBy(entry.mark, content.words)),
                                         Qt::ElideRight, box.width() - whenWidth - between);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, name);
    painter.setFont(cardFont(true));
    painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, when);
}

void drawWrapped(SheetWriter& sheet, const QFont& font, const QString& text, const QRectF& box) {
    sheet.painter().setPen(sheet.palette().ink);
    sheet.painter().setFont(font);
    sheet.painter().drawText(box, Qt::TextWordWrap, text);
}

} // namespace

QFont cardFont(bool isBold) {
    // 16 units of a quarter of a millimetre: 11.3 points.
    return chart::typeface(chart::TypeSize::normal, 1.14,
                           isBold ? chart::TypeStyle::bold : chart::TypeStyle::plain);
}

double cardHeight(const chart::ChartContent& content, const MarkOfDay& entry, double width,
                  const QStringList& saidBefore) {
    return shapeOf(content, entry, width, saidBefore).whole();
}

void writeCard(SheetWriter& sheet, const chart::ChartContent& content, const MarkOfDay& entry,
               const QStringList& saidBefore) {
    const marks::Mark& mark = entry.mark;
    const double width = sheet.room().width();
    const CardShape shape = shapeOf(content, entry, width, saidBefore);
    sheet.block(shape.whole(), [&](const QRectF& box) {
        drawTitle(sheet, content, entry, {box.left(), box.top(), width, titleHeight});
        double y = box.top() + titleHeight;
        drawTable(sheet, anchorColumns,
                  {QString(), wording::Tongue::tr("drop at"), wording::Tongue::tr("depth"),
                   wording::Tongue::tr("rope")},
                  anchorRows(content, mark), {box.left(), y});
        drawWrapped(sheet, cardFont(), howToLie(content, entry),
                    {box.left(), y + shape.anchors, shape.isBeside ? anchorColumns.width() : width,
                     shape.lie});
        const QPointF rods = shape.isBeside
                                 ? QPointF(box.left() + anchorColumns.width() + between, y)
                                 : QPointF(box.left(), y + shape.anchors + shape.lie);
        if (!mark.spread.rods.empty()) {
            drawTable(sheet, rodColumns,
                      {wording::Tongue::tr("rod"), wording::Tongue::tr("bearing, distance"),
                       wording::Tongue::tr("depth"), wording::Tongue::tr("stop knot")},
                      rodRows(content, mark), rods);
        }
        y = box.top() + shape.whole() - below - shape.cautions - shape.why;
        drawWrapped(sheet, cardFont(), whyIn(mark, content.words, width),
                    {box.left(), y, width, shape.why});
        y += shape.why;
        for (const QString& caution : ownCautions(mark, content.words, saidBefore)) {
            const double height = heightOf(cardFont(true), caution, width);
            drawWrapped(sheet, cardFont(true), caution, {box.left(), y, width, height});
            y += height;
        }
    });
}

} // namespace paper
