// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/view_keys.h"

#include <QRectF>

namespace chart {

namespace {

constexpr double step_pixels = 80.0;
constexpr double zoom = 1.4;

} // namespace

std::optional<ViewFrame> viewAfterKey(int key, const ViewFrame& view) {
    const QPointF middle = QRectF({0.0, 0.0}, QSizeF(view.size())).center();
    switch (key) {
    case Qt::Key_Left:
        return view.panned({step_pixels, 0.0});
    case Qt::Key_Right:
        return view.panned({-step_pixels, 0.0});
    case Qt::Key_Up:
        return view.panned({0.0, step_pixels});
    case Qt::Key_Down:
        return view.panned({0.0, -step_pixels});
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        return view.zoomed(zoom, middle);
    case Qt::Key_Minus:
        return view.zoomed(1.0 / zoom, middle);
    default:
        return std::nullopt;
    }
}

} // namespace chart
