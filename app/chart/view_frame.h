// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"

#include <QPointF>
#include <QSizeF>

namespace chart {

/// What part of the water is shown and how large: metres in the water's frame to pixels (or points
/// of paper) and back. A value.
class ViewFrame {
public:
    ViewFrame() = default;
    /// The whole of `box` in the middle of `size`, with `margin` pixels round it.
    [[nodiscard]] static ViewFrame showing(const geo::Box& box, QSizeF size, double margin);

    [[nodiscard]] QPointF toScreen(geo::WaterPoint p) const;
    [[nodiscard]] geo::WaterPoint toWater(QPointF pixel) const;
    [[nodiscard]] double pixelsPerMetre() const { return pixelsPerMetre_; }
    [[nodiscard]] QSizeF size() const { return size_; }
    /// What can be seen.
    [[nodiscard]] geo::Box box() const;

    /// Larger (factor > 1) or smaller; what lies under `fixed` stays there. Held between 1 pixel
    /// for 200 m and 100 pixels a metre.
    [[nodiscard]] ViewFrame zoomed(double factor, QPointF fixed) const;
    /// Moved by so many pixels, as a hand moves paper.
    [[nodiscard]] ViewFrame panned(QPointF pixels) const;
    /// The same middle and scale in a window of another size.
    [[nodiscard]] ViewFrame resized(QSizeF size) const;
    [[nodiscard]] ViewFrame centredOn(geo::WaterPoint middle) const;

    friend bool operator==(const ViewFrame&, const ViewFrame&) = default;

private:
    geo::WaterPoint middle_;
    double pixelsPerMetre_ = 1.0;
    QSizeF size_{1.0, 1.0};
};

} // namespace chart
