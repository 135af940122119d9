// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/growth_limit.h"

#include <algorithm>
#include <cmath>

namespace weed {

using units::Depth;

std::string_view nameOf(GrowthRelation relation) {
    switch (relation) {
    case GrowthRelation::chambersKalffWorld:
        return "Chambers and Kalff 1985 (world)";
    case GrowthRelation::chambersKalffQuebec:
        return "Chambers and Kalff 1985 (Quebec)";
    case GrowthRelation::canfield:
        return "Canfield and others 1985";
    case GrowthRelation::caffrey:
        return "Caffrey and others 2007";
    case GrowthRelation::caffreyUpper:
        return "Caffrey and others 2007 (upper envelope)";
    }
    return "";
}

Depth growthLimit(GrowthRelation relation, Depth secchi) {
    const double clarity = std::log10(secchi.inMetres());
    const auto squared = [](double root) { return root > 0.0 ? root * root : 0.0; };
    switch (relation) {
    case GrowthRelation::chambersKalffWorld:
        return Depth::metres(squared(1.33 * clarity + 1.40));
    case GrowthRelation::chambersKalffQuebec:
        return Depth::metres(squared(1.14 * clarity + 1.32));
    case GrowthRelation::canfield:
        return Depth::metres(std::pow(10.0, 0.61 * clarity + 0.26));
    case GrowthRelation::caffrey:
        return Depth::metres(std::pow(10.0, 0.66 * clarity + 0.31));
    case GrowthRelation::caffreyUpper:
        return Depth::metres(std::pow(10.0, 0.53 * clarity + 0.59));
    }
    return {};
}

GrowthRange growthRange(Depth secchi) {
    GrowthRange range{Depth::metres(INFINITY), Depth(), Depth()};
    double count = 0.0;
    for (const GrowthRelation relation : allGrowthRelations) {
        if (relation == GrowthRelation::caffreyUpper) {
            continue;
        }
        const Depth limit = growthLimit(relation, secchi);
        range.low = std::min(range.low, limit);
        range.high = std::max(range.high, limit);
        range.mid += limit;
        count += 1.0;
    }
    range.mid = range.mid / count;
    return range;
}

} // namespace weed
