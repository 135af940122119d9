// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/weigh_depth.h"

#include "core/sections/cell_ground.h"
#include "core/sections/lump_ground.h"
#include "core/sections/recut_pairs.h"
#include "core/sections/settle_borders.h"
#include "core/sections/straight_pieces.h"

#include <algorithm>
#include <numeric>

namespace sections {

namespace {

/// Variance of depth that straight pieces leave, as a share of the whole: counted as not less than
/// this. Where they tell shallow from deep as well as that, shape may count for more.
constexpr double leastLeft = 0.4;

class Weighing {
public:
    Weighing(const WaterGraph& graph, const grid::DepthGrid& depth, const grid::Mask& mask,
             const GraphParts& parts, const SectionSettings& settings,
             const base::Progress& progress)
        : graph_(graph), depth_(depth), mask_(mask), start_(parts.partOfNode), count_(parts.count),
          progress_(progress) {
        cost_.wanted_m2 = settings.wantedArea.inSquareMetres();
        least_m2_ = settings.leastPocket * cost_.wanted_m2;
    }

    /// What a ruler makes of the water; from then on depth is measured against that.
    PartFigures straight() {
        const std::vector<PartSums> pieces = straightPieces(graph_, depth_, mask_, start_, count_);
        const PartFigures figures = figuresOf(pieces, least_m2_);
        PartSums whole;
        for (const PartSums& piece : pieces) {
            whole.add(piece);
        }
        constexpr double least_m2 = 0.01; // a bottom as level as that has no depths to tell apart
        const double left = std::max(1.0 - figures.explained, leastLeft);
        cost_.depthVariance_m2 = std::max(left * whole.depthScatter_m4() / whole.area_m2, least_m2);
        return figures;
    }

    SettledPieces settledWith(double depthWeight) {
        cost_.depth = depthWeight;
        std::vector<std::int32_t> part = start_;
        std::vector<PartSums> sums = sumsOfParts(graph_, part, count_);
        LumpGround lumps(graph_, part);
        std::vector<std::size_t> first(graph_.nodes.size());
        std::iota(first.begin(), first.end(), std::size_t{0});
        BorderSettling(lumps, sums, cost_).run(first, progress_);
        recutPairs(graph_, part, sums, cost_, progress_);
        BorderSettling(lumps, sums, cost_).run(first, progress_);
        SettledPieces out;
        out.pieceOfCell = grid::PieceGrid(depth_.frame(), -1);
        out.count = count_;
        out.depthWeight = depthWeight;
        for (std::size_t n = 0; n < part.size(); ++n) {
            for (const std::size_t i : graph_.cellsOfNode[n]) {
                out.pieceOfCell[i] = part[n];
            }
        }
        CellGround cells(depth_, mask_, out.pieceOfCell);
        BorderSettling(cells, sums, cost_).run(borderCells(part), progress_);
        out.figures = figuresOf(sums, least_m2_);
        return out;
    }

private:
    /// Cells of the lumps that touch another part.
    [[nodiscard]] std::vector<std::size_t>
    borderCells(const std::vector<std::int32_t>& part) const {
        std::vector<std::size_t> cells;
        for (std::size_t n = 0; n < part.size(); ++n) {
            const std::vector<WaterStep>& steps = graph_.nodes[n].steps;
            if (std::any_of(steps.begin(), steps.end(), [&](const WaterStep& step) {
                    return part[static_cast<std::size_t>(step.to)] != part[n];
                })) {
                cells.insert(cells.end(), graph_.cellsOfNode[n].begin(),
                             graph_.cellsOfNode[n].end());
            }
        }
        return cells;
    }

    const WaterGraph& graph_;
    const grid::DepthGrid& depth_;
    const grid::Mask& mask_;
    const std::vector<std::int32_t>& start_;
    std::size_t count_;
    const base::Progress& progress_;
    PartCost cost_;
    double least_m2_ = 0.0;
};

/// Steps in which depth is given more or less weight, and how many of them.
constexpr double lighter = 0.9;
constexpr int mostSteps = 10;
/// Share of the compactness asked for that is enough where at all of it sections would tell shallow
/// from deep hardly better than straight pieces.
constexpr double less = 0.9;
/// How often more weight may come out too thin before none is tried: of few sections the median
/// jumps.
constexpr int mostTooThin = 4;

/// What sections explain that tell shallow from deep better than straight pieces do: a share more,
/// or that share of what those leave.
double moreThan(const PartFigures& straight, double share) {
    return std::min((1.0 + share) * straight.explained,
                    straight.explained + share * (1.0 - straight.explained));
}

constexpr double aThird = 0.35; // a little more, to be sure of it

/// What is worked for.
double wishedToExplain(const PartFigures& straight) {
    return moreThan(straight, aThird);
}

/// What is good enough. Where straight pieces tell most of the depths already, as much as that.
double hasToExplain(const PartFigures& straight) {
    constexpr double mostOfIt = 0.6;
    return straight.explained < mostOfIt ? moreThan(straight, aThird) : straight.explained;
}

/// Of the pieces that settled with ever other weights the best.
class BestWeight {
public:
    BestWeight(Weighing& weighing, const SectionSettings& settings)
        : weighing_(weighing), straight_(weighing.straight()),
          least_(settings.leastCompactness * straight_.compactness) {}

    SettledPieces search(double weight, const base::Progress& progress) {
        take(weight);
        const bool isThin = lastCompactness_ < least_;
        const double step = isThin ? lighter : 1.0 / lighter;
        int tooThin = 0;
        for (int k = 1; k <= mostSteps && !isDone(isThin) && !progress.stopAsked(); ++k) {
            weight = isThin && k == mostSteps ? 0.0 : weight * step;
            take(weight);
            tooThin += lastCompactness_ < less * least_ ? 1 : 0;
            if (!isThin && tooThin == mostTooThin) {
                break;
            }
        }
        best_.straight = straight_;
        return std::move(best_);
    }

private:
    /// Pieces that are too thin are to become as compact as asked, the others to tell depths.
    [[nodiscard]] bool isDone(bool isThin) const {
        return isThin ? isAsAsked_ : best_.figures.explained >= wishedToExplain(straight_);
    }

    void take(double weight) {
        SettledPieces tried = weighing_.settledWith(weight);
        lastCompactness_ = tried.figures.compactness;
        tried.merit = meritOf(tried.figures);
        isAsAsked_ = tried.isGood() && lastCompactness_ >= least_;
        if (isAsAsked_ || best_.count == 0 || tried.merit > best_.merit) {
            best_ = std::move(tried);
        }
    }

    [[nodiscard]] double meritOf(const PartFigures& figures) const {
        constexpr double thin = -2.0; // below what any compact pieces can have
        if (figures.compactness < less * least_) {
            return thin + figures.compactness;
        }
        return figures.explained - hasToExplain(straight_);
    }

    Weighing& weighing_;
    PartFigures straight_;
    double least_;
    double lastCompactness_ = 0.0;
    bool isAsAsked_ = false; ///< The last pieces are good and as compact as asked.
    SettledPieces best_;
};

} // namespace

SettledPieces weighDepth(const WaterGraph& graph, const grid::DepthGrid& depth,
                         const grid::Mask& mask, const GraphParts& parts,
                         const SectionSettings& settings, const base::Progress& progress) {
    Weighing weighing(graph, depth, mask, parts, settings, progress);
    return BestWeight(weighing, settings).search(settings.depthWeight, progress);
}

} // namespace sections
