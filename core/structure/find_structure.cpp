// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/find_structure.h"

#include "core/base/two_at_once.h"
#include "core/grid/box_mean.h"
#include "core/grid/connected_pieces.h"
#include "core/structure/drop_off_lines.h"
#include "core/structure/feature_kinds.h"
#include "core/structure/gentle_kinds.h"
#include "core/structure/position_index.h"

#include <algorithm>
#include <cmath>

namespace structure {

using grid::Grid;
using units::Length;

namespace {

base::Result<void> checked(const StructureSettings& s) {
    const auto outside = [](double value, double low, double high) {
        return !(value >= low && value <= high);
    };
    const auto wrong = [](const char* what, const char* whatToDo) -> base::Result<void> {
        return base::fail(base::ErrorKind::wrongUse, what, "structure settings", whatToDo);
    };
    if (outside(s.fineScale.inMetres(), 3.0, 50.0)) {
        return wrong("the fine scale is out of its range", "choose 3 to 50 m");
    }
    if (outside(s.broadScale.inMetres(), 20.0, 500.0) || s.broadScale <= s.fineScale) {
        return wrong("the broad scale is out of its range",
                     "choose 20 to 500 m, more than the fine scale");
    }
    if (s.dropOffFrom_percent && outside(*s.dropOffFrom_percent, 1.0, 200.0)) {
        return wrong("the slope of a drop-off is out of its range", "choose 1 to 200 percent");
    }
    if (outside(s.dropOffHold, 0.3, 1.0)) {
        return wrong("the hold of a drop-off is out of its range", "choose 0.3 to 1");
    }
    if (s.highGround && outside(s.highGround->inMetres(), 0.05, 20.0)) {
        return wrong("the rise of high ground is out of its range", "choose 0.05 to 20 m");
    }
    if (outside(s.leastArea.inHectares(), 0.0, 10.0)) {
        return wrong("the least size of a zone is out of its range", "choose 0 to 10 ha");
    }
    return {};
}

base::Result<void> checked(const grid::DepthGrid& depth, const grid::Mask& mask,
                           const Grid<float>& trustHalfWidth_m) {
    if (depth.frame() != mask.frame() ||
        (trustHalfWidth_m.size() != 0 && trustHalfWidth_m.frame() != depth.frame())) {
        return base::fail(base::ErrorKind::wrongUse, "the grids do not lie on the same frame", "",
                          "draw the water anew");
    }
    if (!depth.deepest()) {
        return base::fail(base::ErrorKind::unusableInput, "the drawn water holds no depth", "",
                          "draw it from soundings first");
    }
    return {};
}

/// The value below which a share of the known values lies.
double quantile(const Grid<float>& values, double share) {
    std::vector<float> known;
    std::copy_if(values.values().begin(), values.values().end(), std::back_inserter(known),
                 [](float v) { return !std::isnan(v); });
    if (known.empty()) {
        return 0.0;
    }
    const auto at =
        known.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(known.size() - 1));
    std::nth_element(known.begin(), at, known.end());
    return static_cast<double>(*at);
}

/// Robust spread of the broad position index, from places a twelfth of the broad scale apart: the
/// ring hardly changes over less.
double broadSpread_m(const grid::DepthGrid& depth, const StructureReport& r) {
    const double apart_m = r.broadScale.inMetres() / 12.0;
    const int every = std::max(1, static_cast<int>(std::lround(apart_m / depth.frame().cell_m())));
    return PositionIndex::of(depth, r.fineScale, r.broadScale, every).spread_m();
}

StructureReport scalesFor(const StructureSettings& settings, double cell_m) {
    constexpr double leastScale_cells = 3.0;
    StructureReport r;
    r.fineScale = std::max(settings.fineScale, Length::metres(leastScale_cells * cell_m));
    r.broadScale = std::max(settings.broadScale, r.fineScale * leastScale_cells);
    r.leastArea = settings.leastArea;
    return r;
}

void chooseSlopes(StructureReport& r, const SlopeGrid& slope, const StructureSettings& settings) {
    constexpr double commonDropOff_percent = 10.0;
    constexpr double upperQuintile = 0.8;
    constexpr double gentleShare = 0.5; // of the slope of a drop-off: where a sharp bend is blurred
    r.dropOffFrom_percent = settings.dropOffFrom_percent.value_or(
        std::max(commonDropOff_percent, quantile(slope.percent(), upperQuintile)));
    r.dropOffDownTo_percent = settings.dropOffHold * r.dropOffFrom_percent;
    r.gentleBelow_percent = gentleShare * r.dropOffFrom_percent;
}

Length highGroundOf(const grid::DepthGrid& depth, const StructureReport& scales,
                    const StructureSettings& settings) {
    constexpr double least_m = 0.3;
    return settings.highGround ? *settings.highGround
                               : Length::metres(std::max(least_m, broadSpread_m(depth, scales)));
}

grid::DepthGrid smoothed(const grid::DepthGrid& depth, Length scale) {
    Grid<float> raw(depth.frame());
    raw.values() = depth.raw_m();
    const int radius = windowRadius(scale, depth.frame().cell_m());
    grid::DepthGrid out(depth.frame());
    out.raw_m() = grid::boxMean(raw, radius).values();
    return out;
}

/// A spur or trough has to cover four squares of the fine scale: less cannot be told from the bends
/// of a bank.
std::size_t leastLineCells(Length fineScale, double cell_m) {
    constexpr double squares = 4.0;
    return static_cast<std::size_t>(
        std::ceil(squares * std::pow(fineScale.inMetres() / cell_m, 2)));
}

/// Drop-offs and gentle ground where no feature is.
void markSlopes(KindGrid& kinds, const SlopeGrid& slope, const Grid<std::uint8_t>& steep,
                const StructureReport& r) {
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (kinds[i] < 0 && steep[i] != 0) {
            kinds[i] = codeOf(ZoneKind::dropOff);
        } else if (kinds[i] < 0 &&
                   static_cast<double>(slope.percent()[i]) < r.gentleBelow_percent) {
            kinds[i] = codeOf(ZoneKind::flat);
        }
    }
}

} // namespace

base::Result<ZoneMap> findStructure(const grid::DepthGrid& depth, const grid::Mask& mask,
                                    const Grid<float>& trustHalfWidth_m,
                                    const contours::Bands& bands, const StructureSettings& settings,
                                    base::Progress& progress) {
    if (const auto fine = checked(settings); !fine) {
        return std::unexpected(fine.error());
    }
    if (const auto fine = checked(depth, mask, trustHalfWidth_m); !fine) {
        return std::unexpected(fine.error());
    }
    progress.begin("finding structure");
    const double cell_m = depth.frame().cell_m();
    StructureReport report = scalesFor(settings, cell_m);
    SlopeGrid slope;
    grid::DepthGrid calm;
    base::twoAtOnce([&] { slope = SlopeGrid::of(depth, report.fineScale); },
                    [&] {
                        calm = smoothed(depth, report.fineScale);
                        report.highGround = highGroundOf(depth, report, settings);
                    });
    chooseSlopes(report, slope, settings);
    progress.tell(0.3);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    KindGrid kinds(depth.frame(), -1);
    Grid<std::uint8_t> steep;
    base::twoAtOnce(
        [&] {
            markFeatures(kinds, calm, GroundForm::of(calm, slope, report.broadScale),
                         {report.highGround, leastLineCells(report.fineScale, cell_m),
                          trustHalfWidth_m.size() != 0 ? &trustHalfWidth_m : nullptr});
        },
        [&] {
            steep = withHysteresis(slope.percent(), report.dropOffFrom_percent,
                                   report.dropOffDownTo_percent);
        });
    markSlopes(kinds, slope, steep, report);
    progress.tell(0.6);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    const auto leastCells = static_cast<std::size_t>(
        std::ceil(settings.leastArea.inSquareMetres() / depth.frame().cellArea_m2()));
    report.piecesJoined = joinSmallPieces(kinds, mask, leastCells);
    nameGentleGround(kinds, depth, bands.limit(), report.fineScale);
    report.piecesJoined += joinSmallPieces(kinds, mask, leastCells);
    ZoneMap map =
        zonesFrom(kinds, {depth, mask, trustHalfWidth_m.size() != 0 ? &trustHalfWidth_m : nullptr,
                          settings.launch});
    progress.tell(0.9);
    for (Zone& zone : map.zones) {
        if (zone.kind == ZoneKind::dropOff) {
            addEdgeLines(zone, slope, report.fineScale, 2.0 * report.fineScale);
        }
    }
    map.report = report;
    return map;
}

} // namespace structure
