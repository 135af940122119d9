// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/divide_water.h"

#include "core/sections/section_card.h"
#include "core/sections/smooth_borders.h"
#include "core/sections/split_graph.h"
#include "core/sections/water_graph.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace sections {

using base::ErrorKind;
using base::Result;

namespace {

/// Lumps that a section of the wanted size is made of: enough for smooth borders, few enough to be
/// quick.
constexpr double lumpsInSection = 400.0;
constexpr int smoothingPasses = 4;

Result<void> checkSettings(const DivideInput& input, const SectionSettings& settings) {
    const double wanted_m2 = settings.wantedArea.inSquareMetres();
    if (!(wanted_m2 >= 100.0 && wanted_m2 <= 1e7)) {
        return base::fail(ErrorKind::wrongUse,
                          "the wanted size of a section must be between 0.01 and 1000 ha",
                          "sections", "4 ha is common");
    }
    if (!(settings.leastPocket >= 0.0 && settings.leastPocket <= 0.5) ||
        !(settings.featureWeight >= 0.0 && settings.featureWeight <= 10.0)) {
        return base::fail(ErrorKind::wrongUse, "a setting of the sections is out of its range",
                          "sections", "take the usual ones");
    }
    if (input.depth.frame() != input.mask.frame() ||
        (input.closed != nullptr && input.closed->frame() != input.mask.frame())) {
        return base::fail(ErrorKind::wrongUse,
                          "depths, water and closed water lie on different cells", "sections",
                          "draw the water anew");
    }
    if (wanted_m2 < 4.0 * input.mask.frame().cellArea_m2()) {
        return base::fail(
            ErrorKind::wrongUse,
            fmt::format("the wanted size of a section is smaller than four cells of {} m",
                        input.mask.frame().cell_m()),
            "sections", "ask for larger sections or draw with smaller cells");
    }
    return {};
}

struct Fishable {
    grid::Grid<std::uint8_t> cells;
    std::size_t wet = 0;
    std::size_t shallow = 0;
    std::size_t count = 0;
};

Fishable fishableOf(const DivideInput& input) {
    Fishable fishable;
    fishable.cells = grid::Grid<std::uint8_t>(input.mask.frame(), 0);
    for (std::size_t i = 0; i < fishable.cells.size(); ++i) {
        if (!input.depth.has(i) || !input.mask.isActive(i)) {
            continue;
        }
        ++fishable.wet;
        if (!input.bands.isFishable(
                units::Depth::metres(static_cast<double>(input.depth.raw_m()[i])))) {
            continue;
        }
        ++fishable.shallow;
        if (input.closed == nullptr || (*input.closed)[i] == 0) {
            fishable.cells[i] = 1;
            ++fishable.count;
        }
    }
    return fishable;
}

Result<void> checkFishable(const Fishable& fishable, const DivideInput& input) {
    if (fishable.count > 0) {
        return {};
    }
    if (fishable.shallow > 0) {
        return base::fail(ErrorKind::unusableInput, "all fishable water is closed", "sections",
                          "look at the house rules");
    }
    return base::fail(
        ErrorKind::unusableInput,
        fmt::format("all water is deeper than the limit of {:.1f} m, so nothing is left to fish",
                    input.bands.limit().inMetres()),
        "sections", "choose a deeper limit");
}

/// The part of each cell, numbered anew without the pockets that are too small to be sections.
grid::PieceGrid piecesOf(const WaterGraph& graph,
                         const std::vector<std::vector<std::int32_t>>& parts, double least_m2,
                         std::size_t& count) {
    std::vector<std::int32_t> numberOfNode(graph.nodes.size(), -1);
    count = 0;
    std::size_t largest = 0;
    double largest_m2 = -1.0;
    for (std::size_t p = 0; p < parts.size(); ++p) {
        double area_m2 = 0.0;
        for (const std::int32_t n : parts[p]) {
            area_m2 += graph.nodes[static_cast<std::size_t>(n)].area_m2;
        }
        if (area_m2 > largest_m2) {
            largest_m2 = area_m2;
            largest = p;
        }
        if (area_m2 >= least_m2) {
            for (const std::int32_t n : parts[p]) {
                numberOfNode[static_cast<std::size_t>(n)] = static_cast<std::int32_t>(count);
            }
            ++count;
        }
    }
    // Where every pocket is small, the largest is the section.
    if (count == 0) {
        for (const std::int32_t n : parts[largest]) {
            numberOfNode[static_cast<std::size_t>(n)] = 0;
        }
        count = 1;
    }
    grid::PieceGrid pieces(graph.nodeOfCell.frame(), -1);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (graph.nodeOfCell[i] >= 0) {
            pieces[i] = numberOfNode[static_cast<std::size_t>(graph.nodeOfCell[i])];
        }
    }
    return pieces;
}

} // namespace

Result<SectionMap> divideWater(const DivideInput& input, const SectionSettings& settings,
                               base::Progress& progress) {
    if (auto ready = checkSettings(input, settings); !ready) {
        return std::unexpected(ready.error());
    }
    const Fishable fishable = fishableOf(input);
    if (auto ready = checkFishable(fishable, input); !ready) {
        return std::unexpected(ready.error());
    }
    const double wanted_m2 = settings.wantedArea.inSquareMetres();
    const double lump_m = std::sqrt(wanted_m2 / lumpsInSection);
    const int blockCells =
        std::max(1, static_cast<int>(std::lround(lump_m / input.mask.frame().cell_m())));
    const WaterGraph graph =
        graphOf(input.depth, input.mask, fishable.cells, blockCells, settings.featureWeight);
    progress.tell(0.3);
    const PartSizes sizes{.wanted_m2 = wanted_m2};
    const auto parts = splitGraph(graph, sizes, progress);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    progress.tell(0.7);
    std::size_t count = 0;
    grid::PieceGrid pieces = piecesOf(graph, parts, settings.leastPocket * wanted_m2, count);
    smoothBorders(pieces, smoothingPasses);
    return sectionsFrom(pieces, count, input);
}

} // namespace sections
