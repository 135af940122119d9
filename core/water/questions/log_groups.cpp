// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/log_groups.h"

#include "core/base/number_text.h"
#include "core/structure/zone_kinds.h"
#include "core/water/document/chosen_scale.h"
#include "core/water/questions/locate.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <functional>
#include <limits>
#include <map>
#include <optional>

namespace water {

namespace {

constexpr double sameMark_m = 25.0;
/// How far the middle of the baits may be off where it is noted (our choice, no source).
constexpr units::Length baitsKnownTo = units::Length::metres(15.0);

template <class PlaceOf>
std::vector<rates::GroupedStay> grouped(const Water& water, const PlaceOf& groupOf) {
    std::vector<rates::GroupedStay> groups;
    for (const logbook::Stay& stay : water.log) {
        groups.push_back(
            rates::wholeStay(stay, water.frame ? groupOf(stay) : std::string(elsewhere)));
    }
    return groups;
}

/// By where the boat lay.
std::vector<rates::GroupedStay>
byPlace(const Water& water, const std::function<std::string(geo::WaterPoint)>& groupOf) {
    return grouped(water, [&](const logbook::Stay& stay) {
        return groupOf(water.frame->toWater(stay.place));
    });
}

/// By what was fished: where the baits lay, or else what lies within a cast of the boat.
std::vector<rates::GroupedStay> byBaits(const Water& water,
                                        const std::function<std::string(const Fished&)>& groupOf) {
    return grouped(water, [&](const logbook::Stay& stay) {
        return groupOf(stay.baitPlace
                           ? Fished{water.frame->toWater(*stay.baitPlace), baitsKnownTo}
                           : Fished{water.frame->toWater(stay.place), water.plan.tackle.cast});
    });
}

/// 4 and not 4.0.
std::string shortMetres(units::Depth depth) {
    const std::string text = base::fixedText(depth.inMetres(), 1);
    return text.ends_with(".0") ? text.substr(0, text.size() - 2) : text;
}

/// Calls `take(cell, distance in metres)` for the cells whose middle lies within reach.
template <class Take>
void forCellsWithin(const grid::GridFrame& frame, const Fished& fished, const Take& take) {
    const auto& [place, within] = fished;
    const grid::Cell middle = frame.cellOf(place);
    const int reach = static_cast<int>(std::ceil(within.inMetres() / frame.cell_m()));
    for (int row = middle.row - reach; row <= middle.row + reach; ++row) {
        for (int col = middle.col - reach; col <= middle.col + reach; ++col) {
            const grid::Cell cell{col, row};
            const double away_m = geo::distance_m(frame.centre(cell), place);
            if (frame.holds(cell) && away_m <= within.inMetres()) {
                take(cell, away_m);
            }
        }
    }
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

/// How many days ago at most, and what that is called.
struct Lately {
    int most;
    const char* name;
};
constexpr std::array latelies{Lately{0, "the same day"},
                              Lately{3, "1 to 3 days before"},
                              Lately{7, "4 to 7 days before"},
                              Lately{14, "8 to 14 days before"},
                              Lately{30, "15 to 30 days before"},
                              Lately{std::numeric_limits<int>::max(), "over 30 days before"}};
constexpr const char* firstTime = "for the first time";

std::string latelyNamed(std::chrono::days ago) {
    return std::ranges::find_if(latelies,
                                [ago](const Lately& one) { return ago.count() <= one.most; })
        ->name;
}

/// The places that stays were anchored on, numbered from 1 as they come.
class MarksSoFar {
public:
    /// Of the first of them within reach; a new one where there is none.
    std::size_t numberAt(geo::WaterPoint place) {
        const auto [col, row] = squareOf(place);
        std::size_t first = places_.size();
        for (int dx = -1; dx <= 1; ++dx) {
            for (int dy = -1; dy <= 1; ++dy) {
                const auto square = squares_.find({col + dx, row + dy});
                if (square == squares_.end()) {
                    continue;
                }
                for (const std::size_t mark : square->second) {
                    const bool isHere = geo::distance_m(places_[mark], place) <= sameMark_m;
                    first = isHere ? std::min(first, mark) : first;
                }
            }
        }
        if (first == places_.size()) {
            places_.push_back(place);
            squares_[{col, row}].push_back(first);
        }
        return first + 1;
    }
    /// The first stay on each named it.
    [[nodiscard]] const std::vector<geo::WaterPoint>& places() const { return places_; }

private:
    static std::pair<int, int> squareOf(geo::WaterPoint place) {
        return {static_cast<int>(std::floor(place.x_m / sameMark_m)),
                static_cast<int>(std::floor(place.y_m / sameMark_m))};
    }

    std::vector<geo::WaterPoint> places_;
    std::map<std::pair<int, int>, std::vector<std::size_t>> squares_;
};

/// The last day on which each small square of the water was fished.
class LastFished {
public:
    explicit LastFished(double reach_m) : reach_m_(reach_m), square_m_(reach_m / perReach) {}

    [[nodiscard]] std::optional<std::chrono::sys_days> dayAt(geo::WaterPoint place) const {
        const auto [col, row] = squareOf(place);
        std::optional<std::chrono::sys_days> last;
        for (int dx = -perReach; dx <= perReach; ++dx) {
            for (int dy = -perReach; dy <= perReach; ++dy) {
                const auto found = days_.find({col + dx, row + dy});
                if (found != days_.end() && (!last || found->second.day > *last) &&
                    geo::distance_m(found->second.place, place) <= reach_m_) {
                    last = found->second.day;
                }
            }
        }
        return last;
    }
    void take(geo::WaterPoint place, std::chrono::sys_days day) {
        days_.insert_or_assign(squareOf(place), Fished{place, day});
    }

private:
    static constexpr int perReach = 4;
    using Square = std::pair<int, int>;
    struct Fished {
        geo::WaterPoint place;
        std::chrono::sys_days day;
    };

    [[nodiscard]] Square squareOf(geo::WaterPoint place) const {
        return {static_cast<int>(std::floor(place.x_m / square_m_)),
                static_cast<int>(std::floor(place.y_m / square_m_))};
    }

    double reach_m_;
    double square_m_;
    std::map<Square, Fished> days_;
};

} // namespace

std::string bandName(const contours::Bands& bands, std::size_t band) {
    const auto to = bands.to(band);
    return to ? shortMetres(bands.from(band)) + " to " + shortMetres(*to) + " m"
              : "over " + shortMetres(bands.from(band)) + " m";
}

std::string zoneGroup(const Water& water, const Derived& derived, const Fished& fished) {
    const Located found = locate(water, derived, fished.place);
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
        forCellsWithin(map->zoneOfCell.frame(), fished, [&](grid::Cell cell, double away_m) {
            const structure::ZoneNumber number = map->zoneOfCell[cell];
            if (number == structure::noZone) {
                return;
            }
            const auto* zone = &map->zones[static_cast<std::size_t>(number)];
            if (structure::isPlaceToFish(zone->kind) && isBetter(*zone, away_m, best, distance_m)) {
                best = zone;
                distance_m = away_m;
            }
        });
    }
    if (best != nullptr) {
        return std::string(structure::nameOf(best->kind));
    }
    return std::string(*found.depth > bandsOf(water, derived).limit() ? tooDeep : plainBottom);
}

std::vector<rates::GroupedStay> bySection(const Water& water, const Derived& derived) {
    return byBaits(water, [&](const Fished& fished) {
        const Located found = locate(water, derived, fished.place);
        if (found.section != nullptr) {
            return found.section->name;
        }
        if (!found.depth) {
            return std::string(elsewhere);
        }
        const auto& map = derived.sections->sectionOfCell;
        sections::SectionNumber nearest = sections::noSection;
        double nearest_m = HUGE_VAL;
        forCellsWithin(map.frame(), fished, [&](grid::Cell cell, double away_m) {
            if (map[cell] != sections::noSection && away_m < nearest_m) {
                nearest = map[cell];
                nearest_m = away_m;
            }
        });
        if (nearest != sections::noSection) {
            return derived.sections->sections[static_cast<std::size_t>(nearest)].name;
        }
        return std::string(*found.depth > bandsOf(water, derived).limit() ? tooDeep : elsewhere);
    });
}

std::vector<rates::GroupedStay> byZone(const Water& water, const Derived& derived) {
    return byBaits(water, [&](const Fished& fished) { return zoneGroup(water, derived, fished); });
}

std::vector<rates::GroupedStay> byBand(const Water& water, const Derived& derived) {
    return byBaits(water, [&](const Fished& fished) {
        const Located found = locate(water, derived, fished.place);
        return found.band ? bandName(bandsOf(water, derived), *found.band) : std::string(elsewhere);
    });
}

std::vector<rates::GroupedStay> byMark(const Water& water) {
    MarksSoFar known;
    return byPlace(
        water, [&known](geo::WaterPoint p) { return "mark " + std::to_string(known.numberAt(p)); });
}

std::vector<std::string> daysSinceOrder() {
    std::vector<std::string> order{std::string(firstTime)};
    for (const Lately& lately : latelies) {
        order.emplace_back(lately.name);
    }
    return order;
}

std::vector<rates::GroupedStay> byDaysSince(const Water& water) {
    LastFished last(0.5 * water.plan.tackle.cast.inMetres());
    std::vector<rates::GroupedStay> grouped;
    for (const logbook::Stay& stay : water.log) {
        if (!water.frame) {
            grouped.push_back(rates::wholeStay(stay, std::string(elsewhere)));
            continue;
        }
        const geo::WaterPoint place = water.frame->toWater(stay.place);
        const std::chrono::sys_days day(water.clock.dayOf(stay.start));
        const auto before = last.dayAt(place);
        grouped.push_back(rates::wholeStay(stay, before ? latelyNamed(day - *before) : firstTime));
        last.take(place, day);
    }
    return grouped;
}

std::vector<geo::LonLat> placesOfMarks(const Water& water) {
    std::vector<geo::LonLat> places;
    if (!water.frame) {
        return places;
    }
    MarksSoFar known;
    for (const logbook::Stay& stay : water.log) {
        known.numberAt(water.frame->toWater(stay.place));
    }
    for (const geo::WaterPoint at : known.places()) {
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
