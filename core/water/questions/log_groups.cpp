// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/log_groups.h"

#include "core/base/number_text.h"
#include "core/structure/zone_kinds.h"
#include "core/water/questions/locate.h"

#include <algorithm>
#include <cmath>
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

/// Calls `take(cell, distance in metres)` for the cells whose middle lies within a cast.
template <class Take>
void forCellsWithin(const grid::GridFrame& frame, geo::WaterPoint place, units::Length cast,
                    const Take& take) {
    const grid::Cell middle = frame.cellOf(place);
    const int reach = static_cast<int>(std::ceil(cast.inMetres() / frame.cell_m()));
    for (int row = middle.row - reach; row <= middle.row + reach; ++row) {
        for (int col = middle.col - reach; col <= middle.col + reach; ++col) {
            const grid::Cell cell{col, row};
            const double away_m = geo::distance_m(frame.centre(cell), place);
            if (frame.holds(cell) && away_m <= cast.inMetres()) {
                take(cell, away_m);
            }
        }
    }
}

/// What one anchors beside in order to fish it, and not just the ground round about.
bool isPlaceToFish(structure::ZoneKind kind) {
    constexpr double leastWorth = 0.75; // features and edges, as the table of kinds has them
    return structure::factsOf(kind).worthToABait >= leastWorth;
}

/// Worth more to a bait, or as much and nearer.
bool isBetter(const structure::Zone& zone, double away_m, const structure::Zone* best,
              double best_m) {
    if (best == nullptr) {
        return true;
    }
    const double worth = structure::factsOf(zone.kind).worthToABait;
    const double bestWorth = structure::factsOf(best->kind).worthToABait;
    return worth > bestWorth || (worth == bestWorth && away_m < best_m);
}

/// Which place each stay of the log was anchored on, the places numbered as they were first fished.
struct MarksOfStays {
    std::vector<std::size_t> ofStay;
    std::vector<geo::WaterPoint> places;
};

/// Empty for a water without a frame.
MarksOfStays marksOfStays(const Water& water) {
    MarksOfStays marks;
    if (!water.frame) {
        return marks;
    }
    for (const logbook::Stay& stay : water.log) {
        const geo::WaterPoint p = water.frame->toWater(stay.place);
        const auto known = std::ranges::find_if(marks.places, [p](geo::WaterPoint each) {
            return geo::distance_m(each, p) <= sameMark_m;
        });
        marks.ofStay.push_back(static_cast<std::size_t>(known - marks.places.begin()));
        if (known == marks.places.end()) {
            marks.places.push_back(p);
        }
    }
    return marks;
}

} // namespace

std::string bandName(const contours::Bands& bands, std::size_t band) {
    const auto to = bands.to(band);
    return to ? shortMetres(bands.from(band)) + " to " + shortMetres(*to) + " m"
              : "over " + shortMetres(bands.from(band)) + " m";
}

std::string zoneGroup(const Water& water, const Derived& derived, geo::WaterPoint place) {
    const Located found = locate(water, derived, place);
    if (!found.depth) {
        return std::string(elsewhere);
    }
    const structure::Zone* own = found.zone != nullptr ? found.zone : found.weedZone;
    const structure::Zone* best = own;
    double distance_m = 0.0;
    for (const structure::ZoneMap* map :
         {derived.structure.get(), derived.weed ? &derived.weed->zones : nullptr}) {
        if (map == nullptr) {
            continue;
        }
        forCellsWithin(map->zoneOfCell.frame(), place, water.plan.tackle.cast,
                       [&](grid::Cell cell, double away_m) {
                           const structure::ZoneNumber number = map->zoneOfCell[cell];
                           if (number == structure::noZone) {
                               return;
                           }
                           const auto* zone = &map->zones[static_cast<std::size_t>(number)];
                           if (isPlaceToFish(zone->kind) &&
                               isBetter(*zone, away_m, best, distance_m)) {
                               best = zone;
                               distance_m = away_m;
                           }
                       });
    }
    if (best != nullptr) {
        return std::string(structure::nameOf(best->kind));
    }
    return std::string(*found.depth > water.settings.bands.limit() ? tooDeep : plainBottom);
}

std::vector<rates::GroupedStay> bySection(const Water& water, const Derived& derived) {
    return byPlace(water, [&](geo::WaterPoint p) {
        const Located found = locate(water, derived, p);
        if (found.section != nullptr) {
            return found.section->name;
        }
        if (!found.depth) {
            return std::string(elsewhere);
        }
        const auto& map = derived.sections->sectionOfCell;
        sections::SectionNumber nearest = sections::noSection;
        double nearest_m = HUGE_VAL;
        forCellsWithin(map.frame(), p, water.plan.tackle.cast, [&](grid::Cell cell, double away_m) {
            if (map[cell] != sections::noSection && away_m < nearest_m) {
                nearest = map[cell];
                nearest_m = away_m;
            }
        });
        if (nearest != sections::noSection) {
            return derived.sections->sections[static_cast<std::size_t>(nearest)].name;
        }
        return std::string(*found.depth > water.settings.bands.limit() ? tooDeep : elsewhere);
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
    const std::vector<std::size_t> marks = marksOfStays(water).ofStay;
    std::vector<rates::GroupedStay> grouped;
    for (const logbook::Stay& stay : water.log) {
        grouped.push_back(
            rates::wholeStay(stay, water.frame ? "mark " + std::to_string(marks[grouped.size()] + 1)
                                               : std::string(elsewhere)));
    }
    return grouped;
}

std::vector<geo::LonLat> placesOfMarks(const Water& water) {
    std::vector<geo::LonLat> places;
    for (const geo::WaterPoint at : marksOfStays(water).places) {
        places.push_back(water.frame->toEarth(at));
    }
    return places;
}

bool fishedBait(const logbook::Stay& stay, std::string_view bait) {
    const std::string wanted = base::lowerCase(bait);
    const auto names = [&wanted](std::string_view several) {
        while (!several.empty()) {
            const std::size_t comma = several.find(',');
            if (base::lowerCase(base::trimmed(several.substr(0, comma))) == wanted) {
                return true;
            }
            several.remove_prefix(comma == std::string_view::npos ? several.size() : comma + 1);
        }
        return false;
    };
    return names(stay.bait) || std::ranges::any_of(stay.runs, [&](const logbook::Fish& run) {
               return names(run.bait);
           });
}

} // namespace water
