// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rods/ground.h"

#include "core/geo/nearest_points.h"
#include "core/structure/zone_kinds.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rods {

namespace {

constexpr double leastBin_m = 32.0;
constexpr double mostBins = 1024.0;
constexpr double edgeStep_m = 5.0;
/// A top edge this near to a stretch of foot is the top of that stretch.
constexpr double topReach_m = 40.0;

/// Walks the cells that a straight line passes, first to last.
class CellWalk {
public:
    CellWalk(const grid::GridFrame& frame, geo::WaterPoint a, geo::WaterPoint b)
        : cell_(frame.cellOf(a)), last_(frame.cellOf(b)) {
        const double h = frame.cell_m();
        const double du = (b.x_m - a.x_m) / h;
        const double dv = (a.y_m - b.y_m) / h;
        const double u = (a.x_m - frame.west_m()) / h - cell_.col;
        const double v = (frame.north_m() - a.y_m) / h - cell_.row;
        stepCol_ = du < 0.0 ? -1 : 1;
        stepRow_ = dv < 0.0 ? -1 : 1;
        perCol_ = shareOf(1.0, du);
        perRow_ = shareOf(1.0, dv);
        nextCol_ = shareOf(du < 0.0 ? u : 1.0 - u, du);
        nextRow_ = shareOf(dv < 0.0 ? v : 1.0 - v, dv);
        left_ = std::abs(last_.col - cell_.col) + std::abs(last_.row - cell_.row);
    }

    [[nodiscard]] grid::Cell cell() const { return cell_; }
    /// False once the last cell has been reached.
    bool step() {
        if (left_ == 0) {
            return false;
        }
        --left_;
        if (nextCol_ < nextRow_) {
            nextCol_ += perCol_;
            cell_.col += stepCol_;
        } else {
            nextRow_ += perRow_;
            cell_.row += stepRow_;
        }
        return true;
    }

private:
    static double shareOf(double part, double whole) {
        return whole == 0.0 ? std::numeric_limits<double>::infinity() : part / std::fabs(whole);
    }
    grid::Cell cell_;
    grid::Cell last_;
    int stepCol_ = 1;
    int stepRow_ = 1;
    double perCol_ = 0.0;
    double perRow_ = 0.0;
    double nextCol_ = 0.0;
    double nextRow_ = 0.0;
    int left_ = 0;
};

const structure::Zone* zoneAt(const structure::ZoneMap& map, grid::Cell c) {
    if (!map.zoneOfCell.frame().holds(c)) {
        return nullptr;
    }
    const structure::ZoneNumber number = map.zoneOfCell[c];
    return number == structure::noZone ? nullptr : &map.zones[static_cast<std::size_t>(number)];
}

/// The stretches of a drop-off's foot that have no top edge above them: there the drop-off begins
/// at the shore, and the foot is the only edge to fish.
std::vector<geo::Path> feetWithoutTop(const structure::Zone& zone) {
    std::vector<geo::WaterPoint> top;
    for (const geo::Path& edge : zone.topEdges) {
        const geo::Path dense = geo::densified(edge, edgeStep_m);
        top.insert(top.end(), dense.begin(), dense.end());
    }
    const geo::NearestPoints tops(top);
    std::vector<geo::Path> bare;
    for (const geo::Path& foot : zone.feet) {
        const geo::Path dense = geo::densified(foot, edgeStep_m);
        bool isOpen = false;
        for (std::size_t k = 1; k < dense.size(); ++k) {
            const geo::WaterPoint middle{0.5 * (dense[k - 1].x_m + dense[k].x_m),
                                         0.5 * (dense[k - 1].y_m + dense[k].y_m)};
            const auto nearest = tops.nearest(middle);
            const bool isBare = !nearest || nearest->distance_m > topReach_m;
            if (isBare && !isOpen) {
                bare.push_back({dense[k - 1]});
            }
            if (isBare) {
                bare.back().push_back(dense[k]);
            }
            isOpen = isBare;
        }
    }
    return bare;
}

} // namespace

double lengthWithin_m(geo::WaterPoint a, geo::WaterPoint b, geo::WaterPoint p, double radius_m) {
    const double dx = b.x_m - a.x_m;
    const double dy = b.y_m - a.y_m;
    const double length_m = std::hypot(dx, dy);
    if (!(length_m > 0.0)) {
        return 0.0;
    }
    const double along_m = ((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / length_m;
    const double off_m = ((p.x_m - a.x_m) * dy - (p.y_m - a.y_m) * dx) / length_m;
    if (std::fabs(off_m) >= radius_m) {
        return 0.0;
    }
    const double half_m = std::sqrt(radius_m * radius_m - off_m * off_m);
    return std::max(0.0, std::min(length_m, along_m + half_m) - std::max(0.0, along_m - half_m));
}

double worthOf(structure::ZoneKind kind) {
    return structure::factsOf(kind).worthToABait;
}

Ground::Ground(const grid::DepthGrid& today, units::Depth limit,
               const grid::Grid<std::uint8_t>* closed, const structure::ZoneMap& structure,
               const structure::ZoneMap& weed)
    : today_(&today), limit_(limit), closed_(closed), structure_(&structure), weed_(&weed) {
    takeEdges(structure, structure::ZoneKind::dropOff, 0);
    takeEdges(weed, structure::ZoneKind::weedEdge,
              static_cast<std::int32_t>(structure.zones.size()));
    fillBins();
}

void Ground::takeEdges(const structure::ZoneMap& map, structure::ZoneKind kind,
                       std::int32_t first) {
    std::int32_t number = first;
    for (const structure::Zone& zone : map.zones) {
        if (zone.kind == kind) {
            const std::vector<geo::Path> bare = feetWithoutTop(zone);
            for (const std::vector<geo::Path>* lines : {&zone.topEdges, &bare}) {
                takeLines(*lines, kind, number);
            }
        }
        ++number;
    }
}

void Ground::takeLines(const std::vector<geo::Path>& lines, structure::ZoneKind kind,
                       std::int32_t zone) {
    for (const geo::Path& line : lines) {
        for (std::size_t k = 1; k < line.size(); ++k) {
            edges_.push_back({line[k - 1], line[k], kind, zone});
        }
    }
}

void Ground::fillBins() {
    const geo::Box box = frame().box();
    bin_m_ = std::max(leastBin_m, std::max(box.width_m(), box.height_m()) / mostBins);
    binCols_ = std::max(1, static_cast<int>(std::ceil(box.width_m() / bin_m_)));
    binRows_ = std::max(1, static_cast<int>(std::ceil(box.height_m() / bin_m_)));
    const auto bins = static_cast<std::size_t>(binCols_) * static_cast<std::size_t>(binRows_);
    std::vector<std::vector<std::uint32_t>> held(bins);
    for (std::size_t k = 0; k < edges_.size(); ++k) {
        geo::Box reach;
        reach.take(edges_[k].a);
        reach.take(edges_[k].b);
        const BinRange range = binsOf(reach);
        for (int row = range.firstRow; row <= range.lastRow; ++row) {
            for (int col = range.firstCol; col <= range.lastCol; ++col) {
                held[static_cast<std::size_t>(row) * static_cast<std::size_t>(binCols_) +
                     static_cast<std::size_t>(col)]
                    .push_back(static_cast<std::uint32_t>(k));
            }
        }
    }
    binStart_.assign(1, 0);
    for (const auto& bin : held) {
        binEdges_.insert(binEdges_.end(), bin.begin(), bin.end());
        binStart_.push_back(static_cast<std::uint32_t>(binEdges_.size()));
    }
}

Ground::BinRange Ground::binsOf(const geo::Box& box) const {
    const geo::Box whole = frame().box();
    const auto held = [this](double from_m, int count) {
        return static_cast<int>(std::clamp(std::floor(from_m / bin_m_), 0.0, count - 1.0));
    };
    return {held(box.west_m - whole.west_m, binCols_), held(box.east_m - whole.west_m, binCols_),
            held(whole.north_m - box.north_m, binRows_),
            held(whole.north_m - box.south_m, binRows_)};
}

std::optional<units::Depth> Ground::depthAt(geo::WaterPoint p) const {
    return today_->at(p);
}

bool Ground::isClosed(grid::Cell c) const {
    return closed_ != nullptr && closed_->frame().holds(c) && (*closed_)[c] != 0;
}

bool Ground::isFishable(grid::Cell c) const {
    const auto depth = today_->at(c);
    return depth && *depth <= limit_ && !isClosed(c);
}

bool Ground::isFishable(geo::WaterPoint p) const {
    const auto depth = today_->at(p);
    return depth && *depth <= limit_ && !isClosed(p);
}

bool Ground::isOverOpenWater(geo::WaterPoint a, geo::WaterPoint b) const {
    CellWalk walk(frame(), a, b);
    do {
        if (!today_->has(walk.cell()) || isClosed(walk.cell())) {
            return false;
        }
    } while (walk.step());
    return true;
}

bool Ground::isOverWater(geo::WaterPoint a, geo::WaterPoint b) const {
    CellWalk walk(frame(), a, b);
    bool isWater = true;
    do {
        isWater = isWater && today_->has(walk.cell());
    } while (walk.step());
    return isWater;
}

std::array<const structure::Zone*, 2> Ground::zonesAt(grid::Cell c) const {
    return {zoneAt(*structure_, c), zoneAt(*weed_, c)};
}

std::optional<structure::ZoneKind> Ground::kindAt(geo::WaterPoint p) const {
    std::optional<structure::ZoneKind> best;
    for (const structure::Zone* zone : zonesAt(frame().cellOf(p))) {
        if (zone != nullptr && (!best || worthOf(zone->kind) > worthOf(*best))) {
            best = zone->kind;
        }
    }
    return best;
}

std::vector<EdgePiece> Ground::edgesNear(geo::WaterPoint p, double radius_m) const {
    geo::Box reach;
    reach.take(p);
    const BinRange range = binsOf(reach.grownBy(radius_m));
    std::vector<std::uint32_t> met;
    for (int row = range.firstRow; row <= range.lastRow; ++row) {
        for (int col = range.firstCol; col <= range.lastCol; ++col) {
            const auto bin = static_cast<std::size_t>(row) * static_cast<std::size_t>(binCols_) +
                             static_cast<std::size_t>(col);
            for (std::uint32_t k = binStart_[bin]; k < binStart_[bin + 1]; ++k) {
                met.push_back(binEdges_[k]);
            }
        }
    }
    std::ranges::sort(met);
    const auto repeated = std::ranges::unique(met);
    met.erase(repeated.begin(), repeated.end());
    std::vector<EdgePiece> pieces;
    for (const std::uint32_t k : met) {
        if (geo::distanceToSegment_m(p, edges_[k].a, edges_[k].b) <= radius_m) {
            pieces.push_back(edges_[k]);
        }
    }
    return pieces;
}

} // namespace rods
