// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/belief_record.h"

#include "core/marks/beliefs.h"
#include "core/structure/zone_kinds.h"

#include <algorithm>
#include <cmath>

namespace marks {

namespace {

using learning::Features;
using learning::Group;
using structure::ZoneKind;

/// Shares of the circle of a cast that such a thing usually takes (ours).
constexpr double ofDropOff = 0.4;
constexpr double ofWeedEdge = 0.2;
constexpr double ofWeedBed = 0.3;
constexpr double ofFeature = 0.3;
constexpr auto featureKinds =
    static_cast<double>(std::ranges::count_if(structure::allZoneKinds, &structure::isFeature));

void add(Features& to, ZoneKind kind, double under, double near) {
    const auto key = static_cast<std::int64_t>(kind) + 1;
    if (under > 0.0) {
        to.push_back({Group::kindAt, key, under});
    }
    to.push_back({Group::kindsNear, key, near});
}

Features typicalOf(FactorKind kind) {
    Features features;
    switch (kind) {
    case FactorKind::dropOff:
        add(features, ZoneKind::dropOff, 1.0, ofDropOff);
        break;
    case FactorKind::weedEdge:
        add(features, ZoneKind::weedEdge, 1.0, ofWeedEdge);
        add(features, ZoneKind::weedBed, 0.0, ofWeedBed);
        break;
    case FactorKind::feature:
        for (const ZoneKind one : structure::allZoneKinds) {
            if (structure::isFeature(one)) {
                add(features, one, 1.0 / featureKinds, ofFeature / featureKinds);
            }
        }
        break;
    case FactorKind::windward:
        features.push_back({Group::wind, 0, 1.0});
        break;
    default:
        break;
    }
    return features;
}

} // namespace

std::vector<BeliefRecord> beliefRecordsOf(const Weights& weights, const LearnedCatch* learned) {
    std::vector<BeliefRecord> records;
    for (const FactorKind kind : allFactorKinds) {
        const Features features = typicalOf(kind);
        const double said = learned != nullptr ? believedBesideLog(weights, kind, 1.0)
                                               : believedAlone(weights, kind, 1.0);
        BeliefRecord record{kind, weights.of(kind), std::nullopt, std::exp(said),
                            !features.empty()};
        const bool isTouched =
            learned != nullptr && std::ranges::any_of(features, [&](const learning::Feature& one) {
                return learned->model.positionOf(one.group, one.key).has_value();
            });
        if (isTouched) {
            const learning::Expectation effect = learned->model.effect(features);
            const auto [low, high] = effect.interval80();
            record.log = BeliefRecord::LogSays{effect.rate(), low, high};
        }
        records.push_back(record);
    }
    return records;
}

} // namespace marks
