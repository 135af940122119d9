// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/number_sections.h"

#include "core/grid/cells_within.h"
#include "core/sections/match_waters.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <string>

namespace sections {

namespace {

/// A number goes only to water that shares this much of the smaller of the two (ours).
constexpr double leastShared = 0.5;
/// How much less a number counts that is no longer on the map: always less than one that is, and
/// still more than none.
constexpr double worthOffMap = 0.5;

std::vector<geo::Piece> inWater(const std::vector<geo::LonLatPiece>& pieces,
                                const geo::WaterFrame& frame) {
    std::vector<geo::Piece> made;
    for (const geo::LonLatPiece& piece : pieces) {
        made.push_back(geo::toWater(piece, frame));
    }
    return made;
}

std::vector<SharedWater> sharedWith(const SectionMap& map, std::span<const NumberedWater> known,
                                    const geo::WaterFrame& frame) {
    std::vector<SharedWater> shared;
    for (std::size_t k = 0; k < known.size(); ++k) {
        const auto cells =
            grid::cellsWithin(inWater(known[k].pieces, frame), map.sectionOfCell.frame());
        std::map<SectionNumber, std::size_t> within;
        for (const std::size_t cell : cells) {
            ++within[map.sectionOfCell[cell]];
        }
        within.erase(noSection);
        for (const auto& [section, both] : within) {
            const auto now = map.sections[static_cast<std::size_t>(section)].cells.size();
            const auto smaller = static_cast<double>(std::min(cells.size(), now));
            if (static_cast<double>(both) >= leastShared * smaller) {
                shared.push_back(
                    {section, static_cast<int>(k),
                     static_cast<double>(both) * (known[k].isOnMap ? 1.0 : worthOffMap)});
            }
        }
    }
    return shared;
}

int highestOf(std::span<const NumberedWater> known) {
    int highest = 0;
    for (const NumberedWater& water : known) {
        highest = std::max(highest, water.number);
    }
    return highest;
}

void nameSections(SectionMap& map, std::span<const SectionName> names,
                  const geo::WaterFrame& frame) {
    std::map<int, Section*> byNumber;
    for (Section& section : map.sections) {
        section.name = "Section " + std::to_string(section.number);
        byNumber[section.number] = &section;
    }
    // What is named by place gives way to what is named by number, whatever the order.
    for (const SectionName& name : names) {
        const SectionNumber there = sectionAt(map, frame.toWater(name.seed));
        if (!byNumber.contains(name.number) && there != noSection) {
            map.sections[static_cast<std::size_t>(there)].name = name.name;
        }
    }
    for (const SectionName& name : names) {
        if (const auto found = byNumber.find(name.number); found != byNumber.end()) {
            found->second->name = name.name;
        }
    }
}

/// Lists of sections are read by their numbers.
void orderByNumber(SectionMap& map) {
    std::vector<std::size_t> order(map.sections.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::sort(order, {}, [&](std::size_t i) { return map.sections[i].number; });
    std::vector<SectionNumber> placeOf(order.size());
    std::vector<Section> ordered;
    ordered.reserve(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        placeOf[order[i]] = static_cast<SectionNumber>(i);
        ordered.push_back(std::move(map.sections[order[i]]));
    }
    map.sections = std::move(ordered);
    for (SectionNumber& section : map.sectionOfCell.values()) {
        section = section == noSection ? noSection : placeOf[static_cast<std::size_t>(section)];
    }
}

std::vector<geo::LonLatPiece> onEarth(const std::vector<geo::Piece>& pieces,
                                      const geo::WaterFrame& frame) {
    std::vector<geo::LonLatPiece> made;
    for (const geo::Piece& piece : pieces) {
        made.push_back(geo::toEarth(piece, frame));
    }
    return made;
}

} // namespace

void numberSections(SectionMap& map, const Numbering& known, std::span<const SectionName> names,
                    const geo::WaterFrame& frame) {
    const std::vector<NumberedWater>& waters = known.waters;
    const std::vector<int> pairs =
        matchWaters(sharedWith(map, waters, frame), static_cast<int>(map.sections.size()),
                    static_cast<int>(waters.size()));
    int highest = highestOf(waters);
    for (std::size_t i = 0; i < map.sections.size(); ++i) {
        map.sections[i].number =
            pairs[i] >= 0 ? waters[static_cast<std::size_t>(pairs[i])].number : ++highest;
    }
    nameSections(map, names, frame);
    orderByNumber(map);
}

Numbering numberingAfter(const SectionMap& map, const Numbering& known, units::Area wantedArea,
                         const geo::WaterFrame& frame) {
    std::map<int, NumberedWater> byNumber;
    for (const NumberedWater& water : known.waters) {
        byNumber.emplace(water.number, water).first->second.isOnMap = false;
    }
    for (const Section& section : map.sections) {
        byNumber[section.number] = {section.number, true, onEarth(section.pieces, frame)};
    }
    Numbering after;
    after.wantedArea = wantedArea;
    for (auto& [number, water] : byNumber) {
        after.waters.edit().push_back(std::move(water));
    }
    for (const std::vector<geo::Piece>& part : map.partsBefore) {
        after.parts.edit().push_back(onEarth(part, frame));
    }
    return after;
}

} // namespace sections
