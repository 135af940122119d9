// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_head.h"

#include "app/widgets/at_once.h"
#include "app/widgets/ink_roles.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyle>

namespace days {

namespace {
constexpr int textLeft = 26;
constexpr int margin = 10;
constexpr double titleShare = 1.05; // of the usual type
constexpr double stateShare = 0.9;
constexpr int roomy = 12; // above and below a title together
constexpr int tight = 6;
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
        widgets::actAtOnce(*this);
        setToolTip(tr("Open this step (%1)").arg(key));
    }
}

void StepHead::setState(const QString& line, bool isStale) {
    if (line == state_ && isStale == isStale_) {
        return;
    }
    state_ = line;
    isStale_ = isStale;
    setAccessibleDescription(shownState());
    growIfNeeded();
    update();
}

void StepHead::setStill(bool isStill) {
    isStill_ = isStill;
    growIfNeeded();
}

void StepHead::growIfNeeded() {
    if (!isStill_ && !hasNeededRow_ && !fitsBeside(width())) {
        hasNeededRow_ = true;
        updateGeometry();
    }
}

void StepHead::setTight(bool isTight) {
    if (isTight != isTight_) {
        isTight_ = isTight;
        updateGeometry();
        update();
    }
}

QString StepHead::outOfDate(const QString& state) {
    return tr("out of date · %1").arg(state);
}

QString StepHead::shownState() const {
    return isStale_ ? outOfDate(state_) : state_;
}

QFont StepHead::titleFont() const {
    QFont font = this->font();
    font.setPointSizeF(titleShare * font.pointSizeF());
    font.setBold(isChecked());
    return font;
}

QFont StepHead::stateFont() const {
    QFont font = this->font();
    font.setPointSizeF(stateShare * font.pointSizeF());
    return font;
}

int StepHead::titleRow() const {
    return QFontMetrics(titleFont()).height() + (isTight_ ? tight : roomy);
}

int StepHead::stateRow() const {
    return QFontMetrics(stateFont()).height();
}

int StepHead::titleWidth() const {
    QFont bold = titleFont();
    bold.setBold(true);
    return QFontMetrics(bold).horizontalAdvance(text());
}

bool StepHead::fitsBeside(int width) const {
    const int needed =
        titleWidth() + QFontMetrics(stateFont()).horizontalAdvance(outOfDate(state_));
    return needed + textLeft + 2 * margin <= width;
}

QSize StepHead::sizeHint() const {
    return {300, heightForWidth(width())};
}

QSize StepHead::minimumSizeHint() const {
    return {160, titleRow()};
}

int StepHead::heightForWidth(int width) const {
    const bool hasRow = width == this->width() ? hasNeededRow_ : !fitsBeside(width);
    return hasRow ? titleRow() + stateRow() : titleRow();
}

void StepHead::paintArrow(QPainter& painter, QPointF middle) const {
    QPolygonF arrow;
    if (isChecked()) {
        arrow << middle + QPointF(-4.5, -2.5) << middle + QPointF(4.5, -2.5)
              << middle + QPointF(0.0, 4.0);
    } else {
        const double ahead = isRightToLeft() ? -1.0 : 1.0;
        arrow << middle + QPointF(-2.5 * ahead, -4.5) << middle + QPointF(4.0 * ahead, 0.0)
              << middle + QPointF(-2.5 * ahead, 4.5);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette().color(widgets::inkRole));
    painter.drawPolygon(arrow);
}

void StepHead::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = palette().color(widgets::inkRole);
    if (underMouse() || isChecked()) {
        QColor sand = palette().color(widgets::sandRole);
        sand.setAlphaF(underMouse() ? 0.4F : 0.25F);
        painter.fillRect(rect(), sand);
    }
    const bool isBeside = height() < titleRow() + stateRow();
    const QRect title(0, 0, width(), isBeside ? height() : titleRow());
    const auto turned = [this](const QRect& box) {
        return QStyle::visualRect(layoutDirection(), rect(), box);
    };
    const auto side = [this](Qt::Alignment way) {
        return QStyle::visualAlignment(layoutDirection(), way | Qt::AlignVCenter);
    };
    paintArrow(painter, turned(QRect(6, title.top(), 14, title.height())).center());
    painter.setPen(ink);
    painter.setFont(titleFont());
    const QRect text = title.adjusted(textLeft, 0, -margin, 0);
    painter.drawText(turned(text), static_cast<int>(side(Qt::AlignLeft)), this->text());

    painter.setFont(stateFont());
    painter.setPen(palette().color(isStale_ ? widgets::warningRole : widgets::faintRole));
    const QRect state = isBeside ? text.adjusted(titleWidth() + margin, 0, 0, 0)
                                 : QRect(textLeft, titleRow() - (isTight_ ? tight : roomy) / 2,
                                         width() - textLeft - margin, stateRow());
    painter.drawText(turned(state),
                     static_cast<int>(side(isBeside ? Qt::AlignRight : Qt::AlignLeft)),
                     painter.fontMetrics().elidedText(shownState(), Qt::ElideRight, state.width()));
    QColor line = ink;
    line.setAlphaF(0.2F);
    painter.setPen(line);
    painter.drawLine(QPointF(0.0, height() - 0.5), QPointF(width(), height() - 0.5));
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(widgets::warningRole), 1.5));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -2.5), 3.0, 3.0);
    }
}

void StepHead::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        click();
        return;
    case Qt::Key_Down:
        focusNextChild();
        return;
    case Qt::Key_Up:
        focusPreviousChild();
        return;
    default:
        QAbstractButton::keyPressEvent(event);
    }
}

void StepHead::resizeEvent(QResizeEvent* event) {
    QAbstractButton::resizeEvent(event);
    if (event->oldSize().width() != event->size().width()) {
        hasNeededRow_ = !fitsBeside(width());
        updateGeometry();
    }
}

void StepHead::changeEvent(QEvent* event) {
    QAbstractButton::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        hasNeededRow_ = !fitsBeside(width());
        updateGeometry();
    }
}

} // namespace days
