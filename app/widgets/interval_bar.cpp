// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/interval_bar.h"

#include <QPainter>

#include <algorithm>

namespace widgets {

namespace {
constexpr double nameShare = 0.40;
constexpr int gap = 8;
constexpr int rowPad = 4;
constexpr double smallShare = 0.9; // of the usual type
} // namespace

IntervalBar::IntervalBar(QPalette::ColorRole ink, QWidget* parent) : QWidget(parent), ink_(ink) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void IntervalBar::setRows(std::vector<Interval> rows, double most) {
    rows_ = std::move(rows);
    most_ = most > 0.0 ? most : 1.0;
    QStringList spoken;
    for (const Interval& row : rows_) {
        spoken += row.sentence.isEmpty()
                      ? QStringLiteral("%1: %2").arg(row.name, row.words)
                      : QStringLiteral("%1: %2, %3").arg(row.name, row.words, row.sentence);
    }
    setAccessibleDescription(spoken.join(QStringLiteral("; ")));
    updateGeometry();
    update();
}

QFont IntervalBar::smallFont() const {
    QFont small = font();
    small.setPointSizeF(smallShare * font().pointSizeF());
    return small;
}

int IntervalBar::rowHeight() const {
    return QFontMetrics(smallFont()).height() + rowPad;
}

int IntervalBar::sentenceHeight(const Interval& row, int width) const {
    return row.sentence.isEmpty() ? 0
                                  : QFontMetrics(smallFont())
                                            .boundingRect(QRect(0, 0, width, QWIDGETSIZE_MAX),
                                                          Qt::TextWordWrap, row.sentence)
                                            .height() +
                                        rowPad;
}

int IntervalBar::heightForWidth(int width) const {
    int height = 0;
    for (const Interval& row : rows_) {
        height += rowHeight() + sentenceHeight(row, width);
    }
    return height;
}

QSize IntervalBar::sizeHint() const {
    return {320, heightForWidth(320)};
}

QSize IntervalBar::minimumSizeHint() const {
    return {200, rowHeight() * static_cast<int>(rows_.size())};
}

void IntervalBar::paintRow(QPainter& painter, const Interval& row, double top, double right) const {
    const QColor letters = palette().color(QPalette::WindowText);
    const QColor ink = palette().color(ink_);
    const double left = nameShare * width();
    const double middle = top + 0.5 * rowHeight();
    const auto at = [&](double value) {
        return left + (right - left) * std::clamp(value / most_, 0.0, 1.0);
    };
    QColor ground = letters;
    ground.setAlphaF(0.10F);
    QColor spread = ink;
    spread.setAlphaF(0.35F);
    const QRectF nameBox(0.0, top, left - gap, rowHeight());
    painter.setPen(letters);
    painter.drawText(nameBox, Qt::AlignVCenter | Qt::AlignLeft,
                     painter.fontMetrics().elidedText(row.name, Qt::ElideRight,
                                                      static_cast<int>(nameBox.width())));
    painter.drawText(QRectF(right, top, width() - right - 2.0, rowHeight()),
                     Qt::AlignVCenter | Qt::AlignRight, row.words);
    painter.fillRect(QRectF(left, middle - 3.0, right - left, 6.0), ground);
    if (row.isKnown && row.high <= row.low) {
        painter.fillRect(QRectF(left, middle - 3.0, at(row.value) - left, 6.0), ink);
    } else if (row.isKnown) {
        painter.fillRect(QRectF(at(row.low), middle - 3.0, at(row.high) - at(row.low), 6.0),
                         spread);
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink);
        painter.drawEllipse(QPointF(at(row.value), middle), 4.0, 4.0);
    }
}

void IntervalBar::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(smallFont());
    int wordsWidth = 0;
    for (const Interval& row : rows_) {
        wordsWidth = std::max(wordsWidth, painter.fontMetrics().horizontalAdvance(row.words));
    }
    double top = 0.0;
    for (const Interval& row : rows_) {
        paintRow(painter, row, top, width() - wordsWidth - 2.0 * gap);
        top += rowHeight();
        const int below = sentenceHeight(row, width());
        if (below > 0) {
            painter.setPen(palette().color(QPalette::PlaceholderText));
            painter.drawText(QRectF(0.0, top, width(), below), Qt::TextWordWrap, row.sentence);
        }
        top += below;
    }
}

} // namespace widgets
