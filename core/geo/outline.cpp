// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/outline.h"

#include "core/geo/segment_bins.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include <boost/geometry.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <fmt/format.h>

namespace geo {

namespace {

namespace bg = boost::geometry;
using BgPoint = bg::model::d2::point_xy<double>;
using BgSegment = bg::model::segment<BgPoint>;
using Entry = std::pair<BgSegment, std::size_t>;
using Tree = bg::index::rtree<Entry, bg::index::quadratic<16>>;

constexpr double smallestRing_m2 = 1.0;

BgPoint toBg(WaterPoint p) {
    return {p.x_m, p.y_m};
}

Ring cleaned(Ring ring, bool counterClockwise) {
    std::erase_if(ring,
                  [](WaterPoint p) { return !std::isfinite(p.x_m) || !std::isfinite(p.y_m); });
    const auto same = [](WaterPoint a, WaterPoint b) { return distance_m(a, b) < 1e-6; };
    ring.erase(std::unique(ring.begin(), ring.end(), same), ring.end());
    while (ring.size() > 1 && same(ring.front(), ring.back())) {
        ring.pop_back();
    }
    if (ring.size() < 3) {
        return {};
    }
    Box box;
    for (const WaterPoint p : ring) {
        box.take(p);
    }
    // A large ring of no area is kept: it crosses itself, and that is what the user must hear.
    const double area_m2 = signedArea_m2(ring);
    if (std::fabs(area_m2) < smallestRing_m2 &&
        box.width_m() * box.height_m() < 100.0 * smallestRing_m2) {
        return {};
    }
    if ((area_m2 > 0.0) != counterClockwise) {
        std::reverse(ring.begin(), ring.end());
    }
    return ring;
}

void addSegments(const Ring& ring, std::vector<ShoreSegment>& out) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
        out.push_back({ring[i], ring[(i + 1) % ring.size()]});
    }
}

/// Where two segments that do not share an end meet.
std::optional<WaterPoint> meetingPoint(const ShoreSegment& s, const ShoreSegment& t) {
    if (s.a == t.a || s.a == t.b || s.b == t.a || s.b == t.b) {
        return std::nullopt;
    }
    std::vector<BgPoint> points;
    bg::intersection(BgSegment(toBg(s.a), toBg(s.b)), BgSegment(toBg(t.a), toBg(t.b)), points);
    if (points.empty()) {
        return std::nullopt;
    }
    return WaterPoint{points.front().x(), points.front().y()};
}

std::optional<WaterPoint> selfCrossing(const std::vector<ShoreSegment>& segments,
                                       const Tree& tree) {
    for (std::size_t i = 0; i < segments.size(); ++i) {
        const BgSegment here(toBg(segments[i].a), toBg(segments[i].b));
        for (auto it = tree.qbegin(bg::index::intersects(here)); it != tree.qend(); ++it) {
            if (it->second > i) {
                if (const auto at = meetingPoint(segments[i], segments[it->second])) {
                    return at;
                }
            }
        }
    }
    return std::nullopt;
}

} // namespace

LonLatPiece toEarth(const Piece& piece, const WaterFrame& frame) {
    LonLatPiece onEarth{frame.toEarth(std::span(piece.outer)), {}};
    for (const Ring& island : piece.islands) {
        onEarth.islands.push_back(frame.toEarth(std::span(island)));
    }
    return onEarth;
}

Piece toWater(const LonLatPiece& piece, const WaterFrame& frame) {
    Piece inWater{frame.toWater(std::span(piece.outer)), {}};
    for (const LonLatRing& island : piece.islands) {
        inWater.islands.push_back(frame.toWater(std::span(island)));
    }
    return inWater;
}

units::Area areaOf(const Piece& piece) {
    double area_m2 = std::fabs(signedArea_m2(piece.outer));
    for (const Ring& island : piece.islands) {
        area_m2 -= std::fabs(signedArea_m2(island));
    }
    return units::Area::squareMetres(area_m2);
}

struct Outline::Inside {
    std::vector<Piece> pieces;
    std::vector<ShoreSegment> segments;
    Box box;
    Tree tree;
    // Segments by the strips of y that they touch: a horizontal line meets only those of its own
    // strip.
    std::vector<std::vector<std::uint32_t>> strips;
    double strip_m = 1.0;
    SegmentBins bins; // for rays

    [[nodiscard]] std::size_t stripOf(double y_m) const {
        const double k = std::floor((y_m - box.south_m) / strip_m);
        return static_cast<std::size_t>(std::clamp(k, 0.0, static_cast<double>(strips.size() - 1)));
    }

    void index() {
        std::vector<Entry> entries;
        entries.reserve(segments.size());
        for (std::size_t i = 0; i < segments.size(); ++i) {
            entries.emplace_back(BgSegment(toBg(segments[i].a), toBg(segments[i].b)), i);
            box.take(segments[i].a);
        }
        tree = Tree(entries);
        std::vector<SegmentBins::Piece> lines;
        for (const ShoreSegment& s : segments) {
            lines.push_back({s.a, s.b});
        }
        bins = SegmentBins(lines);
        strips.resize(std::clamp<std::size_t>(segments.size() / 2, 1, 20000));
        strip_m = std::max(box.height_m() / static_cast<double>(strips.size()), 1e-9);
        for (std::size_t i = 0; i < segments.size(); ++i) {
            const auto [low, high] = std::minmax(segments[i].a.y_m, segments[i].b.y_m);
            for (std::size_t k = stripOf(low); k <= stripOf(high); ++k) {
                strips[k].push_back(static_cast<std::uint32_t>(i));
            }
        }
    }
};

base::Result<Outline> Outline::make(std::vector<Piece> pieces, const WaterFrame& frame) {
    auto inside = std::make_shared<Inside>();
    for (Piece& piece : pieces) {
        Piece kept{cleaned(std::move(piece.outer), true), {}};
        if (kept.outer.empty()) {
            continue;
        }
        addSegments(kept.outer, inside->segments);
        for (Ring& island : piece.islands) {
            Ring ring = cleaned(std::move(island), false);
            if (!ring.empty()) {
                addSegments(ring, inside->segments);
                kept.islands.push_back(std::move(ring));
            }
        }
        inside->pieces.push_back(std::move(kept));
    }
    if (inside->pieces.empty()) {
        return base::fail(base::ErrorKind::unusableInput, "the shore encloses no water", "",
                          "give a closed ring of at least three different points");
    }
    inside->index();
    if (const auto at = selfCrossing(inside->segments, inside->tree)) {
        const LonLat place = frame.toEarth(*at);
        return base::fail(
            base::ErrorKind::unusableInput, "the shore crosses itself",
            fmt::format("longitude {:.6f}, latitude {:.6f}", place.lon_deg, place.lat_deg),
            "mend the shoreline there");
    }
    return Outline(std::move(inside));
}

base::Result<Outline> Outline::make(std::span<const LonLatPiece> pieces, const WaterFrame& frame) {
    std::vector<Piece> flat;
    for (const LonLatPiece& piece : pieces) {
        Piece made{frame.toWater(piece.outer), {}};
        for (const LonLatRing& island : piece.islands) {
            made.islands.push_back(frame.toWater(island));
        }
        flat.push_back(std::move(made));
    }
    return make(std::move(flat), frame);
}

const std::vector<Piece>& Outline::pieces() const {
    return inside_->pieces;
}

const Box& Outline::box() const {
    return inside_->box;
}

const std::vector<ShoreSegment>& Outline::segments() const {
    return inside_->segments;
}

units::Area Outline::area() const {
    units::Area sum;
    for (const Piece& piece : pieces()) {
        sum += areaOf(piece);
    }
    return sum;
}

units::Length Outline::shoreLength() const {
    units::Length sum;
    for (const ShoreSegment& s : segments()) {
        sum += distance(s.a, s.b);
    }
    return sum;
}

std::vector<double> Outline::crossingsAt(double y_m) const {
    std::vector<double> xs;
    if (y_m < box().south_m || y_m > box().north_m) {
        return xs;
    }
    for (const std::uint32_t i : inside_->strips[inside_->stripOf(y_m)]) {
        const ShoreSegment& s = inside_->segments[i];
        if ((s.a.y_m > y_m) != (s.b.y_m > y_m)) {
            xs.push_back(s.a.x_m + (y_m - s.a.y_m) / (s.b.y_m - s.a.y_m) * (s.b.x_m - s.a.x_m));
        }
    }
    std::sort(xs.begin(), xs.end());
    return xs;
}

bool Outline::contains(WaterPoint p) const {
    if (!box().holds(p)) {
        return false;
    }
    bool inside = false;
    for (const std::uint32_t i : inside_->strips[inside_->stripOf(p.y_m)]) {
        const ShoreSegment& s = inside_->segments[i];
        if ((s.a.y_m > p.y_m) != (s.b.y_m > p.y_m) &&
            p.x_m < s.a.x_m + (p.y_m - s.a.y_m) / (s.b.y_m - s.a.y_m) * (s.b.x_m - s.a.x_m)) {
            inside = !inside;
        }
    }
    return inside;
}

double Outline::distanceToShore_m(WaterPoint p) const {
    Tree::value_type nearest;
    inside_->tree.query(bg::index::nearest(toBg(p), 1), &nearest);
    const ShoreSegment& s = inside_->segments[nearest.second];
    return distanceToSegment_m(p, s.a, s.b);
}

bool Outline::isCrossedBy(WaterPoint a, WaterPoint b) const {
    return inside_->tree.qbegin(bg::index::intersects(BgSegment(toBg(a), toBg(b)))) !=
           inside_->tree.qend();
}

std::optional<double> Outline::firstShoreAhead_m(WaterPoint p, units::Bearing towards) const {
    const double east = towards.east();
    const double north = towards.north();
    const double reach_m = std::hypot(box().east_m - p.x_m, box().north_m - p.y_m) +
                           std::hypot(box().west_m - p.x_m, box().south_m - p.y_m) + 1.0;
    const BgSegment ray(toBg(p), BgPoint(p.x_m + reach_m * east, p.y_m + reach_m * north));
    std::optional<double> first_m;
    const auto look = [&](std::size_t i) {
        const ShoreSegment& s = inside_->segments[i];
        if (!bg::intersects(ray, BgSegment(toBg(s.a), toBg(s.b)))) {
            return;
        }
        const double alongX_m = s.b.x_m - s.a.x_m;
        const double alongY_m = s.b.y_m - s.a.y_m;
        const double cross = east * alongY_m - north * alongX_m;
        // A shore that runs along the ray is met at its nearer end.
        const double ahead_m =
            cross != 0.0 ? ((s.a.x_m - p.x_m) * alongY_m - (s.a.y_m - p.y_m) * alongX_m) / cross
                         : std::min((s.a.x_m - p.x_m) * east + (s.a.y_m - p.y_m) * north,
                                    (s.b.x_m - p.x_m) * east + (s.b.y_m - p.y_m) * north);
        if (ahead_m >= 0.0 && (!first_m || ahead_m < *first_m)) {
            first_m = ahead_m;
        }
    };
    inside_->bins.along(p, east, north, look,
                        [&first_m](double bin_m) { return first_m && *first_m < bin_m; });
    return first_m;
}

} // namespace geo
