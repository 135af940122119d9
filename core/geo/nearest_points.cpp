// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/nearest_points.h"

#include <algorithm>

#include <boost/geometry.hpp>
#include <boost/geometry/index/rtree.hpp>

namespace geo {

namespace bg = boost::geometry;
using BgPoint = bg::model::d2::point_xy<double>;
using Entry = std::pair<BgPoint, std::size_t>;

struct NearestPoints::Inside {
    bg::index::rtree<Entry, bg::index::quadratic<16>> tree;
};

namespace {

NearestPoints::Found found(const Entry& entry, WaterPoint p) {
    return {entry.second, distance_m(p, {entry.first.x(), entry.first.y()})};
}

} // namespace

NearestPoints::NearestPoints(std::span<const WaterPoint> points)
    : inside_(std::make_unique<Inside>()) {
    std::vector<Entry> entries;
    entries.reserve(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        entries.emplace_back(BgPoint(points[i].x_m, points[i].y_m), i);
    }
    inside_->tree = decltype(inside_->tree)(entries);
}

NearestPoints::~NearestPoints() = default;
NearestPoints::NearestPoints(NearestPoints&&) noexcept = default;
NearestPoints& NearestPoints::operator=(NearestPoints&&) noexcept = default;

std::optional<NearestPoints::Found> NearestPoints::nearest(WaterPoint p) const {
    Entry nearest;
    const auto count = inside_->tree.query(bg::index::nearest(BgPoint(p.x_m, p.y_m), 1), &nearest);
    return count == 0 ? std::nullopt : std::optional(found(nearest, p));
}

std::vector<NearestPoints::Found> NearestPoints::nearest(WaterPoint p, std::size_t count) const {
    std::vector<Found> out;
    const auto wanted = static_cast<unsigned>(std::min<std::size_t>(count, inside_->tree.size()));
    if (wanted == 0) {
        return out; // the tree cannot be asked for none
    }
    for (auto it = inside_->tree.qbegin(bg::index::nearest(BgPoint(p.x_m, p.y_m), wanted));
         it != inside_->tree.qend(); ++it) {
        out.push_back(found(*it, p));
    }
    std::sort(out.begin(), out.end(), [](const Found& a, const Found& b) {
        return a.distance_m != b.distance_m ? a.distance_m < b.distance_m : a.index < b.index;
    });
    return out;
}

std::vector<NearestPoints::Found> NearestPoints::within(WaterPoint p, double radius_m) const {
    std::vector<Found> out;
    const bg::model::box<BgPoint> box(BgPoint(p.x_m - radius_m, p.y_m - radius_m),
                                      BgPoint(p.x_m + radius_m, p.y_m + radius_m));
    for (auto it = inside_->tree.qbegin(bg::index::intersects(box)); it != inside_->tree.qend();
         ++it) {
        const Found candidate = found(*it, p);
        if (candidate.distance_m <= radius_m) {
            out.push_back(candidate);
        }
    }
    std::sort(out.begin(), out.end(),
              [](const Found& a, const Found& b) { return a.index < b.index; });
    return out;
}

} // namespace geo
