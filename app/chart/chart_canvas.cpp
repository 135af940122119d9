// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/chart_canvas.h"

#include "app/chart/chart_painter.h"
#include "app/chart/mark_drawing.h"
#include "app/chart/overlay_signs.h"
#include "app/chart/tools/cut_line_tool.h"

#include <QPainter>
#include <QPainterPath>

namespace chart {

namespace {

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
    changeView(wholeWater(content_, size(), content_.typeScale));
}

void ChartCanvas::showPlace(geo::WaterPoint place, double least_pixelsPerMetre) {
    ViewFrame view = view_.centredOn(place);
    if (view.pixelsPerMetre() < least_pixelsPerMetre) {
        view = view.zoomed(least_pixelsPerMetre / view.pixelsPerMetre(), QRectF(rect()).center());
    }
    setViewFrame(view);
}

void ChartCanvas::showBox(const geo::Box& box) {
    if (!box.isEmpty()) {
        setViewFrame(ViewFrame::showing(box, size(), 60.0 * content_.typeScale));
    }
}

void ChartCanvas::setTool(ToolKind kind) {
    toolKind_ = kind;
    tool_ = makeTool(kind);
    if (tool_) {
        tool_->takeContent(content_);
    }
    grip_.reset();
    keyPointer_.reset();
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
    sheet_.draw(painter, view_, Palette::of(content_.inks).paper);
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
        const auto rings = ringsOf(content_.planned->marks, view_, content_.typeScale);
        if (const auto ring = rings.find(*content_.selection.mark); ring != rings.end()) {
            const double radius = ringRadius(content_.typeScale);
            inside.addEllipse(ring->second.middle, radius, radius);
        }
    }
    QPainterPath all;
    all.addRect(QRectF(rect()));
    painter.setClipPath(all.subtracted(inside));
    paintCut(painter, view_, *cut_, Palette::of(content_.inks));
    painter.restore();
}

void ChartCanvas::drawOverlay(QPainter& painter) {
    const Palette& palette = Palette::of(content_.inks);
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
        drawHeldRing(painter, palette, grip_->last, grip_->part->rank, content_.typeScale);
    }
    if (grip_ && grip_->wind && grip_->isDragging) {
        drawTurnedWind(painter, palette, *grip_->wind, heldWind(), content_.typeScale);
    }
    if (tool_) {
        tool_->paint(painter, view_, palette);
    }
    if (keyPointer_) {
        drawKeyPointer(painter, palette, *keyPointer_, content_.typeScale);
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
    changeView(hasOwnView_ ? view_.resized(size())
                           : wholeWater(content_, size(), content_.typeScale));
}

} // namespace chart
