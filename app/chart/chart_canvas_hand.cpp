// SPDX-License-Identifier: GPL-3.0-or-later
// What the hand does on the chart: mouse, wheel and keys.
#include "app/chart/chart_canvas.h"

#include "app/chart/furniture.h"
#include "app/chart/mark_drawing.h"
#include "app/chart/picking.h"
#include "app/chart/view_keys.h"

#include <QContextMenuEvent>
#include <QInputDevice>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QWheelEvent>

#include <cmath>
#include <utility>

namespace chart {

namespace {

constexpr double toolReach_pixels = 9.0;
constexpr double dragFrom_pixels = 4.0;
constexpr double windStep_deg = 5.0;

/// Where the wind comes from when its arrow is turned so that its tip is at `tip`.
units::Bearing windFrom(const WindArrow& arrow, QPointF tip) {
    const QPointF way = tip - arrow.middle;
    const double to_deg = units::Bearing::ofStep(way.x(), -way.y()).inDegrees();
    return units::Bearing::degrees(std::round(to_deg / windStep_deg) * windStep_deg).opposite();
}

} // namespace

units::Bearing ChartCanvas::heldWind() const {
    return windFrom(*grip_->wind, grip_->last);
}

void ChartCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        return;
    }
    setFocus(Qt::MouseFocusReason);
    keyPointer_.reset();
    const QPointF pixel = event->position();
    if (tool_) {
        tool_->setReach(toolReach_pixels / view_.pixelsPerMetre());
    }
    if (tool_ && tool_->wants(view_.toWater(pixel))) {
        tell(tool_->press(view_.toWater(pixel)));
        update();
        return;
    }
    grip_ = Grip{.from = pixel,
                 .last = pixel,
                 .part = tool_ ? std::nullopt : liePartAt(content_, view_, pixel),
                 .wind = tool_ ? std::nullopt : windUnder(pixel)};
}

std::optional<WindArrow> ChartCanvas::windUnder(QPointF pixel) const {
    const auto arrow = windArrowOf(content_, view_);
    const QPointF away = arrow ? pixel - arrow->middle : QPointF();
    return arrow && std::hypot(away.x(), away.y()) <= arrow->reach ? arrow : std::nullopt;
}

void ChartCanvas::hover(QPointF pixel) {
    const auto under = liePartAt(content_, view_, pixel);
    const bool isMark = under && under->kind == LiePart::Kind::boat;
    setCursor(isMark                      ? Qt::PointingHandCursor
              : under || windUnder(pixel) ? Qt::OpenHandCursor
                                          : Qt::ArrowCursor);
}

void ChartCanvas::mouseMoveEvent(QMouseEvent* event) {
    const QPointF pixel = event->position();
    const bool isHeld = event->buttons().testFlag(Qt::LeftButton);
    emit pointedAt(view_.toWater(pixel));
    if (tool_ && !grip_) {
        tell(tool_->move(view_.toWater(pixel), isHeld));
        update();
    } else if (!grip_ || !isHeld) {
        hover(pixel);
    } else {
        dragGrip(pixel);
    }
}

void ChartCanvas::dragGrip(QPointF pixel) {
    const QPointF way = pixel - grip_->from;
    grip_->isDragging = grip_->isDragging || std::hypot(way.x(), way.y()) >= dragFrom_pixels;
    if (!grip_->isDragging) {
        return;
    }
    if (grip_->wind) {
        emit windHeld(windFrom(*grip_->wind, pixel));
    } else if (grip_->part) {
        emit lieHeld(*grip_->part, view_.toWater(pixel));
    } else {
        setCursor(Qt::ClosedHandCursor);
        hasOwnView_ = true;
        changeView(view_.panned(pixel - grip_->last));
    }
    grip_->last = pixel;
    update();
}

void ChartCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        return;
    }
    if (tool_ && !grip_) {
        tell(tool_->release(view_.toWater(event->position())));
        update();
        return;
    }
    const std::optional<Grip> grip = std::exchange(grip_, std::nullopt);
    setCursor(tool_ ? tool_->cursor() : Qt::ArrowCursor);
    if (!grip) {
        return;
    }
    if (tool_) {
        // A click beside everything lets go of what was chosen.
        if (!grip->isDragging && tool_->drop()) {
            update();
        }
    } else if (grip->isDragging) {
        dropGrip(*grip, event->position());
    } else if (!grip->isSecondClick) {
        click(event->position(), event->modifiers());
    }
}

void ChartCanvas::dropGrip(const Grip& grip, QPointF pixel) {
    if (grip.wind) {
        emit windDropped(windFrom(*grip.wind, pixel));
    } else if (grip.part) {
        emit lieDropped(*grip.part, view_.toWater(pixel));
    }
    update();
}

bool ChartCanvas::letGripGo() {
    if (!grip_ || !grip_->isDragging || (!grip_->part && !grip_->wind)) {
        return false;
    }
    const Grip grip = *std::exchange(grip_, std::nullopt);
    if (grip.wind) {
        emit windLetGo(); // It blows as before.
    } else {
        emit lieLetGo(); // The mark stays where it was.
    }
    update();
    return true;
}

void ChartCanvas::click(QPointF pixel, Qt::KeyboardModifiers keys) {
    if (const auto rank = markAt(content_, view_, pixel)) {
        emit markClicked(*rank);
    } else if (const auto rod = rodAt(content_, view_, pixel)) {
        emit rodClicked(*rod);
    } else if (const auto stay = stayAt(content_, view_, pixel)) {
        emit stayClicked(*stay);
    } else if (const auto crossing = crossingAt(content_, view_, pixel)) {
        emit crossingClicked(*crossing);
    } else if (const auto sounding = soundingAt(content_, view_, pixel)) {
        emit soundingClicked(*sounding);
    } else if (content_.zonesPicked != ZonesPicked::none) {
        emit zoneClicked(zoneAt(content_, view_, pixel));
    } else if (const auto section = sectionAt(content_, view_, pixel)) {
        emit sectionClicked(*section);
    }
    emit clicked(view_.toWater(pixel), keys);
}

void ChartCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (tool_) {
        tell(tool_->finish());
        update();
        return;
    }
    hasOwnView_ = true;
    changeView(view_.zoomed(event->modifiers().testFlag(Qt::ShiftModifier) ? 0.5 : 2.0,
                            event->position()));
    grip_ = Grip{.from = event->position(),
                 .last = event->position(),
                 .part = {},
                 .wind = {},
                 .isSecondClick = true};
}

void ChartCanvas::wheelEvent(QWheelEvent* event) {
    hasOwnView_ = true;
    const bool isTouchpad =
        event->device() != nullptr && event->device()->type() == QInputDevice::DeviceType::TouchPad;
    if (isTouchpad && !event->modifiers().testFlag(Qt::ControlModifier)) {
        const QPointF way = event->pixelDelta().isNull() ? QPointF(event->angleDelta()) * 0.5
                                                         : QPointF(event->pixelDelta());
        changeView(view_.panned(way));
    } else {
        const double turns = event->angleDelta().y() / 120.0;
        changeView(view_.zoomed(std::pow(1.25, turns), event->position()));
    }
    event->accept();
}

bool ChartCanvas::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        const auto* gesture = dynamic_cast<QNativeGestureEvent*>(event);
        if (gesture != nullptr && gesture->gestureType() == Qt::ZoomNativeGesture) {
            hasOwnView_ = true;
            changeView(view_.zoomed(1.0 + gesture->value(), gesture->position()));
            return true;
        }
    }
    return QWidget::event(event);
}

bool ChartCanvas::pointByKey(const QKeyEvent& event) {
    if (!tool_) {
        return false;
    }
    if (const auto step = stepOfArrow(event.key(), event.modifiers())) {
        moveKeyPointer(*step);
        return true;
    }
    if (event.key() == Qt::Key_Space && keyPointer_) {
        pressByKey();
        return true;
    }
    return false;
}

void ChartCanvas::moveKeyPointer(QPointF step) {
    if (!keyPointer_) {
        keyPointer_ = KeyPointer{QRectF(rect()).center()};
    } else {
        constexpr double margin_pixels = 30.0;
        const QRectF room =
            QRectF(rect()).adjusted(margin_pixels, margin_pixels, -margin_pixels, -margin_pixels);
        const QPointF to = keyPointer_->at + step;
        if (room.contains(to)) {
            keyPointer_->at = to;
        } else { // the paper goes on under it
            hasOwnView_ = true;
            changeView(view_.panned(-step));
        }
    }
    const geo::WaterPoint at = view_.toWater(keyPointer_->at);
    emit pointedAt(at);
    tell(tool_->move(at, keyPointer_->isHeld));
    update();
}

void ChartCanvas::pressByKey() {
    const geo::WaterPoint at = view_.toWater(keyPointer_->at);
    tool_->setReach(toolReach_pixels / view_.pixelsPerMetre());
    const bool isLettingGo = keyPointer_->isHeld;
    keyPointer_->isHeld = !isLettingGo && tool_->drawsWhileHeld() && tool_->wants(at);
    if (!isLettingGo) {
        if (!tool_->wants(at)) {
            static_cast<void>(tool_->drop());
            return update();
        }
        tell(tool_->press(at));
    }
    // What was told may have put another tool into the hand.
    if (tool_ && (isLettingGo || !tool_->drawsWhileHeld())) {
        tell(tool_->release(at));
    }
    update();
}

void ChartCanvas::keyPressEvent(QKeyEvent* event) {
    if (pointByKey(*event)) {
        return;
    }
    if (const auto view = viewAfterKey(event->key(), view_)) {
        hasOwnView_ = true;
        changeView(*view);
        return;
    }
    switch (event->key()) {
    case Qt::Key_0:
        return showWholeWater();
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (tool_) {
            tell(tool_->finish());
            return update();
        }
        break;
    case Qt::Key_Backspace:
        if (tool_ && tool_->stepBack()) {
            return update();
        }
        [[fallthrough]];
    case Qt::Key_Delete:
        if (tool_) {
            tell(tool_->remove());
            return update();
        }
        break;
    case Qt::Key_Escape:
        if (tool_ && tool_->drop()) {
            if (keyPointer_) {
                keyPointer_->isHeld = false;
            }
            return update();
        }
        if (letGripGo()) {
            return;
        }
        break;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

void ChartCanvas::leaveEvent(QEvent* event) {
    static_cast<void>(event);
    emit pointedAt(std::nullopt);
}

void ChartCanvas::contextMenuEvent(QContextMenuEvent* event) {
    if (tool_) {
        return;
    }
    QPoint pixel = event->pos();
    if (event->reason() == QContextMenuEvent::Keyboard) {
        pixel = rect().center();
        const auto mark = content_.selection.mark;
        if (content_.planned && mark && content_.shown.contains(LayerKind::marks)) {
            const auto rings = ringsOf(content_.planned->marks, view_, content_.typeScale);
            if (const auto ring = rings.find(*mark); ring != rings.end()) {
                pixel = ring->second.middle.toPoint();
            }
        }
    }
    emit menuAsked(view_.toWater(pixel), mapToGlobal(pixel));
}

void ChartCanvas::tell(const std::optional<Made>& made) {
    if (made) {
        emit this->made(*made);
    }
}

} // namespace chart
