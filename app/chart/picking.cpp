// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/picking.h"

#include "app/chart/crossing_dot.h"
#include "app/chart/mark_drawing.h"
#include "app/chart/placed_things.h"
#include "app/chart/stay_ring.h"

#include <cmath>

namespace chart {

namespace {

double apart(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

constexpr double slack = 3.0; // pixels beyond the ring that still count
constexpr double soundingWithin = 6.0;
constexpr double partWithin = 9.0;
constexpr double signAhead = 3.0; // pixels by which a sign is nearer than a dot
constexpr double zoneWithin = 6.0;

structure::ZoneNumber zoneUnder(const structure::ZoneMap& map, geo::WaterPoint place) {
    const grid::Cell cell = map.zoneOfCell.frame().cellOf(place);
    return map.zoneOfCell.frame().holds(cell) ? map.zoneOfCell[cell] : structure::noZone;
}

} // namespace

std::optional<int> markAt(const ChartContent& content, const ViewFrame& view, QPointF pixel) {
    if (!content.planned || !content.shown.contains(LayerKind::marks)) {
        return std::nullopt;
    }
    std::optional<int> nearest;
    double least = ringRadius(content.typeScale) + slack;
    for (const auto& [rank, ring] : ringsOf(content.planned->marks, view, content.typeScale)) {
        const double toPlace =
            isNear(view, content.typeScale) ? apart(ring.place, pixel) : 1e9; // the boat itself
        const double distance = std::min(apart(ring.middle, pixel), toPlace);
        if (distance <= least) {
            least = distance;
            nearest = rank;
        }
    }
    return nearest;
}

std::optional<LiePart> liePartAt(const ChartContent& content, const ViewFrame& view,
                                 QPointF pixel) {
    if (const auto rank = markAt(content, view, pixel)) {
        return LiePart{*rank, LiePart::Kind::boat, 0};
    }
    const auto& chosen = content.selection.mark;
    if (!content.planned || !chosen || !content.shown.contains(LayerKind::marks) ||
        content.age.isPlanOld || !showsLie(content, view, content.typeScale, *chosen)) {
        return std::nullopt;
    }
    std::optional<LiePart> nearest;
    double least = partWithin;
    const auto take = [&](geo::WaterPoint place, LiePart::Kind kind, std::size_t bait) {
        const double distance = apart(view.toScreen(place), pixel);
        if (distance < least) {
            least = distance;
            nearest = LiePart{*chosen, kind, bait};
        }
    };
    for (const marks::Mark& mark : content.planned->marks) {
        if (mark.rank != *chosen) {
            continue;
        }
        take(mark.anchors.bow.place, LiePart::Kind::bow, 0);
        if (mark.anchors.stern) {
            take(mark.anchors.stern->place, LiePart::Kind::stern, 0);
        }
        for (std::size_t k = 0; k < mark.spread.rods.size(); ++k) {
            take(mark.spread.rods[k].place, LiePart::Kind::bait, k);
        }
    }
    return nearest;
}

std::optional<std::size_t> rodAt(const ChartContent& content, const ViewFrame& view,
                                 QPointF pixel) {
    const auto part = liePartAt(content, view, pixel);
    return part && part->kind == LiePart::Kind::bait ? std::optional(part->bait) : std::nullopt;
}

std::optional<logbook::StayId> stayAt(const ChartContent& content, const ViewFrame& view,
                                      QPointF pixel) {
    if (!content.water || !content.shown.contains(LayerKind::log)) {
        return std::nullopt;
    }
    std::optional<logbook::StayId> nearest;
    double least = 1e9;
    PlacedThings::forStays(content.water, [&](const logbook::Stay& stay, geo::WaterPoint place) {
        const double distance = apart(view.toScreen(place), pixel);
        if (distance <= stayRadius(stay, content.typeScale) + slack && distance < least &&
            isSeen(stay, content.logAsked, content.water->clock)) {
            least = distance;
            nearest = stay.id;
        }
    });
    return nearest;
}

std::optional<SoundingPick> soundingAt(const ChartContent& content, const ViewFrame& view,
                                       QPointF pixel) {
    if (!content.derived.checked || !content.shown.contains(LayerKind::soundings)) {
        return std::nullopt;
    }
    const double reach_m = soundingWithin / view.pixelsPerMetre();
    const geo::WaterPoint under = view.toWater(pixel);
    std::optional<SoundingPick> nearest;
    double least = soundingWithin;
    const auto& days = content.derived.checked->survey.days;
    for (std::size_t day = 0; day < days.size(); ++day) {
        const auto& points = days[day].points;
        for (std::size_t i = 0; i < points.size(); ++i) {
            if (std::abs(points[i].x_m - under.x_m) > reach_m ||
                std::abs(points[i].y_m - under.y_m) > reach_m) {
                continue;
            }
            const bool isAside = days[day].verdicts[i] != soundings::Verdict::kept;
            const double distance =
                apart(view.toScreen(points[i]), pixel) - (isAside ? signAhead : 0.0);
            if (distance < least) {
                least = distance;
                nearest = {static_cast<int>(day), i};
            }
        }
    }
    return nearest;
}

std::optional<std::size_t> crossingAt(const ChartContent& content, const ViewFrame& view,
                                      QPointF pixel) {
    if (!content.derived.checked || !content.shown.contains(LayerKind::crossings)) {
        return std::nullopt;
    }
    std::optional<std::size_t> nearest;
    double least = 1e9;
    const auto& crossings = content.derived.checked->crossings;
    for (const std::size_t i : crossingsShown(content, view, content.typeScale)) {
        const double distance = apart(view.toScreen(crossings[i].at), pixel);
        if (distance <= dotOf(crossings[i], 1.0).radius + 1.0 && distance < least) {
            least = distance;
            nearest = i;
        }
    }
    return nearest;
}

std::optional<int> sectionAt(const ChartContent& content, const ViewFrame& view, QPointF pixel) {
    if (!content.derived.sections || !content.shown.contains(LayerKind::sections)) {
        return std::nullopt;
    }
    const auto& cells = content.derived.sections->sectionOfCell;
    const grid::Cell cell = cells.frame().cellOf(view.toWater(pixel));
    if (!cells.frame().holds(cell) || cells[cell] < 0) {
        return std::nullopt;
    }
    return static_cast<int>(cells[cell]);
}

std::optional<int> zoneAt(const ChartContent& content, const ViewFrame& view, QPointF pixel) {
    const water::Derived& derived = content.derived;
    const bool isWeed = content.zonesPicked == ZonesPicked::weed;
    if (content.zonesPicked == ZonesPicked::none || (isWeed ? !derived.weed : !derived.structure)) {
        return std::nullopt;
    }
    const structure::ZoneMap& map = isWeed ? derived.weed->zones : *derived.structure;
    const int before =
        isWeed && derived.structure ? static_cast<int>(derived.structure->zones.size()) : 0;
    for (const double reach : {0.0, 0.5 * zoneWithin, zoneWithin}) {
        for (const QPointF way : {QPointF(0, -1), QPointF(0, 1), QPointF(-1, 0), QPointF(1, 0)}) {
            const auto number = zoneUnder(map, view.toWater(pixel + reach * way));
            if (number != structure::noZone) {
                return before + static_cast<int>(number);
            }
        }
    }
    return std::nullopt;
}

} // namespace chart
