// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/divide_water.h"

#include "core/sections/join_crumbs.h"
#include "core/sections/lay_parts.h"
#include "core/sections/section_card.h"
#include "core/sections/smooth_borders.h"
#include "core/sections/straight_pieces.h"
#include "core/sections/take_over_parts.h"
#include "core/sections/weigh_depth.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

namespace sections {

using base::ErrorKind;
using base::Result;

namespace {

Result<void> checkSettings(const DivideInput& input, const SectionSettings& settings) {
    const double wanted_m2 = settings.wantedArea.inSquareMetres();
    if (!(wanted_m2 >= 100.0 && wanted_m2 <= 1e7)) {
        return base::fail(ErrorKind::wrongUse,
                          "the wanted size of a section must be between 0.01 and 1000 ha",
                          "sections", "the program starts with 4 ha");
    }
    const auto isWithin = [](double value, double low, double high) {
        return value >= low && value <= high;
    };
    if (!isWithin(settings.leastPocket, 0.0, 0.5) ||
        !isWithin(settings.leastCompactness, 0.3, 1.0) ||
        !isWithin(settings.depthWeight, 0.0, 20.0)) {
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
    std::size_t shallow = 0; ///< Cells with a depth, within the limit.
    std::size_t count = 0;   ///< Those that are not closed.
};

Fishable fishableOf(const DivideInput& input) {
    Fishable fishable;
    fishable.cells = grid::Grid<std::uint8_t>(input.mask.frame(), 0);
    for (std::size_t i = 0; i < fishable.cells.size(); ++i) {
        if (!input.depth.has(i) || !input.mask.isActive(i)) {
            continue;
        }
        const auto depth_m = static_cast<double>(input.depth.raw_m()[i]);
        if (!input.bands.isFishable(units::Depth::metres(depth_m))) {
            continue;
        }
        // The rim of a water, drawn at the surface, belongs to the section beside it, but a rim
        // alone is no water to fish.
        const std::size_t one = depth_m > 0.0 ? 1 : 0;
        fishable.shallow += one;
        if (input.closed == nullptr || (*input.closed)[i] == 0) {
            fishable.cells[i] = 1;
            fishable.count += one;
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
        fmt::format("all water is deeper than the limit of {:.3g} m, so nothing is left to fish",
                    input.bands.limit().inMetres()),
        "sections", "choose a deeper limit");
}

/// Pieces of water, numbered from 0 without gaps.
struct Division {
    grid::PieceGrid pieces;
    std::size_t count = 0;
    DivisionReport report;
};

/// Other layouts to start from where the first leads to sections that tell no depths: of a few
/// sections it decides much.
constexpr std::array<HexagonShift, 6> layouts{HexagonShift{0.0, 0.0},  HexagonShift{0.5, 0.25},
                                              HexagonShift{0.0, 0.33}, HexagonShift{0.5, 0.08},
                                              HexagonShift{0.25, 0.0}, HexagonShift{0.75, 0.25}};

SettledPieces settledFromBestLayout(const WaterGraph& graph, const DivideInput& input,
                                    const SectionSettings& settings,
                                    const base::Progress& progress) {
    SettledPieces best;
    for (const HexagonShift shift : layouts) {
        const GraphParts parts =
            layParts(graph, {.wanted_m2 = settings.wantedArea.inSquareMetres()}, shift);
        SettledPieces tried = weighDepth(graph, input.depth, input.mask, parts, settings, progress);
        if (best.count == 0 || tried.merit > best.merit) {
            best = std::move(tried);
        }
        if (best.isGood() || progress.stopAsked()) {
            break;
        }
    }
    return best;
}

/// Divides water of which nothing was divided before.
Result<Division> divideAnew(const DivideInput& input, const grid::Grid<std::uint8_t>& fishable,
                            const SectionSettings& settings, base::Progress& progress) {
    const double wanted_m2 = settings.wantedArea.inSquareMetres();
    const double lump_m = lumpSide_m(wanted_m2);
    const int blockCells =
        std::max(1, static_cast<int>(std::lround(lump_m / input.mask.frame().cell_m())));
    const WaterGraph graph = graphOf(input.depth, input.mask, fishable, blockCells);
    progress.tell(0.3);
    SettledPieces settled = settledFromBestLayout(graph, input, settings, progress);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    progress.tell(0.8);
    smoothBorders(settled.pieceOfCell, 0.8 * lump_m, progress);
    Division made{std::move(settled.pieceOfCell), settled.count, {}};
    made.report.depthWeight = settled.depthWeight;
    made.report.straightCompactness = settled.straight.compactness;
    made.report.straightExplained = settled.straight.explained;
    return made;
}

/// What of the division before still holds, and the rest anew.
Result<Division> divide(const DivideInput& input, const grid::Grid<std::uint8_t>& fishable,
                        const SectionSettings& settings, base::Progress& progress) {
    TakenOver before = takeOverParts(input.numbering, input.frame, fishable, settings.wantedArea);
    if (before.count == 0) {
        return divideAnew(input, fishable, settings, progress);
    }
    Division made{std::move(before.pieces), before.count, {}};
    if (before.openCells == 0) {
        return made;
    }
    const Result<Division> anew = divideAnew(input, before.isOpen, settings, progress);
    if (!anew) {
        return anew;
    }
    for (std::size_t i = 0; i < made.pieces.size(); ++i) {
        if (anew->pieces[i] >= 0) {
            made.pieces[i] = static_cast<std::int32_t>(made.count) + anew->pieces[i];
        }
    }
    made.count += anew->count;
    return made;
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
    Result<Division> made = divide(input, fishable.cells, settings, progress);
    if (!made) {
        return std::unexpected(made.error());
    }
    const double least_m2 = settings.leastArea().inSquareMetres();
    const std::size_t count = joinCrumbs(made->pieces, made->count, input.mask, least_m2);
    SectionMap map = sectionsFrom(made->pieces, count, input);
    const PartFigures figures =
        figuresOf(sumsOfPieces(made->pieces, count, input.depth, input.mask), least_m2);
    map.report = made->report;
    map.report.compactness = figures.compactness;
    map.report.explained = figures.explained;
    return map;
}

} // namespace sections
