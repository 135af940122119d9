// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/water_path.h"

#include <cmath>

namespace chart {

namespace {

/// On which sides of the page, with room for wide pens, a pixel lies: one bit a side, 0 on it.
unsigned sidesOf(QPointF p, QSizeF page) {
    constexpr double room = 60.0;
    return (p.x() < -room ? 1U : 0U) | (p.x() > page.width() + room ? 2U : 0U) |
           (p.y() < -room ? 4U : 0U) | (p.y() > page.height() + room ? 8U : 0U);
}

/// Without points that crowd, and without those that lie off the page together with both
/// neighbours kept, on one side: nothing that can be seen changes, filled or not.
QPolygonF thinned(const geo::Path& line, const ViewFrame& view, double least) {
    QPolygonF thin;
    thin.reserve(static_cast<qsizetype>(line.size()));
    unsigned common = 0U; // sides that the last point kept and all dropped since share
    unsigned here = line.empty() ? 0U : sidesOf(view.toScreen(line[0]), view.size());
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool isEnd = i == 0 || i + 1 == line.size();
        const unsigned next = isEnd ? here : sidesOf(view.toScreen(line[i + 1]), view.size());
        const QPointF p = view.toScreen(line[i]);
        const bool isOff = !isEnd && (common & here & next) != 0U;
        const bool isFar =
            isEnd || std::abs(p.x() - thin.last().x()) + std::abs(p.y() - thin.last().y()) >= least;
        if (!isOff && isFar) {
            thin.append(p);
            common = here;
        } else {
            common &= here;
        }
        here = i + 1 < line.size() ? sidesOf(view.toScreen(line[i + 1]), view.size()) : here;
    }
    return thin;
}

void add(QPainterPath& path, const geo::Ring& ring, const ViewFrame& view, double least) {
    if (ring.size() < 3 || !meet(boxOf(ring), view.box())) {
        return;
    }
    const QPolygonF line = thinned(ring, view, least);
    if (line.size() >= 3) {
        path.addPolygon(line);
        path.closeSubpath();
    }
}

} // namespace

QPolygonF screenLine(const geo::Path& line, const ViewFrame& view, double least) {
    return thinned(line, view, least);
}

QPainterPath screenPath(const std::vector<geo::Piece>& pieces, const ViewFrame& view,
                        double least) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    for (const geo::Piece& piece : pieces) {
        add(path, piece.outer, view, least);
        for (const geo::Ring& island : piece.islands) {
            add(path, island, view, least);
        }
    }
    return path;
}

geo::Box boxOf(const geo::Path& line) {
    geo::Box box;
    for (const geo::WaterPoint p : line) {
        box.take(p);
    }
    return box;
}

bool meet(const geo::Box& a, const geo::Box& b) {
    return a.west_m <= b.east_m && b.west_m <= a.east_m && a.south_m <= b.north_m &&
           b.south_m <= a.north_m;
}

} // namespace chart
