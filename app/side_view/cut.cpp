// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/cut.h"

#include <algorithm>
#include <cmath>

namespace side_view {

namespace {

double weedAt(const weed::WeedMap& weed, geo::WaterPoint p) {
    const grid::GridFrame& frame = weed.probability.frame();
    const grid::Cell cell = frame.cellOf(p);
    if (!frame.holds(cell) || !(weed.probability[cell] > 0.5F)) {
        return 0.0;
    }
    const auto height_m = static_cast<double>(weed.height_m[cell]);
    return std::isnan(height_m) ? 0.0 : height_m;
}

CutSample sampleAt(const water::Derived& derived, geo::WaterPoint p, double along_m,
                   units::Length rise) {
    CutSample sample{along_m, p, {}, 0.0, surface::TrustName::sounded, 0.0};
    const bool isWater = !derived.outline || derived.outline->contains(p);
    if (!derived.drawn || !isWater) {
        return sample;
    }
    const auto depth = derived.drawn->depth.at(p);
    if (!depth || depth->inMetres() + rise.inMetres() <= 0.0) {
        return sample;
    }
    sample.depth_m = depth->inMetres() + rise.inMetres();
    if (const auto halfWidth = derived.drawn->trust.halfWidthAt(p)) {
        sample.halfWidth_m = halfWidth->inMetres();
    }
    sample.trust = derived.drawn->trust.at(p).value_or(surface::TrustName::guess);
    if (derived.weed) {
        sample.weed_m = std::min(weedAt(*derived.weed, p), *sample.depth_m);
    }
    return sample;
}

} // namespace

double Cut::deepest_m() const {
    double deepest = 0.0;
    for (const CutSample& sample : samples) {
        deepest = std::max(deepest, sample.depth_m.value_or(0.0) + sample.halfWidth_m);
    }
    return deepest;
}

double Cut::depthAt_m(double along_m) const {
    if (isEmpty()) {
        return 0.0;
    }
    return std::lower_bound(
               samples.begin(), samples.end() - 1, along_m,
               [](const CutSample& sample, double along) { return sample.along_m < along; })
        ->depth_m.value_or(0.0);
}

geo::WaterPoint Cut::placeAt(double along_m) const {
    if (isEmpty()) {
        return {};
    }
    double left = std::clamp(along_m, 0.0, length_m());
    for (std::size_t i = 1; i < path.size(); ++i) {
        const double piece = geo::distance_m(path[i - 1], path[i]);
        if (left <= piece && piece > 0.0) {
            const double t = left / piece;
            return {path[i - 1].x_m + t * (path[i].x_m - path[i - 1].x_m),
                    path[i - 1].y_m + t * (path[i].y_m - path[i - 1].y_m)};
        }
        left -= piece;
    }
    return path.back();
}

std::optional<double> Cut::alongOf(geo::WaterPoint p, double most_m) const {
    std::optional<double> nearest;
    double least = most_m;
    double before = 0.0;
    for (std::size_t i = 1; i < path.size(); ++i) {
        const geo::WaterPoint a = path[i - 1];
        const geo::WaterPoint b = path[i];
        const double piece = geo::distance_m(a, b);
        if (piece <= 0.0) {
            continue;
        }
        const double t =
            std::clamp(((p.x_m - a.x_m) * (b.x_m - a.x_m) + (p.y_m - a.y_m) * (b.y_m - a.y_m)) /
                           (piece * piece),
                       0.0, 1.0);
        const double apart =
            geo::distance_m(p, {a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m)});
        if (apart <= least) {
            least = apart;
            nearest = before + t * piece;
        }
        before += piece;
    }
    return nearest;
}

Cut makeCut(const water::Derived& derived, const geo::Path& path, units::Length rise, int samples) {
    Cut cut;
    cut.path = path;
    const double length_m = geo::lengthOf(path).inMetres();
    if (path.size() < 2 || length_m <= 0.0 || samples < 2) {
        return cut;
    }
    // The walk needs its length: ends first, then the places between.
    cut.samples = {{0.0, path.front(), {}, 0.0, {}, 0.0},
                   {length_m, path.back(), {}, 0.0, {}, 0.0}};
    std::vector<CutSample> made;
    for (int i = 0; i < samples; ++i) {
        const double along_m = length_m * i / (samples - 1);
        made.push_back(sampleAt(derived, cut.placeAt(along_m), along_m, rise));
    }
    cut.samples = std::move(made);
    return cut;
}

geo::Path pathThrough(const marks::Mark& mark, units::Length beyond) {
    const anchoring::AnchorSet& set = mark.anchors;
    const units::Bearing ahead = geo::bearing(set.lie.centre, set.bow.place);
    if (!set.stern) {
        // Past the boat as far as past the anchor: there the baits lie.
        return {geo::moved(set.lie.centre, ahead.opposite(), beyond), set.lie.centre, set.bow.place,
                geo::moved(set.bow.place, ahead, beyond)};
    }
    const units::Bearing astern = geo::bearing(set.lie.centre, set.stern->place);
    return {geo::moved(set.stern->place, astern, beyond), set.stern->place, set.lie.centre,
            set.bow.place, geo::moved(set.bow.place, ahead, beyond)};
}

geo::Path pathOfCast(const marks::Mark& mark, std::size_t rod, units::Length beyond) {
    const geo::WaterPoint boat = mark.anchors.lie.centre;
    const geo::WaterPoint bait = mark.spread.rods.at(rod).place;
    const units::Bearing away = geo::bearing(boat, bait);
    return {geo::moved(boat, away.opposite(), beyond), boat, bait, geo::moved(bait, away, beyond)};
}

} // namespace side_view
