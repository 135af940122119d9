// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/label_space.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace chart {

bool LabelSpace::isFree(const QRectF& box) const {
    return page_.contains(box) &&
           std::none_of(taken_.begin(), taken_.end(),
                        [&](const Taken& other) { return other.box.intersects(box); });
}

bool LabelSpace::take(const QRectF& box) {
    return takeAll({box});
}

bool LabelSpace::takeAll(const std::vector<QRectF>& boxes) {
    const bool allFree =
        std::all_of(boxes.begin(), boxes.end(), [this](const QRectF& box) { return isFree(box); });
    if (allFree) {
        for (const QRectF& box : boxes) {
            taken_.push_back({box, labels_});
        }
        ++labels_;
    }
    return allFree;
}

bool LabelSpace::takeTurned(QPointF centre, QSizeF size, double angle_deg) {
    // Squares of the height along the middle line, each large enough for the turned letters in it.
    const double angle = angle_deg * std::numbers::pi / 180.0;
    const double height = size.height();
    const double side = height * (std::abs(std::cos(angle)) + std::abs(std::sin(angle)));
    const int count = std::max(1, static_cast<int>(std::ceil(size.width() / height)));
    const double step = count > 1 ? (size.width() - height) / (count - 1) : 0.0;
    std::vector<QRectF> boxes;
    for (int i = 0; i < count; ++i) {
        const double along = (i - 0.5 * (count - 1)) * step;
        const QPointF middle = centre + QPointF(along * std::cos(angle), along * std::sin(angle));
        boxes.emplace_back(middle.x() - 0.5 * side, middle.y() - 0.5 * side, side, side);
    }
    return takeAll(boxes);
}

} // namespace chart
