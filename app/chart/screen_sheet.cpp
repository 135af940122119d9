// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/screen_sheet.h"

#include "app/chart/chart_painter.h"
#include "app/chart/empty_chart.h"

#include <QCoreApplication>
#include <QRegion>

#include <cmath>
#include <utility>

namespace chart {

ScreenSheet::ScreenSheet(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

ScreenSheet::~ScreenSheet() {
    pool_.waitForDone();
}

void ScreenSheet::ask(ChartContent content, const ViewFrame& view, double pixelRatio) {
    asked_ = view;
    Order order{std::move(content), view, pixelRatio, waters_};
    if (isPainting_) {
        next_ = std::move(order);
    } else {
        start(std::move(order));
    }
}

void ScreenSheet::start(Order order) {
    isPainting_ = true;
    pool_.start([this, order = std::move(order)] {
        const QImage image = imageOf(order);
        QMetaObject::invokeMethod(
            this,
            [this, image, view = order.view, water = order.water] { take(image, view, water); },
            Qt::QueuedConnection);
    });
}

void ScreenSheet::take(const QImage& image, const ViewFrame& view, int water) {
    isPainting_ = false;
    if (auto next = std::exchange(next_, std::nullopt)) {
        start(std::move(*next));
    }
    if (water == waters_) {
        sheet_ = QPixmap::fromImage(image);
        view_ = view;
        emit painted();
    }
}

void ScreenSheet::finish() {
    while (isPainting_) {
        pool_.waitForDone();
        QCoreApplication::sendPostedEvents(this, QEvent::MetaCall);
    }
}

void ScreenSheet::clear() {
    ++waters_;
    sheet_ = {};
}

void ScreenSheet::draw(QPainter& painter, const ViewFrame& view, const QColor& paper) const {
    if (!isEmpty() && view == view_) {
        painter.drawPixmap(0, 0, sheet_);
        return;
    }
    const QRect page(QPoint(0, 0), view.size().toSize());
    if (isEmpty()) {
        painter.fillRect(page, paper);
        return;
    }
    const QSizeF old = view_.size();
    const QPointF upperLeft = view.toScreen(view_.toWater({0.0, 0.0}));
    const QPointF lowerRight = view.toScreen(view_.toWater({old.width(), old.height()}));
    // Only moved, it lies on whole pixels: that is drawn many times quicker, and half a pixel is
    // not seen while the hand moves.
    const bool isMoved = view.pixelsPerMetre() == view_.pixelsPerMetre();
    const QRectF place = isMoved ? QRectF(upperLeft.toPoint(), old) : QRectF(upperLeft, lowerRight);
    const QRect covered(
        QPointF(std::ceil(place.left()), std::ceil(place.top())).toPoint(),
        QPointF(std::floor(place.right()) - 1.0, std::floor(place.bottom()) - 1.0).toPoint());
    for (const QRect& bare : QRegion(page).subtracted(covered)) {
        painter.fillRect(bare, paper);
    }
    if (isMoved) {
        painter.drawPixmap(place.topLeft().toPoint(), sheet_);
    } else {
        painter.drawPixmap(place, sheet_, QRectF(sheet_.rect()));
    }
}

QImage ScreenSheet::imageOf(const Order& order) {
    const QSizeF size = order.view.size();
    QImage image((size * order.pixelRatio).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(order.pixelRatio);
    QPainter painter(&image);
    paintChart(painter, order.view, order.content, order.content.typeScale);
    if (isEmptyChart(order.content)) {
        paintEmptyChart(painter, QRectF({0.0, 0.0}, size), order.content);
    }
    return image;
}

} // namespace chart
