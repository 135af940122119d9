// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/interval_bar.h"

#include <QPainter>

#include <algorithm>

namespace widgets {

namespace {
constexpr int rowHeight = 19;
constexpr double nameShare = 0.40;
constexpr int gap = 8;
} // namespace

IntervalBar::IntervalBar(const QColor& ink, QWidget* parent) : QWidget(parent), ink_(ink) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void IntervalBar::setRows(std::vector<Interval> rows, double most) {
    rows_ = std::move(rows);
    most_ = most > 0.0 ? most : 1.0;
    QStringList spoken;
    for (const Interval& row : rows_) {
        spoken += QStringLiteral("%1: %2").arg(row.name, row.words);
    }
    setAccessibleDescription(spoken.join(QStringLiteral("; ")));
    updateGeometry();
    update();
}

QSize IntervalBar::sizeHint() const {
    return {320, rowHeight * static_cast<int>(rows_.size())};
}

QSize IntervalBar::minimumSizeHint() const {
    return {200, sizeHint().height()};
}

void IntervalBar::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QFont small = font();
    small.setPixelSize(12);
    painter.setFont(small);
    const QColor letters = palette().color(QPalette::WindowText);
    int wordsWidth = 0;
    for (const Interval& row : rows_) {
        wordsWidth = std::max(wordsWidth, painter.fontMetrics().horizontalAdvance(row.words));
    }
    const double left = nameShare * width();
    const double right = width() - wordsWidth - 2.0 * gap;
    const auto at = [&](double value) {
        return left + (right - left) * std::clamp(value / most_, 0.0, 1.0);
    };
    QColor ground = letters;
    ground.setAlphaF(0.10F);
    QColor spread = ink_;
    spread.setAlphaF(0.35F);
    double top = 0.0;
    for (const Interval& row : rows_) {
        const double middle = top + 0.5 * rowHeight;
        const QRectF nameBox(0.0, top, left - gap, rowHeight);
        painter.setPen(letters);
        painter.drawText(nameBox, Qt::AlignVCenter | Qt::AlignLeft,
                         painter.fontMetrics().elidedText(row.name, Qt::ElideRight,
                                                          static_cast<int>(nameBox.width())));
        painter.drawText(QRectF(right, top, width() - right - 2.0, rowHeight),
                         Qt::AlignVCenter | Qt::AlignRight, row.words);
        painter.fillRect(QRectF(left, middle - 3.0, right - left, 6.0), ground);
        if (row.isKnown && row.high <= row.low) {
            painter.fillRect(QRectF(left, middle - 3.0, at(row.value) - left, 6.0), ink_);
        } else if (row.isKnown) {
            painter.fillRect(QRectF(at(row.low), middle - 3.0, at(row.high) - at(row.low), 6.0),
                             spread);
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink_);
            painter.drawEllipse(QPointF(at(row.value), middle), 4.0, 4.0);
        }
        top += rowHeight;
    }
}

} // namespace widgets
