// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/own_water_view.h"

#include "app/wording/spoken_names.h"
#include "core/water/steps/near_place.h"

#include <cmath>

namespace days::tomorrow {

using wording::Words;

namespace {

/// Nothing on land, on ground that is dry at the planned day's level, and before the water is
/// drawn.
std::optional<units::Depth> depthThatDay(const water::Water& water, const water::Derived& derived,
                                         geo::WaterPoint place) {
    if (!derived.drawn) {
        return std::nullopt;
    }
    const auto depth = derived.drawn->depth.at(place);
    if (!depth) {
        return std::nullopt;
    }
    const units::Depth that =
        units::Depth::metres(depth->inMetres() + water.plan.day.levelChange.inMetres());
    return that.inMetres() > 0.0 ? std::optional(that) : std::nullopt;
}

QString nearWords(const water::Water& water, geo::WaterPoint place, const Words& words) {
    const auto near = water::nearestNamedPlace(water, place);
    return near ? wording::said(*near, words) : QString();
}

/// The user's name, else what it lies near to, else where it is.
QString calledAt(const water::Water& water, const std::string& name, geo::WaterPoint place,
                 const Words& words) {
    if (!name.empty()) {
        return QString::fromStdString(name);
    }
    const QString near = nearWords(water, place, words);
    return near.isEmpty() ? Words::place(water.frame->toEarth(place)) : near;
}

} // namespace

TypedPlace lookedUp(const water::Water& water, const water::Derived& derived, geo::LonLat place,
                    const Words& words) {
    if (!water.frame) {
        return {};
    }
    const geo::WaterPoint at = water.frame->toWater(place);
    if (derived.outline && !derived.outline->contains(at)) {
        const units::Length off = geo::courseBetween(water.frame->centre(), place).distance;
        return {false, QStringLiteral("On no water of this chart: %1 from its middle.")
                           .arg(words.length(off))};
    }
    QStringList parts;
    if (const QString near = nearWords(water, at, words); !near.isEmpty()) {
        parts += near;
    }
    if (const auto depth = depthThatDay(water, derived, at)) {
        parts += QStringLiteral("%1 deep that day").arg(words.depth(*depth));
    } else if (derived.drawn) {
        parts += QStringLiteral("dry that day");
    }
    return {true, parts.join(QStringLiteral("; "))};
}

std::vector<QStringList> ownMarkRows(const water::Water& water, const water::Derived& derived,
                                     const Words& words) {
    std::vector<QStringList> rows;
    for (const water::PinnedMark& mark : water.pinnedMarks) {
        if (!water.frame) {
            break;
        }
        const geo::WaterPoint at = water.frame->toWater(mark.place);
        const auto depth = depthThatDay(water, derived, at);
        rows.push_back({calledAt(water, mark.name, at, words),
                        depth           ? words.depth(*depth)
                        : derived.drawn ? QStringLiteral("no water that day")
                                        : QString()});
    }
    return rows;
}

units::Area areaOf(const water::Water& water, const water::BannedWater& banned) {
    return units::Area::squareMetres(
        std::fabs(geo::signedArea_m2(water.frame->toWater(banned.ring))));
}

geo::WaterPoint middleOf(const water::Water& water, const water::BannedWater& banned) {
    geo::WaterPoint sum;
    for (const geo::WaterPoint p : water.frame->toWater(banned.ring)) {
        sum.x_m += p.x_m;
        sum.y_m += p.y_m;
    }
    const auto corners = static_cast<double>(banned.ring.size());
    return {sum.x_m / corners, sum.y_m / corners};
}

std::vector<QStringList> bannedRows(const water::Water& water, const Words& words) {
    std::vector<QStringList> rows;
    for (const water::BannedWater& banned : water.banned) {
        if (!water.frame) {
            break;
        }
        rows.push_back({calledAt(water, banned.name, middleOf(water, banned), words),
                        words.area(areaOf(water, banned))});
    }
    return rows;
}

} // namespace days::tomorrow
