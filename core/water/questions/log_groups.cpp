// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/log_groups.h"

#include "core/base/number_text.h"
#include "core/water/questions/locate.h"

#include <functional>

namespace water {

namespace {

constexpr double sameMark_m = 25.0;

std::vector<rates::GroupedStay>
byPlace(const Water& water, const std::function<std::string(geo::WaterPoint)>& groupOf) {
    std::vector<rates::GroupedStay> grouped;
    for (const logbook::Stay& stay : water.log) {
        const std::string group =
            water.frame ? groupOf(water.frame->toWater(stay.place)) : std::string(elsewhere);
        grouped.push_back(rates::wholeStay(stay, group));
    }
    return grouped;
}

/// 4 and not 4.0.
std::string shortMetres(units::Depth depth) {
    const std::string text = base::fixedText(depth.inMetres(), 1);
    return text.ends_with(".0") ? text.substr(0, text.size() - 2) : text;
}

} // namespace

std::string bandName(const contours::Bands& bands, std::size_t band) {
    const auto to = bands.to(band);
    return to ? shortMetres(bands.from(band)) + " to " + shortMetres(*to) + " m"
              : "over " + shortMetres(bands.from(band)) + " m";
}

std::string zoneGroup(const Water& water, const Derived& derived, geo::WaterPoint place) {
    const Located found = locate(water, derived, place);
    const structure::Zone* zone = found.zone != nullptr ? found.zone : found.weedZone;
    return zone == nullptr ? std::string(elsewhere) : std::string(structure::nameOf(zone->kind));
}

std::vector<rates::GroupedStay> bySection(const Water& water, const Derived& derived) {
    return byPlace(water, [&](geo::WaterPoint p) {
        const Located found = locate(water, derived, p);
        return found.section == nullptr ? std::string(elsewhere) : found.section->name;
    });
}

std::vector<rates::GroupedStay> byZone(const Water& water, const Derived& derived) {
    return byPlace(water, [&](geo::WaterPoint p) { return zoneGroup(water, derived, p); });
}

std::vector<rates::GroupedStay> byBand(const Water& water, const Derived& derived) {
    return byPlace(water, [&](geo::WaterPoint p) {
        const Located found = locate(water, derived, p);
        return found.band ? bandName(water.settings.bands, *found.band) : std::string(elsewhere);
    });
}

std::vector<rates::GroupedStay> byMark(const Water& water) {
    std::vector<geo::WaterPoint> known;
    return byPlace(water, [&known](geo::WaterPoint p) {
        for (std::size_t i = 0; i < known.size(); ++i) {
            if (geo::distance_m(known[i], p) <= sameMark_m) {
                return "mark " + std::to_string(i + 1);
            }
        }
        known.push_back(p);
        return "mark " + std::to_string(known.size());
    });
}

} // namespace water
