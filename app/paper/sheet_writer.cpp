// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/sheet_writer.h"

#include "app/wording/tongue.h"

#include <QFontMetricsF>
#include <QPageLayout>

#include <algorithm>

namespace paper {

namespace {

constexpr double cellPad = 4.0;

QFont plain() {
    return chart::typeface(chart::TypeSize::small, 1.0);
}

QFont bold() {
    return chart::typeface(chart::TypeSize::small, 1.0, chart::TypeStyle::bold);
}

} // namespace

double heightOf(const QFont& font, const QString& text, double width) {
    return QFontMetricsF(font)
        .boundingRect(QRectF(0.0, 0.0, width, 1e6), Qt::TextWordWrap, text)
        .height();
}

SheetWriter::SheetWriter(QPagedPaintDevice& device, const SheetLayout& layout, QString footer)
    : device_(device), palette_(chart::Palette::grey()), room_(layout.room()),
      footer_(std::move(footer)), footerTop_(room_.bottom() + 3.0 * unitsPerMillimetre),
      y_(room_.top()) {
    const bool isWide = layout.page_mm.width() > layout.page_mm.height();
    const QSizeF upright = isWide ? layout.page_mm.transposed() : layout.page_mm;
    device_.setPageLayout(QPageLayout(QPageSize(upright, QPageSize::Millimeter),
                                      isWide ? QPageLayout::Landscape : QPageLayout::Portrait,
                                      QMarginsF(), QPageLayout::Millimeter));
    if (!painter_.begin(&device_)) {
        return;
    }
    const double perUnit = device_.width() / (layout.page_mm.width() * unitsPerMillimetre);
    painter_.scale(perUnit, perUnit);
    painter_.setRenderHint(QPainter::Antialiasing, true);
    drawFooter();
}

SheetWriter::~SheetWriter() = default;

void SheetWriter::drawFooter() {
    painter_.save();
    painter_.setFont(chart::typeface(chart::TypeSize::small, 0.85));
    painter_.setPen(palette_.faintInk);
    const QRectF line(room_.left(), footerTop_, room_.width(), 5.0 * unitsPerMillimetre);
    painter_.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, footer_);
    painter_.drawText(line, Qt::AlignRight | Qt::AlignVCenter,
                      wording::Tongue::tr("page %1").arg(page_));
    painter_.restore();
}

void SheetWriter::turnPage() {
    device_.newPage();
    ++page_;
    y_ = room_.top();
    drawFooter();
}

void SheetWriter::need(double height) {
    if (y_ > room_.top() && y_ + height > room_.bottom()) {
        turnPage();
    }
}

void SheetWriter::block(double height, const std::function<void(const QRectF&)>& draw) {
    need(height);
    painter_.save();
    draw(QRectF(room_.left(), y_, room_.width(), height));
    painter_.restore();
    y_ += height;
}

void SheetWriter::paragraph(const QFont& font, const QString& text, double indent) {
    const double width = room_.width() - indent;
    const double height = heightOf(font, text, width);
    block(height + 3.0, [&](const QRectF& box) {
        painter_.setFont(font);
        painter_.setPen(palette_.ink);
        painter_.drawText(box.adjusted(indent, 0.0, 0.0, 0.0), Qt::TextWordWrap, text);
    });
}

void SheetWriter::heading(const QString& text, double following) {
    const QFont font = chart::typeface(chart::TypeSize::normal, 1.0, chart::TypeStyle::bold);
    need(30.0 + following);
    space(y_ > room_.top() ? 8.0 : 0.0);
    paragraph(font, text);
}

void SheetWriter::rule() {
    painter_.setPen(QPen(palette_.faintInk, 0.8));
    painter_.drawLine(QPointF(room_.left(), y_), QPointF(room_.right(), y_));
    y_ += 4.0;
}

double SheetWriter::rowHeight(const std::vector<Column>& columns, const QStringList& row,
                              const QFont& font) const {
    double height = 0.0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        height = std::max(height, heightOf(font, row.value(static_cast<qsizetype>(i)),
                                           columns[i].width - 2.0 * cellPad));
    }
    return height + 2.0 * cellPad;
}

void SheetWriter::drawRow(const std::vector<Column>& columns, const QStringList& row,
                          const QFont& font, double height) {
    painter_.setFont(font);
    painter_.setPen(palette_.ink);
    double x = room_.left();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        painter_.drawText(QRectF(x + cellPad, y_ + cellPad, columns[i].width - 2.0 * cellPad,
                                 height - 2.0 * cellPad),
                          Qt::TextWordWrap, row.value(static_cast<qsizetype>(i)));
        x += columns[i].width;
    }
    y_ += height;
    painter_.setPen(QPen(palette_.sand, 0.8));
    painter_.drawLine(QPointF(room_.left(), y_), QPointF(x, y_));
}

void SheetWriter::table(const std::vector<Column>& columns, const std::vector<QStringList>& rows) {
    QStringList headings;
    for (const Column& column : columns) {
        headings << column.heading;
    }
    const double headHeight = rowHeight(columns, headings, bold());
    bool needsHead = true;
    for (const QStringList& row : rows) {
        const double height = rowHeight(columns, row, plain());
        const int before = page_;
        need(height + (needsHead ? headHeight : 0.0));
        if (needsHead || page_ != before) {
            drawRow(columns, headings, bold(), headHeight);
            needsHead = false;
        }
        drawRow(columns, row, plain(), height);
    }
}

} // namespace paper
