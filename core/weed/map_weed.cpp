// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/map_weed.h"

#include "core/base/number_text.h"
#include "core/grid/distance_field.h"
#include "core/structure/border_lines.h"
#include "core/structure/zone_assembly.h"
#include "core/weed/finding_reach.h"
#include "core/weed/growth_limit.h"
#include "core/weed/weed_evidence.h"

#include <algorithm>
#include <cmath>

namespace weed {

using geo::WaterPoint;
using grid::Cell;
using grid::Grid;
using grid::GridFrame;
using structure::KindGrid;
using structure::Zone;
using structure::ZoneKind;
using units::Depth;

namespace {

base::Result<void> checked(const WeedSettings& s, std::optional<Depth> secchi) {
    struct Range {
        const char* what;
        double value;
        double low;
        double high;
    };
    const Range ranges[] = {
        {"the reach of a note (m)", s.noteReach.inMetres(), 5.0, 500.0},
        {"the depth reach of a note (m)", s.noteDepthReach.inMetres(), 0.2, 20.0},
        {"what the prior is worth (notes)", s.priorNotes, 0.1, 20.0},
        {"the probability of weed in the shallows", s.shallowProbability, 0.05, 0.95},
        {"the softness of the growth limit", s.limitSoftness, 0.02, 0.5},
        {"the probability of weed where clarity is not known", s.unknownProbability, 0.0, 0.49},
        {"the growth limit where clarity is not known (m)", s.unknownLimit.inMetres(), 0.5, 20.0},
        {"the season factor", s.seasonFactor, 0.0, 1.0},
        {"the usual height of weed (m)", s.usualHeight.inMetres(), 0.05, 10.0},
        {"the least size of a bed (ha)", s.leastArea.inHectares(), 0.0, 10.0},
        {"the width of a weed edge (m)", s.edgeWidth.inMetres(), 1.0, 50.0},
        {"the Secchi depth (m)", secchi.value_or(Depth::metres(1.0)).inMetres(), 0.01, 100.0}};
    for (const Range& r : ranges) {
        if (!(r.value >= r.low && r.value <= r.high)) {
            return base::fail(base::ErrorKind::wrongUse,
                              std::string(r.what) + " is out of its range", "weed settings",
                              "choose " + base::fixedText(r.low, 2) + " to " +
                                  base::fixedText(r.high, 2));
        }
    }
    return {};
}

double gauss(double t) {
    return std::exp(-0.5 * t * t);
}

/// Probability of weed by depth alone, for the whole water: from clarity, shifted by what the notes
/// say at that depth anywhere.
class DepthPrior {
public:
    DepthPrior(const WeedSettings& s, std::optional<Depth> limit, std::span<const Finding> findings,
               double deepest_m)
        : by_(static_cast<std::size_t>(deepest_m / bin_m) + 2) {
        constexpr double worthOfClarity = 4.0; // notes at that depth
        const double most = limit ? s.shallowProbability : s.unknownProbability;
        const double limit_m = limit.value_or(s.unknownLimit).inMetres();
        const double width_m = std::max(s.limitSoftness * limit_m, 0.05);
        for (std::size_t k = 0; k < by_.size(); ++k) {
            const double depth_m = static_cast<double>(k) * bin_m;
            double weed = worthOfClarity * most / (1.0 + std::exp((depth_m - limit_m) / width_m));
            double notes = worthOfClarity;
            for (const Finding& f : findings) {
                const double w = f.weight * f.shareOfNote *
                                 gauss((f.depth_m - depth_m) / s.noteDepthReach.inMetres());
                weed += w * f.weed;
                notes += w;
            }
            by_[k] = weed / notes;
        }
    }
    [[nodiscard]] double at(double depth_m) const {
        const double k = std::max(depth_m, 0.0) / bin_m;
        return by_[std::min(static_cast<std::size_t>(std::lround(k)), by_.size() - 1)];
    }

private:
    static constexpr double bin_m = 0.05;
    std::vector<double> by_;
};

/// Sums of the findings round every cell, each fading with distance and difference of depth.
struct Sums {
    Grid<float> weed;
    Grid<float> notes;
    Grid<float> height_m; ///< Times its weight.
    Grid<float> heights;  ///< Weight of those.
};

void addFinding(Sums& sums, const Finding& finding, const grid::DepthGrid& depth,
                const WeedSettings& s) {
    constexpr double farthest = 3.0; // standard deviations
    const GridFrame& f = depth.frame();
    const double reach_m = s.noteReach.inMetres();
    const FindingReach near(depth, finding.place, farthest * reach_m);
    for (int row = near.first().row; row <= near.last().row; ++row) {
        for (int col = near.first().col; col <= near.last().col; ++col) {
            const std::size_t i = f.index({col, row});
            if (!depth.has(i)) {
                continue;
            }
            const double away_m = near.away_m({col, row});
            if (away_m > farthest * reach_m) {
                continue;
            }
            const double deeper_m = static_cast<double>(depth.raw_m()[i]) - finding.depth_m;
            const double w = finding.weight * gauss(away_m / reach_m) *
                             gauss(deeper_m / s.noteDepthReach.inMetres());
            sums.weed[i] += static_cast<float>(w * finding.weed);
            sums.notes[i] += static_cast<float>(w);
            if (finding.height_m) {
                sums.height_m[i] += static_cast<float>(w * *finding.height_m);
                sums.heights[i] += static_cast<float>(w);
            }
        }
    }
}

void fill(WeedMap& map, const Sums& sums, const DepthPrior& prior, const grid::DepthGrid& depth,
          const WeedSettings& s) {
    constexpr double worthOfUsualHeight = 0.3; // notes
    for (std::size_t i = 0; i < depth.size(); ++i) {
        if (!depth.has(i)) {
            continue;
        }
        const auto depth_m = static_cast<double>(depth.raw_m()[i]);
        const double weed = s.priorNotes * prior.at(depth_m) + static_cast<double>(sums.weed[i]);
        const double notes = s.priorNotes + static_cast<double>(sums.notes[i]);
        map.probability[i] = static_cast<float>(s.seasonFactor * weed / notes);
        const double height_m = (worthOfUsualHeight * s.usualHeight.inMetres() +
                                 static_cast<double>(sums.height_m[i])) /
                                (worthOfUsualHeight + static_cast<double>(sums.heights[i]));
        map.height_m[i] = static_cast<float>(std::min(height_m, depth_m));
    }
}

/// Beds, with the strip along their border with open water set apart as weed edge.
KindGrid weedKinds(const WeedMap& map, const grid::Mask& mask, const WeedSettings& s) {
    const GridFrame& f = mask.frame();
    KindGrid kinds(f, -1);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (mask.isActive(i) && map.probability[i] > 0.5F) {
            kinds[i] = structure::codeOf(ZoneKind::weedBed);
        }
    }
    const auto least =
        static_cast<std::size_t>(std::ceil(s.leastArea.inSquareMetres() / f.cellArea_m2()));
    structure::joinSmallPieces(kinds, mask, least);
    Grid<std::uint8_t> isOpen(f, 0);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        isOpen[i] = mask.isActive(i) && kinds[i] < 0 ? 1 : 0;
    }
    const Grid<float> fromOpen_m = grid::straightDistance_m(isOpen);
    const auto width_m =
        static_cast<float>(std::max(s.edgeWidth.inMetres() + 0.5 * f.cell_m(), 1.01 * f.cell_m()));
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (kinds[i] >= 0 && fromOpen_m[i] <= width_m) {
            kinds[i] = structure::codeOf(ZoneKind::weedEdge);
        }
    }
    // Where a bed is hardly wider than its edge, the crumbs left of it belong to the edge.
    KindGrid joined = kinds;
    structure::joinSmallPieces(joined, mask, least);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (kinds[i] == structure::codeOf(ZoneKind::weedBed)) {
            kinds[i] = joined[i];
        }
    }
    return kinds;
}

/// The line between a weed edge and open water.
void addWeedLines(Zone& edge, const grid::Mask& mask, const KindGrid& kinds) {
    const GridFrame& f = mask.frame();
    edge.topEdges =
        structure::linesAlongBorder(edge.pieces, f.cell_m(), [&](WaterPoint a, WaterPoint b) {
            const double length_m = geo::distance_m(a, b);
            const double out_m = 0.75 * f.cell_m() / std::max(length_m, 1e-9);
            const Cell beyond = f.cellOf({0.5 * (a.x_m + b.x_m) + out_m * (b.y_m - a.y_m),
                                          0.5 * (a.y_m + b.y_m) - out_m * (b.x_m - a.x_m)});
            return mask.isActive(beyond) && kinds[beyond] < 0;
        });
    for (const geo::Path& line : edge.topEdges) {
        edge.edgeLength += geo::lengthOf(line);
    }
}

} // namespace

base::Result<WeedMap> mapWeed(const grid::DepthGrid& depth, const grid::Mask& mask,
                              std::span<const WeedNote> notes,
                              std::span<const soundings::LeadLineSounding> leadLine,
                              std::optional<Depth> secchi, const geo::WaterFrame& frame,
                              const WeedSettings& settings, base::Progress& progress) {
    if (const auto fine = checked(settings, secchi); !fine) {
        return std::unexpected(fine.error());
    }
    if (depth.frame() != mask.frame()) {
        return base::fail(base::ErrorKind::wrongUse, "the grids do not lie on the same frame", "",
                          "draw the water anew");
    }
    progress.begin("mapping weed");
    const GridFrame& f = depth.frame();
    const Evidence evidence =
        gathered(notes, leadLine, frame, depth, settings.usualHeight.inMetres(), settings.year);
    WeedMap map;
    map.probability = Grid<float>(f, NAN);
    map.height_m = Grid<float>(f, NAN);
    map.notesUsed = evidence.notesUsed;
    map.notesOutside = evidence.notesOutside;
    map.notesFaded = evidence.notesFaded;
    map.year = settings.year;
    if (secchi) {
        const GrowthRange range = growthRange(*secchi);
        map.growthLimit = range.mid;
        map.growthLimitLow = range.low;
        map.growthLimitHigh = range.high;
    }
    Sums sums{Grid<float>(f, 0.0F), Grid<float>(f, 0.0F), Grid<float>(f, 0.0F),
              Grid<float>(f, 0.0F)};
    for (std::size_t k = 0; k < evidence.findings.size(); ++k) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        addFinding(sums, evidence.findings[k], depth, settings);
        progress.tell(0.7 * static_cast<double>(k) / static_cast<double>(evidence.findings.size()));
    }
    const double deepest_m = depth.deepest().value_or(Depth()).inMetres();
    fill(map, sums, DepthPrior(settings, map.growthLimit, evidence.findings, deepest_m), depth,
         settings);
    const KindGrid kinds = weedKinds(map, mask, settings);
    map.zones = structure::zonesFrom(kinds, {depth, mask, nullptr, settings.launch});
    for (Zone& zone : map.zones.zones) {
        if (zone.kind == ZoneKind::weedEdge) {
            addWeedLines(zone, mask, kinds);
        }
    }
    return map;
}

} // namespace weed
