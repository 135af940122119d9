// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/section_card.h"

#include "core/base/two_at_once.h"
#include "core/grid/cell_polygons.h"
#include "core/grid/distance_field.h"
#include "core/grid/piece_middles.h"
#include "core/sections/number_sections.h"
#include "core/sections/section_spine.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace sections {

namespace {

double cellArea_m2(const DivideInput& input, std::size_t cell) {
    return static_cast<double>(input.mask.share(cell)) * input.mask.frame().cellArea_m2();
}

bool isWeed(const DivideInput& input, std::size_t cell) {
    return input.weed != nullptr && input.weed->probability.size() > cell &&
           input.weed->probability[cell] > 0.5F;
}

void fillFromCells(Section& section, const DivideInput& input) {
    section.bandShare.assign(input.bands.count(), 0.0);
    double area_m2 = 0.0;
    double depth_m3 = 0.0;
    double deepest_m = 0.0;
    double weed_m2 = 0.0;
    std::array<double, 3> trust_m2{};
    for (const std::size_t cell : section.cells) {
        const double wet_m2 = cellArea_m2(input, cell);
        const double depth_m = static_cast<double>(input.depth.raw_m()[cell]);
        area_m2 += wet_m2;
        depth_m3 += wet_m2 * depth_m;
        deepest_m = std::max(deepest_m, depth_m);
        weed_m2 += isWeed(input, cell) ? wet_m2 : 0.0;
        if (input.trustNames != nullptr) {
            trust_m2[std::min<std::size_t>((*input.trustNames)[cell], 2)] += wet_m2;
        }
        section.bandShare[input.bands.bandOf(units::Depth::metres(depth_m))] += wet_m2;
    }
    const double whole_m2 = std::max(area_m2, 1e-9);
    section.area = units::Area::squareMetres(area_m2);
    section.meanDepth = units::Depth::metres(depth_m3 / whole_m2);
    section.maxDepth = units::Depth::metres(deepest_m);
    section.weedShare = weed_m2 / whole_m2;
    for (std::size_t k = 0; k < trust_m2.size(); ++k) {
        section.trustShare[k] = trust_m2[k] / whole_m2;
    }
    for (double& share : section.bandShare) {
        share /= whole_m2;
    }
}

/// Gives the length of a line, bit by bit, to the sections that it runs through.
void giveLength(const geo::WaterPoint a, const geo::WaterPoint b, const SectionMap& map,
                std::vector<double>& length_m) {
    const grid::GridFrame& f = map.sectionOfCell.frame();
    const double whole_m = geo::distance_m(a, b);
    const int bits = std::max(1, static_cast<int>(std::ceil(whole_m / (0.5 * f.cell_m()))));
    for (int k = 0; k < bits; ++k) {
        const double t = (k + 0.5) / bits;
        const grid::Cell c = f.cellOf({a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m)});
        if (f.holds(c) && map.sectionOfCell[c] != noSection) {
            length_m[static_cast<std::size_t>(map.sectionOfCell[c])] += whole_m / bits;
        }
    }
}

void fillLines(SectionMap& map, const DivideInput& input) {
    std::vector<double> shore_m(map.sections.size(), 0.0);
    std::vector<double> dropOff_m(map.sections.size(), 0.0);
    for (const geo::ShoreSegment& segment : input.outline.segments()) {
        giveLength(segment.a, segment.b, map, shore_m);
    }
    if (input.structure != nullptr) {
        for (const structure::Zone& zone : input.structure->zones) {
            for (const std::vector<geo::Path>* lines : {&zone.topEdges, &zone.shoreTops}) {
                for (const geo::Path& edge : *lines) {
                    for (std::size_t k = 1; k < edge.size(); ++k) {
                        giveLength(edge[k - 1], edge[k], map, dropOff_m);
                    }
                }
            }
        }
    }
    for (std::size_t i = 0; i < map.sections.size(); ++i) {
        map.sections[i].shore = units::Length::metres(shore_m[i]);
        map.sections[i].dropOff = units::Length::metres(dropOff_m[i]);
    }
}

void fillWays(SectionMap& map, const DivideInput& input) {
    if (!input.launch) {
        return;
    }
    const auto start = input.mask.nearestActive(*input.launch);
    if (!start) {
        return;
    }
    const auto way_m = grid::distanceOverWater_m(input.mask, std::array{*start});
    for (Section& section : map.sections) {
        section.fromLaunch =
            units::Length::metres(static_cast<double>(way_m[way_m.frame().cellOf(section.middle)]));
    }
}

/// Order of pieces: clockwise by the bearing of their middles as seen from the middle of them all,
/// beginning at the launch or north.
std::vector<std::size_t> clockwise(const std::vector<geo::WaterPoint>& middles,
                                   const std::optional<geo::WaterPoint>& launch) {
    geo::WaterPoint hub;
    for (const geo::WaterPoint& p : middles) {
        hub.x_m += p.x_m / static_cast<double>(middles.size());
        hub.y_m += p.y_m / static_cast<double>(middles.size());
    }
    const units::Bearing begin = launch ? geo::bearing(hub, *launch) : units::Bearing();
    std::vector<std::size_t> order(middles.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return geo::bearing(hub, middles[a]).turnedBy(-begin.inDegrees()).inDegrees() <
               geo::bearing(hub, middles[b]).turnedBy(-begin.inDegrees()).inDegrees();
    });
    return order;
}

} // namespace

SectionMap sectionsFrom(const grid::PieceGrid& pieces, std::size_t count,
                        const DivideInput& input) {
    std::vector<geo::WaterPoint> middles;
    std::vector<std::vector<geo::Piece>> outlines;
    base::twoAtOnce([&] { middles = grid::middlesOf(pieces, count); },
                    [&] { outlines = grid::polygonsOf(pieces, count); });
    const std::vector<std::size_t> order = clockwise(middles, input.launch);
    std::vector<SectionNumber> numberOf(count);
    for (std::size_t i = 0; i < count; ++i) {
        numberOf[order[i]] = static_cast<SectionNumber>(i);
    }
    SectionMap map;
    map.sectionOfCell = grid::Grid<SectionNumber>(pieces.frame(), noSection);
    map.sections.resize(count);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i] >= 0) {
            const SectionNumber number = numberOf[static_cast<std::size_t>(pieces[i])];
            map.sectionOfCell[i] = number;
            map.sections[static_cast<std::size_t>(number)].cells.push_back(i);
        }
    }
    for (std::size_t i = 0; i < count; ++i) {
        Section& section = map.sections[i];
        section.pieces = std::move(outlines[order[i]]);
        section.middle = middles[order[i]];
        section.spine = spineOf(map.sectionOfCell.frame(), section.cells, section.middle);
        fillFromCells(section, input);
    }
    fillLines(map, input);
    fillWays(map, input);
    numberSections(map, input.numbering, input.names, input.frame);
    return map;
}

} // namespace sections
