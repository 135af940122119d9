// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/mark_block.h"

#include "app/chart/chart_painter.h"
#include "app/side_view/side_scene.h"
#include "app/wording/cautions.h"
#include "app/wording/lie_words.h"
#include "app/wording/reasons.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"
#include "app/wording/zone_words.h"

#include <algorithm>
#include <cmath>

namespace paper {

namespace {

constexpr double planSide = 66.0 * unitsPerMillimetre;
constexpr double sideHeight = 30.0 * unitsPerMillimetre;
constexpr double gap = 10.0;
/// A reason without a weight is told from this change on.
constexpr double worthTelling = 0.05;

QFont plain() {
    return chart::typeface(chart::TypeSize::small, 1.0);
}

QFont bold() {
    return chart::typeface(chart::TypeSize::small, 1.0, chart::TypeStyle::bold);
}

/// A line of the block: text, and whether it is set bold.
struct BlockLine {
    QString text;
    bool isBold = false;
};

QString anchorLine(const chart::ChartContent& content, const QString& name,
                   const anchoring::Anchor& anchor) {
    const QString place = content.water->frame
                              ? wording::Words::place(content.water->frame->toEarth(anchor.place))
                              : QString();
    return wording::Tongue::tr("%1 anchor   %2   in %3   rope %4")
        .arg(name, place, content.words.depth(anchor.depth), content.words.length(anchor.rope));
}

QString rodLine(const chart::ChartContent& content, int number, const rods::RodPlace& rod) {
    QString line =
        wording::Tongue::tr("rod %1   %2   %3   in %4   stop knot %5")
            .arg(number)
            .arg(wording::Words::bearing(rod.bearing), content.words.length(rod.distance),
                 content.words.depth(rod.depth), content.words.depth(rod.stopKnot));
    if (rod.over) {
        line += wording::Tongue::tr("   over %1").arg(wording::spoken(*rod.over));
    }
    return line;
}

std::vector<BlockLine> linesFor(const chart::ChartContent& content, const MarkOfDay& entry,
                                const QStringList& saidBefore) {
    const marks::Mark& mark = entry.mark;
    const wording::Words& words = content.words;
    const anchoring::AnchorSet& set = mark.anchors;
    std::vector<BlockLine> lines{
        {wording::Tongue::tr("the boat lies at %1, heading %2, in %3 %4")
             .arg(wording::Words::place(mark.lonLat), wording::Words::bearing(set.lie.heading),
                  words.depth(mark.depth), words.plusMinus(mark.trust))},
        {anchorLine(content, wording::Tongue::tr("bow"), set.bow), true}};
    if (set.stern) {
        lines.push_back({anchorLine(content, wording::Tongue::tr("stern"), *set.stern), true});
        lines.push_back({wording::Tongue::tr(
                             "drop the bow anchor, fall back on %1, lower the stern anchor, haul "
                             "the bow rope in to %2")
                             .arg(words.length(set.fallBackRope), words.length(set.bow.rope))});
    } else {
        lines.push_back({wording::swingOf(mark, words)});
    }
    if (entry.stop && content.planned && content.planned->plan.day.windLater) {
        lines.push_back({wording::Tongue::tr("for wind %1").arg(words.wind(entry.stop->wind))});
    }
    if (const QString byHand = wording::laidByHand(mark); !byHand.isEmpty()) {
        lines.push_back({byHand});
    }
    int number = 0;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        lines.push_back({rodLine(content, ++number, rod)});
    }
    lines.push_back(
        {wording::Tongue::tr("why: ") + reasonsOf(mark, words).join(QStringLiteral("; "))});
    for (const QString& caution : wording::cautionsOf(mark, words)) {
        if (!saidBefore.contains(caution)) {
            lines.push_back({wording::Tongue::tr("caution: ") + caution, true});
        }
    }
    lines.push_back({wording::Tongue::tr("runs and fish: "
                                         "………………………………………")});
    return lines;
}

double heightOf(const std::vector<BlockLine>& lines, double width) {
    double height = 0.0;
    for (const BlockLine& line : lines) {
        height += paper::heightOf(line.isBold ? bold() : plain(), line.text, width) + 3.0;
    }
    return height;
}

void drawLines(SheetWriter& sheet, const std::vector<BlockLine>& lines, const QRectF& box) {
    double y = box.top();
    for (const BlockLine& line : lines) {
        const QFont font = line.isBold ? bold() : plain();
        const double height = paper::heightOf(font, line.text, box.width());
        sheet.painter().setFont(font);
        sheet.painter().setPen(sheet.palette().ink);
        sheet.painter().drawText(QRectF(box.left(), y, box.width(), height), Qt::TextWordWrap,
                                 line.text);
        y += height + 3.0;
    }
}

/// Everything of the lie in a square, at a round scale that is written under it.
void drawPlan(SheetWriter& sheet, const chart::ChartContent& content, const marks::Mark& mark,
              const QRectF& box) {
    geo::Box reach;
    reach.take(mark.anchors.bow.place);
    if (mark.anchors.stern) {
        reach.take(mark.anchors.stern->place);
    }
    reach.take(mark.anchors.lie.centre);
    for (const rods::RodPlace& rod : mark.spread.rods) {
        reach.take(rod.place);
    }
    const double wanted_m = 1.45 * std::max({reach.width_m(), reach.height_m(), 20.0});
    const double denominator = roundScale(wanted_m, box.width());
    chart::ChartContent one = content;
    one.shown = {chart::LayerKind::depth, chart::LayerKind::contours, chart::LayerKind::structure,
                 chart::LayerKind::weed,  chart::LayerKind::closed,   chart::LayerKind::marks};
    one.selection.mark = mark.rank;
    chart::ViewFrame view = chart::ViewFrame::showing(reach, box.size(), 0.0);
    view = view.zoomed(unitsPerMetre(denominator) / view.pixelsPerMetre(),
                       {0.5 * box.width(), 0.5 * box.height()});
    QPainter& painter = sheet.painter();
    painter.save();
    painter.translate(box.topLeft());
    chart::paintChart(painter, view, one, 0.9);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(sheet.palette().ink, 1.0));
    painter.drawRect(box);
    chart::drawText(
        painter, chart::typeface(chart::TypeSize::small, 0.8),
        {box.center().x(), box.bottom() + 9.0},
        wording::Tongue::tr("1 : %1, north up").arg(wording::Tongue::number(denominator, 0)),
        {sheet.palette().faintInk, sheet.palette().paper}, 0.0);
}

} // namespace

QStringList reasonsOf(const marks::Mark& mark, const wording::Words& words) {
    std::vector<const marks::Factor*> factors;
    for (const marks::Factor& factor : mark.factors) {
        const bool counts = factor.weight > 0.0 || std::fabs(factor.times - 1.0) >= worthTelling;
        if (counts && !wording::said(factor.because, words).isEmpty()) {
            factors.push_back(&factor);
        }
    }
    std::stable_sort(factors.begin(), factors.end(),
                     [](const auto* a, const auto* b) { return a->times > b->times; });
    QStringList reasons;
    for (std::size_t i = 0; i < std::min<std::size_t>(factors.size(), 3); ++i) {
        reasons << wording::said(factors[i]->because, words);
    }
    return reasons;
}

void writeMark(SheetWriter& sheet, const chart::ChartContent& content, const MarkOfDay& entry,
               bool drawn, const QStringList& saidBefore) {
    const marks::Mark& mark = entry.mark;
    const std::vector<BlockLine> lines = linesFor(content, entry, saidBefore);
    const double left = drawn ? planSide + 1.5 * gap : 0.0;
    const double textHeight = heightOf(lines, sheet.room().width() - left);
    const double body = drawn ? std::max(textHeight, planSide + 20.0) : textHeight;
    const double whole = 30.0 + body + (drawn ? gap + sideHeight : 0.0) + 1.5 * gap;
    QString title = wording::Tongue::tr("Mark %1   %2")
                        .arg(mark.rank)
                        .arg(wording::calledBy(mark, content.words));
    if (entry.stop) {
        title += wording::Tongue::tr("   %1 to %2")
                     .arg(QString::fromStdString(
                              units::timeOfDayText(entry.stop->arrive, content.water->clock)),
                          QString::fromStdString(
                              units::timeOfDayText(entry.stop->leave, content.water->clock)));
    }
    sheet.block(whole, [&](const QRectF& box) {
        QPainter& painter = sheet.painter();
        painter.setPen(QPen(sheet.palette().ink, 1.2));
        painter.drawLine(box.topLeft(), box.topRight());
        painter.setFont(chart::typeface(chart::TypeSize::normal, 1.0, chart::TypeStyle::bold));
        painter.drawText(QRectF(box.left(), box.top() + 4.0, box.width(), 22.0),
                         Qt::AlignLeft | Qt::AlignVCenter, title);
        const double top = box.top() + 30.0;
        if (drawn) {
            drawPlan(sheet, content, mark, QRectF(box.left(), top, planSide, planSide));
        }
        drawLines(sheet, lines, QRectF(box.left() + left, top, box.width() - left, textHeight));
        if (drawn) {
            const QRectF side(box.left(), top + body + gap, box.width(), sideHeight);
            side_view::paintScene(painter, side_view::sceneOfMark(content, mark.rank), side, 0.9);
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(sheet.palette().ink, 1.0));
            painter.drawRect(side);
        }
    });
}

} // namespace paper
