// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/own_water_view.h"

#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"
#include "core/water/questions/banned_extent.h"
#include "core/water/questions/locate.h"
#include "core/water/steps/near_place.h"

namespace days::tomorrow {

using wording::Words;

namespace {

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
        return {false, wording::Tongue::tr("On no water of this chart: %1 from its middle.")
                           .arg(words.length(off))};
    }
    QStringList parts;
    if (const QString near = nearWords(water, at, words); !near.isEmpty()) {
        parts += near;
    }
    if (const auto depth = water::depthThatDay(water, derived, at)) {
        parts += wording::Tongue::tr("%1 deep that day").arg(words.depth(*depth));
    } else if (derived.drawn) {
        parts += wording::Tongue::tr("dry that day");
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
        const auto depth = water::depthThatDay(water, derived, at);
        rows.push_back({calledAt(water, mark.name, at, words),
                        depth           ? words.depth(*depth)
                        : derived.drawn ? wording::Tongue::tr("no water that day")
                                        : QString()});
    }
    return rows;
}

std::vector<QStringList> bannedRows(const water::Water& water, const Words& words) {
    std::vector<QStringList> rows;
    for (const water::BannedWater& banned : water.banned) {
        if (!water.frame) {
            break;
        }
        const water::BannedExtent extent = water::extentOf(water, banned);
        rows.push_back(
            {calledAt(water, banned.name, extent.middle, words), words.area(extent.area)});
    }
    return rows;
}

} // namespace days::tomorrow
