// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/propose_section_names.h"

#include "core/water/steps/near_place.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <utility>

namespace water {

namespace {

constexpr int roundIt = -1; ///< In the place of one of the eight ways.

/// A section may be called by a place; the nearer, the better.
struct Candidate {
    bool isHolder = false;
    double distance_m = 0.0;
    std::size_t section = 0;
    std::size_t place = 0;
};

std::vector<Candidate> candidatesOf(const sections::SectionMap& map,
                                    const std::vector<PlacedName>& places) {
    std::vector<Candidate> all;
    for (std::size_t i = 0; i < map.sections.size(); ++i) {
        const sections::Section& section = map.sections[i];
        const double reach_m =
            std::max(nearEnoughToName.inMetres(), std::sqrt(section.area.inSquareMetres()));
        for (std::size_t k = 0; k < places.size(); ++k) {
            const bool isHolder =
                sections::sectionAt(map, places[k].at) == static_cast<sections::SectionNumber>(i);
            const double distance_m = geo::distance_m(places[k].at, section.middle);
            if (isHolder || distance_m <= reach_m) {
                all.push_back({isHolder, distance_m, i, k});
            }
        }
    }
    std::ranges::sort(all, {}, [](const Candidate& one) {
        return std::tuple(!one.isHolder, one.distance_m, one.section, one.place);
    });
    return all;
}

} // namespace

int eighthOf(units::Bearing bearing) {
    return static_cast<int>(std::lround(bearing.inDegrees() / 45.0)) % 8;
}

std::vector<std::optional<SectionNameProposal>> proposeSectionNames(const Water& water,
                                                                    const Derived& derived) {
    if (!derived.sections || !water.frame) {
        return {};
    }
    const sections::SectionMap& map = *derived.sections;
    const std::vector<PlacedName> places = placedNames(water);
    std::vector<std::optional<SectionNameProposal>> proposals(map.sections.size());
    std::set<std::pair<std::string, int>> taken;
    for (const Candidate& one : candidatesOf(map, places)) {
        auto& proposal = proposals[one.section];
        const PlacedName& place = places[one.place];
        const units::Bearing towards = geo::bearing(place.at, map.sections[one.section].middle);
        const int way = one.isHolder ? roundIt : eighthOf(towards);
        if (!proposal && taken.emplace(place.name, way).second) {
            proposal = {place.name, one.isHolder ? std::nullopt : std::optional(towards)};
        }
    }
    return proposals;
}

} // namespace water
