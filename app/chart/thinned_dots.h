// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QSizeF>

#include <vector>

namespace chart {

/// Dots on a page of which no two are nearer than the eye can part: of what lies closer the first
/// one stays. So a dense survey looks like its tracks and not like a weave of its own.
class ThinnedDots {
public:
    ThinnedDots(QSizeF page, double least);

    /// Takes the dot unless another one stands that near. \return whether it was taken; a dot
    /// beside the page is not.
    bool take(QPointF at);
    [[nodiscard]] const QPolygonF& dots() const { return dots_; }

private:
    QSizeF page_;
    double least_;
    int across_;
    int down_;
    std::vector<int> dotOf_; ///< By square of `least`: a dot in it, -1 for none; two never fit.
    QPolygonF dots_;
};

} // namespace chart
