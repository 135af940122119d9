// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/compare_drawings.h"

#include <algorithm>
#include <cmath>

namespace surface {

namespace {

/// Two waters that share less of the smaller one than this are taken for two (our choice).
constexpr double leastShared = 0.3;

std::size_t cellsWithDepth(const grid::DepthGrid& depth) {
    std::size_t cells = 0;
    for (std::size_t i = 0; i < depth.size(); ++i) {
        cells += depth.has(i) ? 1 : 0;
    }
    return cells;
}

double areaWithDepth_m2(const grid::DepthGrid& depth) {
    return static_cast<double>(cellsWithDepth(depth)) * depth.frame().cellArea_m2();
}

/// The change in one row of cells. \return how many were compared.
std::size_t compareRow(const PlacedDrawing& later, const PlacedDrawing& earlier, int row,
                       units::Length levelRise, BottomChange& change) {
    const grid::GridFrame& frame = later.drawn.depth.frame();
    std::vector<geo::WaterPoint> places;
    std::vector<std::size_t> cells;
    for (int col = 0; col < frame.cols(); ++col) {
        const grid::Cell cell{col, row};
        if (later.drawn.depth.has(cell)) {
            cells.push_back(frame.index(cell));
            places.push_back(frame.centre(cell));
        }
    }
    const std::vector<geo::WaterPoint> there = earlier.frame.toWater(later.frame.toEarth(places));
    std::size_t compared = 0;
    for (std::size_t k = 0; k < cells.size(); ++k) {
        const auto before = earlier.drawn.depth.at(there[k]);
        const auto trust = earlier.drawn.trust.halfWidthAt(there[k]);
        if (!before || !trust) {
            continue;
        }
        const std::size_t i = cells[k];
        const auto now_m = static_cast<double>(later.drawn.depth.raw_m()[i]);
        const auto nowTrust_m = static_cast<double>(later.drawn.trust.halfWidths_m()[i]);
        change.rise_m[i] = static_cast<float>(before->inMetres() - now_m + levelRise.inMetres());
        change.halfWidth_m[i] = static_cast<float>(std::hypot(nowTrust_m, trust->inMetres()));
        ++compared;
    }
    return compared;
}

units::Length medianOf(std::vector<float> values) {
    if (values.empty()) {
        return {};
    }
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return units::Length::metres(static_cast<double>(*middle));
}

} // namespace

base::Result<BottomChange> compareDrawings(const PlacedDrawing& later, const PlacedDrawing& earlier,
                                           units::Length levelRise, base::Progress& progress) {
    const grid::GridFrame& frame = later.drawn.depth.frame();
    BottomChange change{grid::Grid<float>(frame, NAN), grid::Grid<float>(frame, NAN)};
    std::size_t compared = 0;
    for (int row = 0; row < frame.rows(); ++row) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        progress.tell(static_cast<double>(row) / frame.rows());
        compared += compareRow(later, earlier, row, levelRise, change);
    }
    const double shared_m2 = static_cast<double>(compared) * frame.cellArea_m2();
    const double smaller_m2 =
        std::min(areaWithDepth_m2(later.drawn.depth), areaWithDepth_m2(earlier.drawn.depth));
    if (!(shared_m2 > 0.0) || shared_m2 < leastShared * smaller_m2) {
        return base::fail(base::ErrorKind::unusableInput,
                          "the two drawings hardly lie on each other", "earlier drawing",
                          "choose a file of the same water");
    }
    return change;
}

ChangeSums sumUp(const BottomChange& change, const grid::Mask& mask) {
    double compared_m2 = 0.0;
    double risen_m2 = 0.0;
    double fallen_m2 = 0.0;
    double filled_m3 = 0.0;
    double lost_m3 = 0.0;
    std::vector<float> rises_m;
    for (std::size_t i = 0; i < change.rise_m.size(); ++i) {
        const auto rise_m = static_cast<double>(change.rise_m[i]);
        if (std::isnan(rise_m)) {
            continue;
        }
        const double area_m2 =
            static_cast<double>(mask.share(i)) * change.rise_m.frame().cellArea_m2();
        compared_m2 += area_m2;
        rises_m.push_back(change.rise_m[i]);
        if (change.isSure(i)) {
            (rise_m > 0.0 ? risen_m2 : fallen_m2) += area_m2;
            (rise_m > 0.0 ? filled_m3 : lost_m3) += std::fabs(rise_m) * area_m2;
        }
    }
    return {units::Area::squareMetres(compared_m2), medianOf(std::move(rises_m)),
            units::Area::squareMetres(risen_m2),    units::Area::squareMetres(fallen_m2),
            units::Volume::cubicMetres(filled_m3),  units::Volume::cubicMetres(lost_m3)};
}

} // namespace surface
