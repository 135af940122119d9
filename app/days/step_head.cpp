// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_head.h"

#include "app/chart/palette.h"

#include <QKeyEvent>
#include <QPainter>

namespace days {

namespace {
constexpr int rowHeight = 38;
constexpr int secondRow = 18;
constexpr int textLeft = 26;
constexpr int margin = 10;
constexpr int titlePixels = 14;
constexpr int statePixels = 12;
} // namespace

StepHead::StepHead(const QString& title, const QString& key, QWidget* parent)
    : QAbstractButton(parent) {
    setText(title);
    setCheckable(true);
    setAutoExclusive(false);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAccessibleName(title);
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    if (!key.isEmpty()) {
        setShortcut(QKeySequence(key));
        setToolTip(tr("Open or close this step (%1)").arg(key));
    }
}

void StepHead::setState(const QString& line, bool isStale) {
    if (line == state_ && isStale == isStale_) {
        return;
    }
    state_ = line;
    isStale_ = isStale;
    setAccessibleDescription(shownState());
    updateGeometry();
    update();
}

QString StepHead::shownState() const {
    return isStale_ ? tr("out of date · %1").arg(state_) : state_;
}

QFont StepHead::titleFont() const {
    QFont font = this->font();
    font.setPixelSize(titlePixels);
    font.setBold(isChecked());
    return font;
}

QFont StepHead::stateFont() const {
    QFont font = this->font();
    font.setPixelSize(statePixels);
    return font;
}

bool StepHead::fitsBeside(int width) const {
    QFont bold = titleFont();
    bold.setBold(true);
    const int needed = QFontMetrics(bold).horizontalAdvance(text()) +
                       QFontMetrics(stateFont()).horizontalAdvance(shownState());
    return needed + textLeft + 2 * margin <= width;
}

QSize StepHead::sizeHint() const {
    return {300, heightForWidth(width())};
}

QSize StepHead::minimumSizeHint() const {
    return {160, rowHeight};
}

int StepHead::heightForWidth(int width) const {
    return fitsBeside(width) ? rowHeight : rowHeight + secondRow;
}

void StepHead::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const chart::Palette& colours = chart::Palette::screen();
    if (underMouse()) {
        painter.fillRect(rect(), chart::withAlpha(colours.sand, 0.25));
    }
    const bool isBeside = fitsBeside(width());
    const QRect titleRow(0, 0, width(), isBeside ? height() : rowHeight);

    QPolygonF arrow;
    const QPointF middle(13.0, titleRow.center().y() + 0.5);
    if (isChecked()) {
        arrow << middle + QPointF(-4.5, -2.5) << middle + QPointF(4.5, -2.5)
              << middle + QPointF(0.0, 4.0);
    } else {
        arrow << middle + QPointF(-2.5, -4.5) << middle + QPointF(4.0, 0.0)
              << middle + QPointF(-2.5, 4.5);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.ink);
    painter.drawPolygon(arrow);

    painter.setPen(colours.ink);
    painter.setFont(titleFont());
    painter.drawText(titleRow.adjusted(textLeft, 0, -margin, 0), Qt::AlignVCenter | Qt::AlignLeft,
                     text());

    painter.setFont(stateFont());
    painter.setPen(isStale_ ? colours.rust : colours.faintInk);
    const QRect stateRow = isBeside
                               ? titleRow.adjusted(textLeft, 0, -margin, 0)
                               : QRect(textLeft, rowHeight - 6, width() - textLeft - margin, 20);
    painter.drawText(
        stateRow, Qt::AlignVCenter | (isBeside ? Qt::AlignRight : Qt::AlignLeft),
        painter.fontMetrics().elidedText(shownState(), Qt::ElideRight, stateRow.width()));
    painter.setPen(chart::mixed(colours.paper, colours.ink, 0.2));
    painter.drawLine(QPointF(0.0, height() - 0.5), QPointF(width(), height() - 0.5));
    if (hasFocus()) {
        painter.setPen(QPen(colours.rust, 1.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -2.5), 3.0, 3.0);
    }
}

void StepHead::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
        return;
    }
    QAbstractButton::keyPressEvent(event);
}

} // namespace days
