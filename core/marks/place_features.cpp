// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/place_features.h"

#include "core/learning/ground_features.h"
#include "core/structure/zone_kinds.h"

#include <algorithm>
#include <array>

namespace marks {

namespace {

using learning::Features;
using learning::Group;
using structure::ZoneKind;

constexpr std::array partKinds{FactorKind::depth,   FactorKind::dropOff, FactorKind::weedEdge,
                               FactorKind::feature, FactorKind::bottom,  FactorKind::windward,
                               FactorKind::hour,    FactorKind::record};

/// Of open water, where no zone lies; zones are counted from 1.
constexpr std::int64_t openWater = 0;
/// Seasons in a section's keys.
constexpr std::int64_t seasonStride = 8;

Features& partOf(std::vector<FeaturePart>& parts, FactorKind kind) {
    return std::ranges::find(parts, kind, &FeaturePart::kind)->features;
}

std::int64_t keyOf(ZoneKind kind) {
    return static_cast<std::int64_t>(kind) + 1;
}

void addKinds(const MarkInput& input, const Surroundings& around, geo::WaterPoint place,
              std::vector<FeaturePart>& parts) {
    const auto under = input.ground.kindAt(place);
    partOf(parts, under ? reasonOf(*under) : FactorKind::bottom)
        .push_back({Group::kindAt, under ? keyOf(*under) : openWater, 1.0});
    for (const ZoneKind kind : structure::allZoneKinds) {
        const double share = around.shareOfKind[static_cast<std::size_t>(kind)];
        if (share > 0.0) {
            partOf(parts, reasonOf(kind)).push_back({Group::kindsNear, keyOf(kind), share});
        }
    }
}

void addWhereabouts(const MarkInput& input, geo::WaterPoint place, int season, Features& to) {
    const auto& map = input.sections.sectionOfCell;
    const grid::Cell c = map.frame().cellOf(place);
    if (map.frame().holds(c) && map[c] != sections::noSection) {
        to.push_back({Group::section, map[c], 1.0});
        to.push_back({Group::sectionBySeason, map[c] * seasonStride + season, 1.0});
    }
    learning::addPlace(to, place);
}

} // namespace

FactorKind reasonOf(ZoneKind kind) {
    switch (structure::factsOf(kind).family) {
    case structure::KindFamily::dropOff:
        return FactorKind::dropOff;
    case structure::KindFamily::weed:
        return FactorKind::weedEdge;
    case structure::KindFamily::feature:
        return FactorKind::feature;
    case structure::KindFamily::level:
        break;
    }
    return FactorKind::bottom;
}

std::vector<FeaturePart> placeFeaturesOf(const MarkInput& input, const Surroundings& around,
                                         geo::WaterPoint place, const Circumstances& then) {
    std::vector<FeaturePart> parts;
    for (const FactorKind kind : partKinds) {
        parts.push_back({kind, {}});
    }
    Features& depth = partOf(parts, FactorKind::depth);
    learning::addDepth(depth, Group::depth, around.depth);
    learning::addDepth(depth, Group::depthByTemperature, around.depth,
                       learning::temperatureScale(then.waterTemperature));
    addKinds(input, around, place, parts);
    if (then.windward != 0.5) {
        partOf(parts, FactorKind::windward).push_back({Group::wind, 0, 2.0 * then.windward - 1.0});
    }
    partOf(parts, FactorKind::hour) = then.hours;
    addWhereabouts(input, place, then.season, partOf(parts, FactorKind::record));
    return parts;
}

Features joined(const std::vector<FeaturePart>& parts) {
    Features all;
    for (const FeaturePart& part : parts) {
        all.insert(all.end(), part.features.begin(), part.features.end());
    }
    return all;
}

} // namespace marks
