// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/hypsography.h"

#include <algorithm>

namespace surface {

namespace {

constexpr std::size_t mostRows = 1000;
/// Depths nearer to a step than this are that step.
constexpr double sameDepth_m = 1e-9;

} // namespace

HypsographyStep stepAt(const Hypsography& form, units::Depth depth) {
    HypsographyStep at{depth, {}, {}};
    if (form.steps.empty() || depth > form.maxDepth) {
        return at;
    }
    const auto below =
        std::find_if(form.steps.begin(), form.steps.end(), [depth](const HypsographyStep& step) {
            return step.depth.inMetres() > depth.inMetres() + sameDepth_m;
        });
    const HypsographyStep& above = below == form.steps.begin() ? *below : *(below - 1);
    const bool isLast = below == form.steps.end();
    const double foot_m = (isLast ? form.maxDepth : below->depth).inMetres();
    const double footArea_m2 = isLast ? 0.0 : below->area.inSquareMetres();
    const double height_m = foot_m - above.depth.inMetres();
    const double down_m = std::max(depth.inMetres() - above.depth.inMetres(), 0.0);
    const double area_m2 = above.area.inSquareMetres();
    const double share = height_m > 0.0 ? std::min(down_m / height_m, 1.0) : 0.0;
    const double here_m2 = area_m2 + share * (footArea_m2 - area_m2);
    at.area = units::Area::squareMetres(here_m2);
    at.below = units::Volume::cubicMetres(
        std::max(above.below.inCubicMetres() - 0.5 * (area_m2 + here_m2) * down_m, 0.0));
    return at;
}

std::vector<HypsographyStep> rowsEvery(const Hypsography& form, units::Length apart) {
    std::vector<HypsographyStep> rows;
    if (form.steps.empty() || !(apart.inMetres() > 0.0)) {
        return rows;
    }
    for (std::size_t k = 0; k < mostRows; ++k) {
        const double depth_m = static_cast<double>(k) * apart.inMetres();
        if (depth_m > form.maxDepth.inMetres() + sameDepth_m) {
            break;
        }
        rows.push_back(stepAt(form, units::Depth::metres(depth_m)));
    }
    return rows;
}

} // namespace surface
