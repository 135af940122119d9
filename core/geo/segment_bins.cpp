// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/segment_bins.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace geo {

namespace {

constexpr double leastBin_m = 1.0;
/// A piece is in every bin that it comes so near to: whoever walks along a border meets it.
constexpr double slack_m = 1e-3;

/// Along a ray from `offset_m` behind a line to it, and from one line to the next.
double metresTo(double offset_m, double along) {
    return along != 0.0 ? offset_m / std::fabs(along) : std::numeric_limits<double>::infinity();
}

/// Where the ray comes into the slab between two lines; nothing where it never does.
struct Span {
    double from_m;
    double to_m;
};

Span slabOf(double at_m, double along, double low_m, double high_m) {
    if (along == 0.0) {
        constexpr double ever = std::numeric_limits<double>::infinity();
        return at_m >= low_m && at_m <= high_m ? Span{-ever, ever} : Span{ever, -ever};
    }
    const double a = (low_m - at_m) / along;
    const double b = (high_m - at_m) / along;
    return {std::min(a, b), std::max(a, b)};
}

} // namespace

int SegmentBins::colOf(double x_m) const {
    return std::clamp(static_cast<int>(std::floor((x_m - box_.west_m) / bin_m_)), 0, cols_ - 1);
}

int SegmentBins::rowOf(double y_m) const {
    return std::clamp(static_cast<int>(std::floor((y_m - box_.south_m) / bin_m_)), 0, rows_ - 1);
}

SegmentBins::SegmentBins(std::span<const Piece> pieces) {
    for (const Piece& piece : pieces) {
        box_.take(piece.a);
        box_.take(piece.b);
    }
    if (box_.isEmpty()) {
        return;
    }
    box_ = box_.grownBy(2.0 * slack_m);
    const double area_m2 = box_.width_m() * box_.height_m();
    bin_m_ = std::max({leastBin_m, std::sqrt(area_m2 / static_cast<double>(pieces.size())),
                       std::max(box_.width_m(), box_.height_m()) / 4096.0});
    cols_ = std::max(1, static_cast<int>(std::ceil(box_.width_m() / bin_m_)));
    rows_ = std::max(1, static_cast<int>(std::ceil(box_.height_m() / bin_m_)));
    std::vector<std::pair<std::uint32_t, std::uint32_t>> entries; // bin, piece
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece& piece = pieces[i];
        const int parts =
            std::max(1, static_cast<int>(std::ceil(distance_m(piece.a, piece.b) / bin_m_)));
        for (int k = 0; k < parts; ++k) {
            const auto at = [&](int part) {
                const double t = static_cast<double>(part) / parts;
                return WaterPoint{piece.a.x_m + t * (piece.b.x_m - piece.a.x_m),
                                  piece.a.y_m + t * (piece.b.y_m - piece.a.y_m)};
            };
            Box box;
            box.take(at(k));
            box.take(at(k + 1));
            box = box.grownBy(slack_m);
            for (int row = rowOf(box.south_m); row <= rowOf(box.north_m); ++row) {
                for (int col = colOf(box.west_m); col <= colOf(box.east_m); ++col) {
                    entries.emplace_back(static_cast<std::uint32_t>(row * cols_ + col),
                                         static_cast<std::uint32_t>(i));
                }
            }
        }
    }
    std::ranges::sort(entries);
    const auto [first, last] = std::ranges::unique(entries);
    entries.erase(first, last);
    start_.assign(static_cast<std::size_t>(cols_) * static_cast<std::size_t>(rows_) + 1, 0);
    for (const auto& [bin, piece] : entries) {
        ++start_[bin + 1];
        numbers_.push_back(piece);
    }
    for (std::size_t k = 1; k < start_.size(); ++k) {
        start_[k] += start_[k - 1];
    }
}

SegmentBins::Walk SegmentBins::enter(WaterPoint from, double east, double north) const {
    Walk walk;
    if (cols_ == 0) {
        return walk;
    }
    const Span byX = slabOf(from.x_m, east, box_.west_m, box_.east_m);
    const Span byY = slabOf(from.y_m, north, box_.south_m, box_.north_m);
    walk.entered_m = std::max({0.0, byX.from_m, byY.from_m});
    walk.isInside = walk.entered_m <= std::min(byX.to_m, byY.to_m);
    const WaterPoint at{from.x_m + walk.entered_m * east, from.y_m + walk.entered_m * north};
    walk.col = colOf(at.x_m);
    walk.row = rowOf(at.y_m);
    walk.stepCol = east < 0.0 ? -1 : 1;
    walk.stepRow = north < 0.0 ? -1 : 1;
    const double nextX_m = box_.west_m + (walk.col + (east < 0.0 ? 0 : 1)) * bin_m_;
    const double nextY_m = box_.south_m + (walk.row + (north < 0.0 ? 0 : 1)) * bin_m_;
    walk.perCol_m = metresTo(bin_m_, east);
    walk.perRow_m = metresTo(bin_m_, north);
    walk.nextCol_m = metresTo(std::fabs(nextX_m - from.x_m), east);
    walk.nextRow_m = metresTo(std::fabs(nextY_m - from.y_m), north);
    return walk;
}

void SegmentBins::step(Walk& walk) const {
    if (walk.nextCol_m < walk.nextRow_m) {
        walk.entered_m = walk.nextCol_m;
        walk.nextCol_m += walk.perCol_m;
        walk.col += walk.stepCol;
    } else {
        walk.entered_m = walk.nextRow_m;
        walk.nextRow_m += walk.perRow_m;
        walk.row += walk.stepRow;
    }
    walk.isInside = walk.col >= 0 && walk.col < cols_ && walk.row >= 0 && walk.row < rows_;
}

} // namespace geo
