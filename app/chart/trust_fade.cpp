// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/trust_fade.h"

#include "app/chart/palette.h"
#include "app/chart/pointer_cache.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace chart {

namespace {

constexpr double mostCells = 700'000.0;
constexpr double thickest = 0.78;

/// What one (coarse) cell adds up to.
struct Sum {
    float veil = 0.0F;
    float guess = 0.0F;
    float cells = 0.0F;
};

grid::Grid<Sum> summed(const surface::DrawnWater& drawn) {
    const grid::GridFrame& fine = drawn.depth.frame();
    const int step = std::max(
        1, static_cast<int>(std::ceil(std::sqrt(static_cast<double>(fine.size()) / mostCells))));
    const grid::GridFrame coarse(fine.west_m(), fine.north_m(), fine.cell_m() * step,
                                 (fine.cols() + step - 1) / step, (fine.rows() + step - 1) / step);
    grid::Grid<Sum> sums(coarse);
    const auto& depths = drawn.depth.raw_m();
    const auto& halfWidths = drawn.trust.halfWidths_m().values();
    const auto& names = drawn.trust.names().values();
    for (std::size_t i = 0; i < depths.size(); ++i) {
        if (std::isnan(depths[i]) || std::isnan(halfWidths[i])) {
            continue;
        }
        const grid::Cell cell = fine.cellAt(i);
        Sum& sum = sums[grid::Cell{cell.col / step, cell.row / step}];
        sum.veil += static_cast<float>(
            veilOver(static_cast<double>(depths[i]), static_cast<double>(halfWidths[i])));
        sum.guess += names[i] == surface::TrustName::guess ? 1.0F : 0.0F;
        sum.cells += 1.0F;
    }
    return sums;
}

/// Every cell becomes the sum of those within `reach` along one axis; done along both, a square.
grid::Grid<Sum> spread(const grid::Grid<Sum>& sums, int reach, bool alongRows) {
    const grid::GridFrame& frame = sums.frame();
    grid::Grid<Sum> wide(frame);
    for (int row = 0; row < frame.rows(); ++row) {
        for (int col = 0; col < frame.cols(); ++col) {
            Sum& to = wide[grid::Cell{col, row}];
            for (int k = -reach; k <= reach; ++k) {
                const grid::Cell near =
                    alongRows ? grid::Cell{col + k, row} : grid::Cell{col, row + k};
                if (frame.holds(near)) {
                    const Sum& from = sums[near];
                    to.veil += from.veil;
                    to.guess += from.guess;
                    to.cells += from.cells;
                }
            }
        }
    }
    return wide;
}

TrustFade madeFrom(const surface::DrawnWater& drawn, const QColor& paper) {
    const grid::Grid<Sum> sums = spread(spread(summed(drawn), 1, true), 1, false);
    TrustFade fade;
    fade.frame = sums.frame();
    fade.guess = grid::Grid<float>(fade.frame);
    fade.veil = QImage(fade.frame.cols(), fade.frame.rows(), QImage::Format_ARGB32);
    for (int row = 0; row < fade.frame.rows(); ++row) {
        auto* pixels = reinterpret_cast<QRgb*>(fade.veil.scanLine(row));
        for (int col = 0; col < fade.frame.cols(); ++col) {
            const Sum& sum = sums[grid::Cell{col, row}];
            const float alpha = sum.cells > 0.0F ? sum.veil / sum.cells : 0.0F;
            pixels[col] = qRgba(paper.red(), paper.green(), paper.blue(),
                                static_cast<int>(std::lround(alpha * 255.0F)));
            fade.guess[grid::Cell{col, row}] = sum.cells > 0.0F ? sum.guess / sum.cells : 0.0F;
        }
    }
    fade.veil.convertTo(QImage::Format_ARGB32_Premultiplied);
    return fade;
}

} // namespace

double veilOver(double depth_m, double halfWidth_m) {
    const double becomesGuess_m = std::max(0.5, 0.1 * depth_m);
    const double t = std::clamp((halfWidth_m / becomesGuess_m - 0.6) / 2.4, 0.0, 1.0);
    return thickest * t * (2.0 - t);
}

bool TrustFade::isGuess(geo::WaterPoint p) const {
    const grid::Cell cell = frame.cellOf(p);
    return frame.holds(cell) && guess[cell] > 0.5F;
}

std::shared_ptr<const TrustFade>
TrustFade::of(const std::shared_ptr<const surface::DrawnWater>& drawn, Inks inks) {
    static std::array<PointerCache<surface::DrawnWater, TrustFade>, allInks.size()> caches;
    return caches[static_cast<std::size_t>(inks)].of(
        drawn, [inks](const surface::DrawnWater& water) {
            return madeFrom(water, Palette::of(inks).paper);
        });
}

} // namespace chart
