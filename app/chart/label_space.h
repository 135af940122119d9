// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include <vector>

namespace chart {

/// Where letters already stand in one painting, so that no text is set over text. Shared by all
/// layers; whoever comes first has the place.
class LabelSpace {
public:
    /// Labels must lie wholly within `page`.
    explicit LabelSpace(const QRectF& page) : page_(page) {}

    [[nodiscard]] bool isFree(const QRectF& box) const;
    /// Takes the box if it is free. \return whether it was.
    bool take(const QRectF& box);
    /// The same for a box of `size` round `centre`, turned clockwise.
    bool takeTurned(QPointF centre, QSizeF size, double angle_deg);
    /// All boxes or none.
    bool takeAll(const std::vector<QRectF>& boxes);
    /// Takes the box whatever stands there: for things that are drawn in any case.
    void block(const QRectF& box) { taken_.push_back({box, noLabel}); }

    [[nodiscard]] const QRectF& page() const { return page_; }
    /// A box that is taken, and by which label.
    struct Taken {
        QRectF box;
        int label = 0;
    };
    static constexpr int noLabel = -1; ///< Blocked by something drawn.
    [[nodiscard]] const std::vector<Taken>& taken() const { return taken_; }

private:
    QRectF page_;
    std::vector<Taken> taken_;
    int labels_ = 0;
};

} // namespace chart
