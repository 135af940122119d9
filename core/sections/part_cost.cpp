// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/part_cost.h"

#include <cmath>
#include <numbers>
#include <vector>

namespace sections {

using std::numbers::pi;

double PartCost::of(const PartSums& part) const {
    if (!(part.area_m2 > 0.0)) {
        return 0.0;
    }
    const double off = part.area_m2 / wanted_m2 - 1.0;
    return depth * part.depthScatter_m4() / (depthVariance_m2 * wanted_m2) +
           border * part.border_m / std::sqrt(4.0 * pi * wanted_m2) + size * off * off;
}

PartFigures figuresOf(std::span<const PartSums> parts, double least_m2) {
    PartSums whole;
    double within_m4 = 0.0;
    std::vector<double> compactness;
    for (const PartSums& part : parts) {
        whole.add(part);
        within_m4 += part.depthScatter_m4();
        if (part.area_m2 > 0.0 && part.area_m2 >= least_m2) {
            compactness.push_back(4.0 * pi * part.area_m2 / (part.border_m * part.border_m));
        }
    }
    PartFigures out;
    if (!compactness.empty()) {
        const auto middle =
            compactness.begin() + static_cast<std::ptrdiff_t>(compactness.size() / 2);
        std::nth_element(compactness.begin(), middle, compactness.end());
        out.compactness = *middle;
    }
    const double all_m4 = whole.depthScatter_m4();
    out.explained = all_m4 > 0.0 ? 1.0 - within_m4 / all_m4 : 0.0;
    return out;
}

} // namespace sections
