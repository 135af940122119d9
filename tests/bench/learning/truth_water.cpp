// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/learning/truth_water.h"

#include "core/water/document/chosen_scale.h"
#include "core/water/steps/closed_cells.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace learning_bench {

namespace {

constexpr double lattice_m = 20.0;
constexpr double apart_m = 60.0;
constexpr int mostInSection = 2;

/// The hexagon, 60 m across, that holds a place: cube coordinates, rounded.
int hexOf(geo::WaterPoint p) {
    const double r = 60.0 / std::sqrt(3.0);
    const double q = (std::sqrt(3.0) / 3.0 * p.x_m - p.y_m / 3.0) / r;
    const double s = 2.0 / 3.0 * p.y_m / r;
    double a = std::round(q);
    double b = std::round(s);
    const double c = std::round(-q - s);
    const double da = std::fabs(a - q);
    const double db = std::fabs(b - s);
    const double dc = std::fabs(c + q + s);
    if (da > db && da > dc) {
        a = -b - c;
    } else if (db > dc) {
        b = -a - c;
    }
    return static_cast<int>(a) * 10007 + static_cast<int>(b);
}

} // namespace

TruthWater::TruthWater(const water::Water& water, const water::Derived& derived)
    : water_(water), derived_(derived), today_(derived.drawn->depth.raisedBy({})),
      closed_(water::closedCells(water, derived.drawn->mask.frame()).value()),
      ground_(today_, water::bandsOf(water, derived).limit(), &closed_, *derived.structure,
              derived.weed->zones) {
    marks::Plan calm;
    const geo::Box box = ground_.frame().box();
    for (double y_m = std::ceil(box.south_m / lattice_m) * lattice_m; y_m < box.north_m;
         y_m += lattice_m) {
        for (double x_m = std::ceil(box.west_m / lattice_m) * lattice_m; x_m < box.east_m;
             x_m += lattice_m) {
            if (marks::mayLieAt(input(), {x_m, y_m}, calm, {})) {
                places_.push_back(at({x_m, y_m}));
            }
        }
    }
}

marks::MarkInput TruthWater::input() const {
    return {.frame = *water_.frame,
            .outline = *derived_.outline,
            .ground = ground_,
            .bands = water::bandsOf(water_, derived_),
            .sections = *derived_.sections,
            .trust_m = derived_.drawn->trust.halfWidths_m(),
            .isGuess = nullptr,
            .learned = nullptr,
            .waveHeightAt = {}};
}

TruthPlace TruthWater::at(geo::WaterPoint place) const {
    const auto around = marks::surroundingsOf(input(), place, units::Length::metres(30.0));
    TruthPlace out;
    out.place = place;
    out.depth_m = around.depth.inMetres();
    const auto under = ground_.kindAt(place);
    out.kind = under ? static_cast<int>(*under) + 1 : 0;
    out.shares.assign(around.shareOfKind.begin(), around.shareOfKind.end());
    const auto& map = derived_.sections->sectionOfCell;
    out.section = map[map.frame().cellOf(place)];
    out.hex = hexOf(place);
    out.riseEast = around.riseEast;
    out.riseNorth = around.riseNorth;
    out.toShore_m = derived_.outline->distanceToShore_m(place);
    return out;
}

int TruthWater::sections() const {
    return static_cast<int>(derived_.sections->sections.size());
}

std::vector<std::size_t> bestFour(const TruthWater& water, const std::vector<double>& values) {
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::greater{}, [&](std::size_t k) { return values[k]; });
    std::vector<std::size_t> chosen;
    std::map<int, int> inSection;
    for (const std::size_t k : order) {
        const TruthPlace& here = water.places()[k];
        const bool isClear = std::ranges::all_of(chosen, [&](std::size_t j) {
            return geo::distance_m(water.places()[j].place, here.place) >= apart_m;
        });
        if (isClear && (here.section < 0 || inSection[here.section] < mostInSection)) {
            chosen.push_back(k);
            ++inSection[here.section];
            if (chosen.size() == 4) {
                break;
            }
        }
    }
    return chosen;
}

} // namespace learning_bench
