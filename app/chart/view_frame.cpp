// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/view_frame.h"

#include <algorithm>

namespace chart {

namespace {

constexpr double smallestScale = 1.0 / 200.0;
constexpr double largestScale = 100.0;

} // namespace

ViewFrame ViewFrame::showing(const geo::Box& box, QSizeF size, double margin) {
    ViewFrame view;
    view.size_ = size;
    if (box.isEmpty()) {
        return view;
    }
    view.middle_ = {0.5 * (box.west_m + box.east_m), 0.5 * (box.south_m + box.north_m)};
    const double across = std::max(size.width() - 2.0 * margin, 1.0) / std::max(box.width_m(), 1.0);
    const double up = std::max(size.height() - 2.0 * margin, 1.0) / std::max(box.height_m(), 1.0);
    view.pixelsPerMetre_ = std::clamp(std::min(across, up), smallestScale, largestScale);
    return view;
}

QPointF ViewFrame::toScreen(geo::WaterPoint p) const {
    return {0.5 * size_.width() + (p.x_m - middle_.x_m) * pixelsPerMetre_,
            0.5 * size_.height() - (p.y_m - middle_.y_m) * pixelsPerMetre_};
}

geo::WaterPoint ViewFrame::toWater(QPointF pixel) const {
    return {middle_.x_m + (pixel.x() - 0.5 * size_.width()) / pixelsPerMetre_,
            middle_.y_m - (pixel.y() - 0.5 * size_.height()) / pixelsPerMetre_};
}

geo::Box ViewFrame::box() const {
    geo::Box box;
    box.take(toWater({0.0, 0.0}));
    box.take(toWater({size_.width(), size_.height()}));
    return box;
}

ViewFrame ViewFrame::zoomed(double factor, QPointF fixed) const {
    ViewFrame view = *this;
    const geo::WaterPoint under = toWater(fixed);
    view.pixelsPerMetre_ = std::clamp(pixelsPerMetre_ * factor, smallestScale, largestScale);
    const geo::WaterPoint now = view.toWater(fixed);
    view.middle_.x_m += under.x_m - now.x_m;
    view.middle_.y_m += under.y_m - now.y_m;
    return view;
}

ViewFrame ViewFrame::panned(QPointF pixels) const {
    ViewFrame view = *this;
    view.middle_.x_m -= pixels.x() / pixelsPerMetre_;
    view.middle_.y_m += pixels.y() / pixelsPerMetre_;
    return view;
}

ViewFrame ViewFrame::resized(QSizeF size) const {
    ViewFrame view = *this;
    view.size_ = size;
    return view;
}

ViewFrame ViewFrame::centredOn(geo::WaterPoint middle) const {
    ViewFrame view = *this;
    view.middle_ = middle;
    return view;
}

} // namespace chart
