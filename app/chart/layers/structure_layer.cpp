// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/structure_layer.h"

#include "app/chart/depth_colours.h"
#include "app/chart/layers/zone_signs.h"
#include "app/chart/lettering.h"
#include "app/chart/texture.h"
#include "app/chart/water_path.h"
#include "app/wording/one_line.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace chart {

namespace {

/// Strokes for light and for dark ground, so that each is drawn in one go.
struct Strokes {
    QPainterPath onLight;
    QPainterPath onDark;

    void draw(LayerContext& on, double alpha, double width) const {
        const auto pen = [&](const QColor& colour) {
            return QPen(withAlpha(colour, alpha), width * on.scale, Qt::SolidLine, Qt::RoundCap);
        };
        on.painter.strokePath(onLight, pen(on.palette.ink));
        on.painter.strokePath(onDark, pen(on.palette.card));
    }
};

QPainterPath& strokesFor(LayerContext& on, Strokes& strokes, geo::WaterPoint p) {
    const QColor ground = groundAt(on.content, on.palette, p);
    return lineOn(on.palette, ground) == on.palette.ink ? strokes.onLight : strokes.onDark;
}

/// How the bottom falls at p: a step to the east and north for each metre, positive where deeper.
struct Fall {
    double east = 0.0;
    double north = 0.0;
};

Fall fallAt(const grid::DepthGrid& depth, geo::WaterPoint p) {
    const double reach_m = 1.5 * depth.frame().cell_m();
    const auto at = [&](double dx_m, double dy_m) {
        const auto there = depth.at(geo::WaterPoint{p.x_m + dx_m, p.y_m + dy_m});
        return there ? there->inMetres() : 0.0; // land stands at the surface
    };
    return {(at(reach_m, 0.0) - at(-reach_m, 0.0)) / (2.0 * reach_m),
            (at(0.0, reach_m) - at(0.0, -reach_m)) / (2.0 * reach_m)};
}

/// Short strokes from the top lines of a drop-off down its slope, longer where it is steeper.
void hachure(LayerContext& on, const std::vector<geo::Path>& tops, Strokes& strokes) {
    const double gap_m = 6.5 * on.scale / on.view.pixelsPerMetre();
    const geo::Box sight = on.view.box();
    for (const geo::Path& edge : tops) {
        double along = 0.0;
        double next = 0.0;
        for (std::size_t i = 1; i < edge.size(); ++i) {
            const double piece = geo::distance_m(edge[i - 1], edge[i]);
            for (; next <= along + piece && piece > 0.0; next += gap_m) {
                const double t = (next - along) / piece;
                const geo::WaterPoint p{edge[i - 1].x_m + t * (edge[i].x_m - edge[i - 1].x_m),
                                        edge[i - 1].y_m + t * (edge[i].y_m - edge[i - 1].y_m)};
                const Fall fall = fallAt(on.content.derived.drawn->depth, p);
                const double slope = std::hypot(fall.east, fall.north);
                if (!sight.holds(p) || slope < 1e-3) {
                    continue;
                }
                const double length = std::clamp(3.5 + 26.0 * slope, 4.0, 12.0) * on.scale;
                const QPointF top = on.view.toScreen(p);
                const QPointF down(length * fall.east / slope, -length * fall.north / slope);
                QPainterPath& path = strokesFor(on, strokes, p);
                path.moveTo(top);
                path.lineTo(top + down);
            }
            along += piece;
        }
    }
}

void strewSigns(LayerContext& on, const structure::ZoneMap& map, const structure::Zone& zone,
                structure::ZoneNumber number, Strokes& strokes) {
    const ZoneSign& ofKind = signOf(zone.kind);
    if (ofKind.fill == ZoneFill::none) {
        return;
    }
    const bool isDots = ofKind.fill == ZoneFill::dots;
    const QPainterPath sign = isDots ? QPainterPath() : ofKind.strokes(on.scale);
    geo::Box box;
    for (const geo::Piece& piece : zone.pieces) {
        for (const geo::WaterPoint p : piece.outer) {
            box.take(p);
        }
    }
    const grid::GridFrame& frame = map.zoneOfCell.frame();
    const double gap = (isDots ? 6.0 : 21.0) * on.scale;
    strew(on.view, box, gap, [&](geo::WaterPoint p, QPointF at, double chance) {
        const grid::Cell cell = frame.cellOf(p);
        if (!frame.holds(cell) || map.zoneOfCell[cell] != number) {
            return;
        }
        QPainterPath& path = strokesFor(on, strokes, p);
        if (isDots) {
            path.moveTo(at); // a dot: the round cap of a line without length
            path.lineTo(at + QPointF(0.01 + 0.6 * chance * on.scale, 0.0));
        } else {
            path.addPath(sign.translated(at));
        }
    });
}

const structure::Zone* selectedOf(const ChartContent& content) {
    const water::Derived& derived = content.derived;
    const int number = content.selection.zone.value_or(-1);
    const auto count = static_cast<int>(derived.structure ? derived.structure->zones.size() : 0);
    if (number < 0) {
        return nullptr;
    }
    if (number < count) {
        return &derived.structure->zones[static_cast<std::size_t>(number)];
    }
    const auto rest = static_cast<std::size_t>(number - count);
    return derived.weed && rest < derived.weed->zones.zones.size()
               ? &derived.weed->zones.zones[rest]
               : nullptr;
}

void nameZone(LayerContext& on, const structure::Zone& zone, TypeStyle style,
              const QColor& letters) {
    const QFont font = typeface(TypeSize::small, on.scale, style);
    const QString text = wording::oneLine(zone.name);
    const QPointF middle = on.view.toScreen(zone.middle);
    for (const double shift : {0.0, -14.0, 14.0}) {
        const QPointF at = middle + QPointF(0.0, shift * on.scale);
        if (on.labels.take(boxOf(font, text, at))) {
            drawText(on.painter, font, at, text, {letters, on.palette.card}, 2.4 * on.scale);
            return;
        }
    }
}

/// The lines of the chosen drop-off or weed edge: its top whole, where it begins at the shore too,
/// and its foot broken.
void drawEdges(LayerContext& on, const structure::Zone& zone) {
    const auto stroke = [&](const std::vector<geo::Path>& lines, Qt::PenStyle style) {
        for (const QPen& pen :
             {QPen(on.palette.card, 3.6 * on.scale, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin),
              QPen(on.palette.rust, 1.8 * on.scale, style, Qt::FlatCap, Qt::RoundJoin)}) {
            on.painter.setPen(pen);
            for (const geo::Path& line : lines) {
                on.painter.drawPolyline(screenLine(line, on.view, on.scale));
            }
        }
    };
    stroke(zone.feet, Qt::DashLine);
    stroke(zone.shoreTops, Qt::SolidLine);
    stroke(zone.topEdges, Qt::SolidLine);
}

/// A thin line along the tops of a drop-off, from which its hachures hang.
void lineTops(LayerContext& on, const std::vector<geo::Path>& tops, Strokes& strokes) {
    for (const geo::Path& edge : tops) {
        for (std::size_t i = 1; i < edge.size(); ++i) {
            if (on.view.box().holds(edge[i]) || on.view.box().holds(edge[i - 1])) {
                QPainterPath& path = strokesFor(on, strokes, edge[i]);
                path.moveTo(on.view.toScreen(edge[i - 1]));
                path.lineTo(on.view.toScreen(edge[i]));
            }
        }
    }
}

} // namespace

void StructureLayer::paint(LayerContext& on) const {
    const water::Derived& derived = on.content.derived;
    if (!derived.structure || !derived.drawn) {
        return;
    }
    Strokes hachures;
    Strokes tops;
    Strokes signs;
    Strokes dots;
    structure::ZoneNumber number = 0;
    for (const structure::Zone& zone : derived.structure->zones) {
        if (signOf(zone.kind).fill == ZoneFill::hachures) {
            for (const std::vector<geo::Path>* lines : {&zone.topEdges, &zone.shoreTops}) {
                hachure(on, *lines, hachures);
                lineTops(on, *lines, tops);
            }
        } else {
            strewSigns(on, *derived.structure, zone, number,
                       signOf(zone.kind).fill == ZoneFill::dots ? dots : signs);
        }
        ++number;
    }
    hachures.draw(on, 0.62, 0.9);
    tops.draw(on, 0.62, 0.9);
    signs.draw(on, 0.42, 0.9);
    dots.draw(on, 0.60, 1.5);
    if (const structure::Zone* chosen = selectedOf(on.content)) {
        const QPainterPath path = screenPath(chosen->pieces, on.view);
        on.painter.strokePath(path, QPen(on.palette.card, 4.0 * on.scale));
        if (chosen->topEdges.empty() && chosen->shoreTops.empty()) {
            on.painter.strokePath(path, QPen(on.palette.rust, 2.0 * on.scale));
        } else {
            on.painter.strokePath(path, QPen(on.palette.rust, 1.0 * on.scale, Qt::DotLine));
            drawEdges(on, *chosen);
        }
    }
}

void StructureLayer::letter(LayerContext& on) const {
    const water::Derived& derived = on.content.derived;
    if (!derived.structure) {
        return;
    }
    const structure::Zone* chosen = selectedOf(on.content);
    if (chosen != nullptr) {
        nameZone(on, *chosen, TypeStyle::bold, on.palette.rust);
    }
    for (const structure::Zone& zone : derived.structure->zones) {
        const double across =
            std::sqrt(zone.area.inSquareMetres()) * on.view.pixelsPerMetre() / on.scale;
        if (&zone != chosen && signOf(zone.kind).isNamed && across > 90.0 &&
            on.view.box().holds(zone.middle)) {
            nameZone(on, zone, TypeStyle::slanted, on.palette.faintInk);
        }
    }
}

} // namespace chart
