// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/chart_canvas.h"

#include "app/chart/chart_painter.h"
#include "app/chart/mark_drawing.h"
#include "app/chart/overlay_signs.h"
#include "app/chart/picking.h"
#include "app/chart/tools/cut_line_tool.h"
#include "app/chart/view_keys.h"

#include <QInputDevice>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QPainterPath>
#include <QWheelEvent>

#include <cmath>

namespace chart {

namespace {

constexpr double dragFrom_pixels = 4.0;
constexpr double toolReach_pixels = 9.0;
constexpr int settle_ms = 90;

} // namespace

ChartCanvas::ChartCanvas(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Chart"));
    setToolTip({});
    content_.shown = usualLayers();
    settle_.setSingleShot(true);
    settle_.setInterval(settle_ms);
    connect(&sheet_, &ScreenSheet::painted, this, qOverload<>(&QWidget::update));
    connect(&settle_, &QTimer::timeout, this, [this] {
        isSheetStale_ = true;
        update();
    });
}

ChartCanvas::~ChartCanvas() = default;

void ChartCanvas::setContent(ChartContent content) {
    const geo::Box before = extentOf(content_);
    content_ = std::move(content);
    const geo::Box now = extentOf(content_);
    const bool isOther = before.isEmpty() != now.isEmpty() ||
                         (!now.isEmpty() &&
                          !before.grownBy(0.5 * before.width_m()).holds({now.west_m, now.south_m}));
    // The paper does not slip away under the hand that works on it.
    if (isOther || (!hasOwnView_ && !tool_)) {
        showWholeWater();
    }
    if (isOther) {
        sheet_.clear(); // Nothing of another water is shown as this one.
    }
    if (tool_) {
        tool_->takeContent(content_);
    }
    isSheetStale_ = true;
    update();
}

void ChartCanvas::setViewFrame(const ViewFrame& view) {
    hasOwnView_ = true;
    changeView(view.resized(size()));
}

void ChartCanvas::showWholeWater() {
    hasOwnView_ = false;
    changeView(wholeWater(content_, size()));
}

void ChartCanvas::showPlace(geo::WaterPoint place, double least_pixelsPerMetre) {
    ViewFrame view = view_.centredOn(place);
    if (view.pixelsPerMetre() < least_pixelsPerMetre) {
        view = view.zoomed(least_pixelsPerMetre / view.pixelsPerMetre(), QRectF(rect()).center());
    }
    setViewFrame(view);
}

void ChartCanvas::setTool(ToolKind kind) {
    toolKind_ = kind;
    tool_ = makeTool(kind);
    if (tool_) {
        tool_->takeContent(content_);
    }
    grip_.reset();
    setCursor(tool_ ? tool_->cursor() : Qt::ArrowCursor);
    update();
}

void ChartCanvas::setPointed(std::optional<geo::WaterPoint> place) {
    pointed_ = place;
    update();
}

void ChartCanvas::setChosen(std::optional<geo::WaterPoint> place) {
    chosen_ = place;
    update();
}

void ChartCanvas::setCut(std::optional<LineMade> cut) {
    cut_ = cut;
    update();
}

void ChartCanvas::setTried(std::optional<TriedLie> tried) {
    tried_ = std::move(tried);
    update();
}

void ChartCanvas::changeView(const ViewFrame& view) {
    if (view == view_) {
        return;
    }
    view_ = view;
    settle_.start();
    update();
    emit viewChanged();
}

void ChartCanvas::askForSheet() {
    isSheetStale_ = false;
    sheet_.ask(content_, view_, devicePixelRatioF());
}

void ChartCanvas::finishPainting() {
    askForSheet();
    sheet_.finish();
}

void ChartCanvas::drawSheet(QPainter& painter) {
    // Under way: the sheet as it was, until the hand rests.
    const bool isMoving = settle_.isActive() && !sheet_.isEmpty();
    if (!isMoving && (isSheetStale_ || !sheet_.isAskedFor(view_))) {
        askForSheet();
    }
    sheet_.draw(painter, view_, Palette::of(content_.isGrey).paper);
}

void ChartCanvas::drawCut(QPainter& painter) {
    if (!cut_) {
        return;
    }
    painter.save();
    // The line leads through what is chosen: the number of a mark stays legible.
    QPainterPath inside;
    if (chosen_) {
        inside.addEllipse(view_.toScreen(*chosen_), chosenRadius, chosenRadius);
    }
    if (content_.planned && content_.selection.mark && content_.shown.contains(LayerKind::marks)) {
        const auto rings = ringsOf(content_.planned->marks, view_, 1.0);
        if (const auto ring = rings.find(*content_.selection.mark); ring != rings.end()) {
            inside.addEllipse(ring->second.middle, ringRadius(1.0), ringRadius(1.0));
        }
    }
    QPainterPath all;
    all.addRect(QRectF(rect()));
    painter.setClipPath(all.subtracted(inside));
    paintCut(painter, view_, *cut_, Palette::of(content_.isGrey));
    painter.restore();
}

void ChartCanvas::drawOverlay(QPainter& painter) {
    const Palette& palette = Palette::of(content_.isGrey);
    painter.setRenderHint(QPainter::Antialiasing, true);
    drawCut(painter);
    if (chosen_) {
        drawChosenSign(painter, palette, view_.toScreen(*chosen_));
    }
    if (pointed_) {
        drawPointedSign(painter, palette, view_.toScreen(*pointed_));
    }
    if (tried_) {
        drawTried(painter, view_, content_, *tried_);
    }
    if (grip_ && grip_->part && grip_->isDragging && grip_->part->kind == LiePart::Kind::boat) {
        drawHeldRing(painter, palette, grip_->last, grip_->part->rank);
    }
    if (tool_) {
        tool_->paint(painter, view_, palette);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(withAlpha(palette.rust, 0.55), 1.0));
        painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void ChartCanvas::paintEvent(QPaintEvent* event) {
    static_cast<void>(event);
    QPainter painter(this);
    drawSheet(painter);
    drawOverlay(painter);
}

void ChartCanvas::resizeEvent(QResizeEvent* event) {
    static_cast<void>(event);
    changeView(hasOwnView_ ? view_.resized(size()) : wholeWater(content_, size()));
}

void ChartCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        return;
    }
    setFocus(Qt::MouseFocusReason);
    if (tool_) {
        tool_->setReach(toolReach_pixels / view_.pixelsPerMetre());
    }
    if (tool_ && tool_->wants(view_.toWater(event->position()))) {
        tell(tool_->press(view_.toWater(event->position())));
        update();
        return;
    }
    grip_ = Grip{event->position(), event->position(),
                 tool_ ? std::nullopt : liePartAt(content_, view_, event->position())};
}

void ChartCanvas::mouseMoveEvent(QMouseEvent* event) {
    const QPointF pixel = event->position();
    const bool isHeld = event->buttons().testFlag(Qt::LeftButton);
    emit pointedAt(view_.toWater(pixel));
    if (tool_ && !grip_) {
        tell(tool_->move(view_.toWater(pixel), isHeld));
        update();
        return;
    }
    if (!grip_ || !isHeld) {
        const auto under = liePartAt(content_, view_, pixel);
        const bool isMark = under && under->kind == LiePart::Kind::boat;
        setCursor(isMark ? Qt::PointingHandCursor : under ? Qt::OpenHandCursor : Qt::ArrowCursor);
        return;
    }
    const QPointF way = pixel - grip_->from;
    grip_->isDragging = grip_->isDragging || std::hypot(way.x(), way.y()) >= dragFrom_pixels;
    if (grip_->isDragging && grip_->part) {
        emit lieHeld(*grip_->part, view_.toWater(pixel));
        update();
    } else if (grip_->isDragging) {
        setCursor(Qt::ClosedHandCursor);
        hasOwnView_ = true;
        changeView(view_.panned(pixel - grip_->last));
    }
    if (grip_->isDragging) {
        grip_->last = pixel;
    }
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
        return;
    }
    if (grip->isDragging && grip->part) {
        emit lieDropped(*grip->part, view_.toWater(event->position()));
        update();
    } else if (!grip->isDragging && !grip->isSecondClick) {
        click(event->position(), event->modifiers());
    }
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
    grip_ = Grip{event->position(), event->position(), std::nullopt, false, true};
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

void ChartCanvas::keyPressEvent(QKeyEvent* event) {
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
            return update();
        }
        if (grip_ && grip_->part && grip_->isDragging) {
            grip_.reset(); // The mark stays where it was.
            emit lieLetGo();
            return update();
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

void ChartCanvas::tell(const std::optional<Made>& made) {
    if (made) {
        emit this->made(*made);
    }
}

} // namespace chart
