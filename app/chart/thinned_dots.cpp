// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/thinned_dots.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace chart {

namespace {

/// So small that two dots in one square are too near in any case.
double squareOf(double least) {
    return least / std::numbers::sqrt2;
}

} // namespace

ThinnedDots::ThinnedDots(QSizeF page, double least)
    : page_(page), least_(least),
      across_(std::max(1, static_cast<int>(std::ceil(page.width() / squareOf(least))))),
      down_(std::max(1, static_cast<int>(std::ceil(page.height() / squareOf(least))))),
      dotOf_(static_cast<std::size_t>(across_) * static_cast<std::size_t>(down_), -1) {}

bool ThinnedDots::take(QPointF at) {
    const int column = static_cast<int>(std::floor(at.x() / squareOf(least_)));
    const int row = static_cast<int>(std::floor(at.y() / squareOf(least_)));
    if (column < 0 || row < 0 || column >= across_ || row >= down_) {
        return false;
    }
    constexpr int reach = 2; // squares, as a square is shorter than `least`
    for (int y = std::max(0, row - reach); y <= std::min(down_ - 1, row + reach); ++y) {
        for (int x = std::max(0, column - reach); x <= std::min(across_ - 1, column + reach); ++x) {
            const int dot = dotOf_[static_cast<std::size_t>(y) * static_cast<std::size_t>(across_) +
                                   static_cast<std::size_t>(x)];
            if (dot >= 0) {
                const QPointF way = dots_[dot] - at;
                if (way.x() * way.x() + way.y() * way.y() < least_ * least_) {
                    return false;
                }
            }
        }
    }
    dotOf_[static_cast<std::size_t>(row) * static_cast<std::size_t>(across_) +
           static_cast<std::size_t>(column)] = static_cast<int>(dots_.size());
    dots_.append(at);
    return true;
}

} // namespace chart
