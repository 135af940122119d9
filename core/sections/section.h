// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/outline.h"
#include "core/grid/grid.h"
#include "core/sections/section_change.h"
#include "core/units/area.h"
#include "core/units/depth.h"

#include <array>
#include <string>
#include <vector>

namespace sections {

/// Position in SectionMap::sections, from 0: of this map alone. The number that an angler knows a
/// section by, and that stays, is Section::number.
using SectionNumber = std::int32_t;
inline constexpr SectionNumber noSection = -1;

/// A part of the fishable water, that one outing can cover.
struct Section {
    int number = 0;   ///< From 1; that of the same water on earlier maps. New water: clockwise.
    std::string name; ///< The user's, or "Section 3".
    std::vector<std::size_t> cells; ///< Indices in the grid, ascending.
    std::vector<geo::Piece> pieces; ///< Its outline.
    geo::WaterPoint
        middle; ///< A point inside it, far from its borders, for its label and its name.
    geo::Path
        spine; ///< A line along the middle of its water, to set the name on; may be a single point.
    units::Area area;
    units::Depth meanDepth;
    units::Depth maxDepth;
    units::Length shore;                ///< Length of bank.
    units::Length dropOff;              ///< Length of drop-off edge in it.
    double weedShare = 0.0;             ///< Share of its area where weed is more likely than not.
    std::array<double, 3> trustShare{}; ///< Shares of its area: sounded, inferred, guess.
    std::vector<double> bandShare;      ///< Share of its area by band, as many as there are bands.
    units::Length fromLaunch;           ///< Over water from the launch to its middle.
};

/// A name that the user gave to a section; it goes with the section's number. `seed` is a place
/// that was inside it then, and counts where no section has that number any more.
struct SectionName {
    geo::LonLat seed;
    std::string name;
    int number = 0; ///< 0 in files of earlier versions: the section that holds `seed`.
    friend bool operator==(const SectionName&, const SectionName&) = default;
};

/// How the division came about and how well it came out, before the user changed it.
struct DivisionReport {
    double depthWeight = 0.0; ///< How much even depth counted against compact shape.
    double compactness = 0.0; ///< Median of 4 pi A / P^2 of the sections.
    double straightCompactness =
        0.0;                ///< The same for pieces cut by straight distance; 0: not asked.
    double explained = 0.0; ///< Share of the variance of depth that lies between the sections.
    double straightExplained = 0.0; ///< The same for pieces cut by straight distance.
};

/// All sections over one grid.
struct SectionMap {
    std::vector<Section> sections;
    grid::Grid<SectionNumber>
        sectionOfCell; ///< noSection where the water is too deep, closed, or land.
    /// The division before the user changed it; empty where he changed nothing.
    std::vector<std::vector<geo::Piece>> partsBefore;
    DivisionReport report;
    std::vector<ChangeRefused> refused; ///< Of the user's changes, those that could not be made.
};

/// The section that holds the place; noSection where none does.
[[nodiscard]] inline SectionNumber sectionAt(const SectionMap& map, geo::WaterPoint place) {
    const grid::Cell cell = map.sectionOfCell.frame().cellOf(place);
    return map.sectionOfCell.frame().holds(cell) ? map.sectionOfCell[cell] : noSection;
}

} // namespace sections
