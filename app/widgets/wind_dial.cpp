// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/wind_dial.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace widgets {

namespace {

constexpr double fullTurn = 360.0;
constexpr double step_deg = 5.0;

QPointF onRose(QPointF middle, double radius, double degrees) {
    const double angle = degrees * std::numbers::pi / 180.0;
    return middle + radius * QPointF(std::sin(angle), -std::cos(angle));
}

double wrapped(double degrees) {
    const double turned = std::fmod(degrees, fullTurn);
    return turned < 0.0 ? turned + fullTurn : turned;
}

} // namespace

WindDial::WindDial(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void WindDial::setFrom(double degrees) {
    if (!isDragged_) {
        from_deg_ = wrapped(degrees);
        isKnown_ = true;
        update();
    }
}

void WindDial::setUnknown() {
    if (!isDragged_) {
        from_deg_ = 0.0;
        isKnown_ = false;
        update();
    }
}

void WindDial::turnTo(QPointF place) {
    const QPointF away = place - QRectF(rect()).center();
    if (std::hypot(away.x(), away.y()) < 4.0) {
        return;
    }
    const double degrees = std::atan2(away.x(), -away.y()) * 180.0 / std::numbers::pi;
    from_deg_ = wrapped(std::round(degrees / step_deg) * step_deg);
    isKnown_ = true;
    update();
    emit turning(from_deg_);
}

void WindDial::mousePressEvent(QMouseEvent* event) {
    isDragged_ = event->button() == Qt::LeftButton;
    if (isDragged_) {
        before_deg_ = from_deg_;
        wasKnown_ = isKnown_;
        setCursor(Qt::ClosedHandCursor);
        turnTo(event->position());
    }
}

void WindDial::mouseMoveEvent(QMouseEvent* event) {
    if (isDragged_) {
        turnTo(event->position());
    }
}

void WindDial::mouseReleaseEvent(QMouseEvent* event) {
    static_cast<void>(event);
    if (isDragged_) {
        isDragged_ = false;
        setCursor(Qt::OpenHandCursor);
        emit turned(from_deg_);
    }
}

void WindDial::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && isDragged_) {
        isDragged_ = false;
        from_deg_ = before_deg_;
        isKnown_ = wasKnown_;
        setCursor(Qt::OpenHandCursor);
        update();
        emit turning(from_deg_);
        return;
    }
    const bool isForward = event->key() == Qt::Key_Right || event->key() == Qt::Key_Up;
    const bool isBack = event->key() == Qt::Key_Left || event->key() == Qt::Key_Down;
    if (!isForward && !isBack) {
        QWidget::keyPressEvent(event);
        return;
    }
    from_deg_ = wrapped(from_deg_ + (isForward ? step_deg : -step_deg));
    isKnown_ = true;
    update();
    emit turned(from_deg_);
}

void WindDial::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF middle = QRectF(rect()).center();
    const double radius = 0.5 * std::min(width(), height()) - 14.0;
    const QColor ink = palette().color(QPalette::WindowText);
    QColor faint = ink;
    faint.setAlphaF(0.35F);
    painter.setPen(QPen(faint, 1.0));
    painter.drawEllipse(middle, radius, radius);
    for (int degrees = 0; degrees < 360; degrees += 15) {
        const double inner = radius - (degrees % 45 == 0 ? 6.0 : 3.0);
        painter.drawLine(onRose(middle, inner, degrees), onRose(middle, radius, degrees));
    }
    painter.setPen(ink);
    QFont small = font();
    small.setPointSizeF(0.75 * font().pointSizeF());
    painter.setFont(small);
    const std::array<QString, 4> names{tr("N"), tr("E"), tr("S"), tr("W")};
    for (std::size_t i = 0; i < names.size(); ++i) {
        const QPointF place = onRose(middle, radius + 7.0, 90.0 * static_cast<double>(i));
        painter.drawText(QRectF(place - QPointF(8, 7), QSizeF(16, 14)), Qt::AlignCenter, names[i]);
    }
    if (!isKnown_) {
        return;
    }
    const QPointF tail = onRose(middle, radius - 8.0, from_deg_);
    const QPointF tip = onRose(middle, radius - 10.0, from_deg_ + 180.0);
    painter.setPen(QPen(ink, hasFocus() ? 3.0 : 2.0));
    painter.drawLine(tail, tip);
    painter.setBrush(ink);
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(QPolygonF{onRose(middle, radius - 2.0, from_deg_ + 180.0),
                                  onRose(middle, radius - 13.0, from_deg_ + 171.0),
                                  onRose(middle, radius - 13.0, from_deg_ + 189.0)});
}

} // namespace widgets
