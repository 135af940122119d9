// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/contours/choose_bands.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <span>

namespace contours {

using units::Depth;

namespace {

constexpr double leastBands = 4.0; ///< In the fishable part.
constexpr double deepBands = 3.0;  ///< Below it, about.
constexpr double linesWanted = 15.0;
constexpr double leastShare = 1e-3; ///< Of the area, that may lie deeper.
constexpr double rounding = 1e-9;

constexpr std::array metreSteps{0.1, 0.2, 0.25, 0.5, 1.0, 1.5};
constexpr std::array footSteps{0.25, 0.5, 1.0, 2.0, 3.0, 5.0};
constexpr std::array wideSteps{1.0, 2.0, 3.0, 5.0, 10.0, 15.0, 20.0, 25.0, 50.0, 100.0, 250.0};
constexpr std::array metreLines{0.1, 0.25, 0.5, 1.0, 2.0, 5.0, 10.0};
constexpr std::array footLines{0.25, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0};

double inUnit(Depth depth, CountsIn unit) {
    return unit == CountsIn::feet ? depth.inFeet() : depth.inMetres();
}

Depth fromUnit(double depth, CountsIn unit) {
    return unit == CountsIn::feet ? Depth::feet(depth) : Depth::metres(depth);
}

/// The largest step of which at least four go into the depth; the smallest where none does.
double stepFor(double depth, std::span<const double> steps) {
    double step = steps.front();
    for (const double one : steps) {
        if (std::ceil(depth / one - rounding) >= leastBands) {
            step = one;
        }
    }
    return step;
}

/// The first step that leaves not more than so many in the depth; the last where none does.
double wideStepFor(double depth, double most, std::span<const double> steps) {
    const auto step =
        std::ranges::find_if(steps, [&](double one) { return depth / one <= most + rounding; });
    return step == steps.end() ? steps.back() : *step;
}

} // namespace

Bands chooseBands(Depth deepest, CountsIn unit, std::optional<Depth> limit) {
    const double usual = inUnit(usualLimit(unit), unit);
    const double given = inUnit(deepest, unit);
    const double bottom = std::isfinite(given) && given > 0.0 ? given : usual;
    const double fishable = limit ? inUnit(*limit, unit) : std::min(bottom, usual);
    const std::span<const double> steps =
        unit == CountsIn::feet ? std::span<const double>(footSteps) : metreSteps;
    const double step = stepFor(std::min(fishable, std::max(bottom, steps.front())), steps);
    std::vector<Depth> edges;
    const double last = std::ceil(fishable / step - rounding) * step;
    const Depth end = limit.value_or(fromUnit(last, unit));
    for (int k = 1; k * step < inUnit(end, unit) - 0.3 * step; ++k) {
        edges.push_back(fromUnit(k * step, unit));
    }
    edges.push_back(end);
    const double wide = wideStepFor(bottom - inUnit(end, unit), deepBands, wideSteps);
    for (double edge = wide; edge < bottom - 0.2 * wide; edge += wide) {
        if (edge > inUnit(end, unit) + 0.2 * wide) {
            edges.push_back(fromUnit(edge, unit));
        }
    }
    // Ascending by the way they are made, and positive where the limit is.
    return Bands::make(std::move(edges), end).value_or(Bands());
}

Depth depthToChooseBy(const grid::DepthGrid& depth, const grid::Mask& mask) {
    std::vector<float> depths_m;
    for (std::size_t i = 0; i < mask.frame().size(); ++i) {
        if (mask.isActive(i) && depth.has(i)) {
            depths_m.push_back(depth.raw_m()[i]);
        }
    }
    if (depths_m.empty()) {
        return {};
    }
    const auto deeper =
        static_cast<std::ptrdiff_t>(leastShare * static_cast<double>(depths_m.size()));
    const auto at = depths_m.end() - 1 - deeper;
    std::ranges::nth_element(depths_m, at);
    return Depth::metres(static_cast<double>(*at));
}

std::vector<Depth> contourLevels(const Bands& bands, Depth deepest, CountsIn unit) {
    const std::span<const double> steps =
        unit == CountsIn::feet ? std::span<const double>(footLines) : metreLines;
    const double bottom = inUnit(deepest, unit);
    const double step = wideStepFor(bottom, linesWanted, steps);
    std::set<double> levels_m;
    for (int k = 1; k * step < bottom; ++k) {
        levels_m.insert(fromUnit(k * step, unit).inMetres());
    }
    for (const Depth edge : bands.edges()) {
        if (edge < deepest) {
            levels_m.insert(edge.inMetres());
        }
    }
    std::vector<Depth> levels;
    std::ranges::transform(levels_m, std::back_inserter(levels),
                           [](double m) { return Depth::metres(m); });
    return levels;
}

} // namespace contours
