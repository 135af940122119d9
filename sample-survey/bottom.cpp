// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/bottom.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sample {

namespace {

constexpr Point humpTop{95, 175};
constexpr double humpTurn_deg = 25.0;
constexpr Point bellHole{-545, -265};
constexpr Point kettleHole{755, 215};
constexpr Point shelfMiddle{95, 455};
constexpr Point weedyBayMiddle{-780, 620};

double bell(double value, double width) {
    const double t = value / width;
    return std::exp(-t * t);
}

/// 0 well below the middle, 1 well above it.
double step(double value, double middle, double width) {
    return 1.0 / (1.0 + std::exp(-(value - middle) / width));
}

/// 1 in the bay behind the neck, 0 in the main water.
double inBay(Point p) {
    const double pastNeck_m = (-(p.x_m + 416.0) + (p.y_m - 364.0)) / std::numbers::sqrt2;
    const double aboveSpit_m = p.y_m - (300.0 - 0.2 * (p.x_m + 440.0));
    return step(pastNeck_m, 0.0, 16.0) * step(aboveSpit_m, 0.0, 12.0);
}

/// Distance from the top of the hump, in units of its radius along each of its axes.
double humpReach(Point p) {
    const double turn = humpTurn_deg * std::numbers::pi / 180.0;
    const Point off = p - humpTop;
    const double along = off.x_m * std::cos(turn) + off.y_m * std::sin(turn);
    const double across = -off.x_m * std::sin(turn) + off.y_m * std::cos(turn);
    return std::hypot(along / 88.0, across / 52.0);
}

/// Small unevenness of the bottom, a few decimetres over some tens of metres.
double uneven_m(Point p) {
    return 0.16 * std::sin(p.x_m / 41.0 + 0.8 * std::sin(p.y_m / 63.0)) +
           0.14 * std::sin(p.y_m / 37.0 - 0.9 * std::sin(p.x_m / 71.0)) +
           0.07 * std::sin((p.x_m + 1.7 * p.y_m) / 23.0);
}

} // namespace

std::string nameOf(Ground ground) {
    switch (ground) {
    case Ground::streamBed:
        return "stream bed";
    case Ground::hump:
        return "hump";
    case Ground::bar:
        return "bar";
    case Ground::shelfEdge:
        return "shelf edge";
    case Ground::weedEdge:
        return "weed edge";
    case Ground::open:
        break;
    }
    return "open water";
}

Bottom::Bottom(const Shore& shore)
    : shore_(&shore), stream_(smoothThrough({{-1235, -30},
                                             {-1090, -20},
                                             {-960, 50},
                                             {-800, 95},
                                             {-640, 60},
                                             {-470, -20},
                                             {-330, -70},
                                             {-200, -50},
                                             {-60, -95},
                                             {90, -70},
                                             {240, -105},
                                             {400, -165},
                                             {545, -140},
                                             {660, -60},
                                             {790, -70},
                                             {900, -20},
                                             {1010, -15}},
                                            8.0)),
      lade_(smoothThrough({{-560, 480},
                           {-480, 420},
                           {-416, 364},
                           {-385, 270},
                           {-340, 190},
                           {-330, 90},
                           {-285, 10},
                           {-235, -52}},
                          8.0)),
      bar_(smoothThrough({{470, 195}, {492, 120}, {520, 50}, {535, -30}}, 8.0)),
      places_{
          {"hump", "Kiln Hump", humpTop, "mid-water hump, longer than broad, deep water all round"},
          {"bar",
           "Gannick Bar",
           {506, 85},
           "runs out south from Gannick Point and falls away to the stream bed"},
          {"drop-off", "Quarry Bank", {420, -562}, "steep bank of the south shore"},
          {"shelf",
           "Flint Shelf",
           {95, 520},
           "shelf of about 3.4 m; its edge runs along the north cove"},
          {"hole", "Bell Hole", bellHole, "hole in the south-west basin"},
          {"hole", "Kettle Hole", kettleHole, "hole in the north-east basin"},
          {"weed bed", "Sallow Arm", weedyBayMiddle,
           "long shallow bay behind the neck, weed nearly all over"},
          {"neck", "Cold Neck", {-416, 364}, "narrow way into Sallow Arm"},
          {"trough", "Mill Bed", {240, -105}, "drowned stream bed, west to east"},
          {"trough", "Lade Cut", {-336, 120}, "drowned mill lade from Cold Neck to Mill Bed"},
          {"point", "Gannick Point", {480, 216}, "north headland"},
          {"point", "Hobbin Point", {-170, -215}, "south headland"},
          {"island", "Tern Holm", {215, -318}, "larger island"},
          {"island", "Little Holm", {-668, -62}, "smaller island"},
          {"dam", "Dam Wall", {1008, -20}, "straight east side"}} {}

bool Bottom::inSallowArm(Point p) const {
    return inBay(p) > 0.5;
}

double Bottom::valley_m(Point p, double soft_m) const {
    const double along = std::clamp((p.x_m + 1240.0) / 2180.0, 0.0, 1.0);
    const double open_m = 3.2 + 15.6 * std::pow(along, 0.85);
    const double bay = inBay(p);
    const double most_m = open_m + (2.75 - open_m) * bay;
    const double reach_m = 105.0 + (38.0 - 105.0) * bay;
    return most_m *
           (1.0 - std::exp(-soft_m / reach_m - 0.35 * (soft_m / reach_m) * (soft_m / reach_m)));
}

double Bottom::shelved_m(Point p, double soft_m, double valley_m) const {
    const Point off = p - shelfMiddle;
    const double share = 1.0 / (1.0 + std::pow(std::hypot(off.x_m / 265.0, off.y_m / 190.0), 8.0));
    const double flat_m = 3.3 * (1.0 - std::exp(-soft_m / 13.0)) + 0.004 * soft_m;
    const double past = step(soft_m, 92.0, 6.5);
    const double below_m = 7.6 + 0.012 * soft_m;
    const double shelf_m = flat_m + (std::max(below_m, valley_m) - flat_m) * past;
    return valley_m + (shelf_m - valley_m) * share;
}

double Bottom::depth_m(Point p) const {
    if (!shore_->holds(p)) {
        return 0.0;
    }
    const double soft_m = shore_->softDistance_m(p);
    double depth = shelved_m(p, soft_m, valley_m(p, soft_m));
    const double barFade = step(-p.y_m, 22.0, 20.0);
    depth *= 1.0 - 0.68 * bell(distanceToLine(p, bar_), 36.0) * (1.0 - barFade);
    const double deepening = std::clamp((p.x_m + 1250.0) / 2200.0, 0.0, 1.0);
    const double bankFade = 1.0 - std::exp(-soft_m / 35.0);
    depth += (0.9 + 1.9 * deepening) * bell(distanceToLine(p, stream_), 21.0) * bankFade;
    depth += 1.3 * bell(distanceToLine(p, lade_), 15.0) * bankFade * (1.0 - 0.6 * inBay(p));
    depth += 4.4 * bell(distance(p, bellHole), 58.0) * bankFade;
    depth += 3.6 * bell(distance(p, kettleHole), 62.0) * bankFade;
    depth += 0.5 * bell(distance(p, {905, -25}), 120.0) * bankFade;
    depth *= 1.0 - 0.69 * bell(humpReach(p), 1.0);
    return std::max(0.0, depth + uneven_m(p) * (1.0 - std::exp(-soft_m / 60.0)) *
                                     (1.0 - 0.6 * inBay(p)));
}

double Bottom::slope(Point p) const {
    const double east = (depth_m(p + Point{1, 0}) - depth_m(p - Point{1, 0})) / 2.0;
    const double north = (depth_m(p + Point{0, 1}) - depth_m(p - Point{0, 1})) / 2.0;
    return std::hypot(east, north);
}

double Bottom::weedShare(Point p) const {
    const double depth = depth_m(p);
    if (depth <= 0.0) {
        return 0.0;
    }
    const double byDepth = step(-depth, -weedLimit_m(), 0.28);
    const double onDam = bell(distanceToLine(p, shore_->dam()), 60.0);
    const double onSteep = step(slope(p), 0.22, 0.03);
    const double liking = 0.55 + 0.43 * inBay(p) + 0.25 * bell(distance(p, shelfMiddle), 260.0);
    return byDepth * std::min(liking, 0.98) * (1.0 - 0.9 * onDam) * (1.0 - 0.8 * onSteep);
}

Ground Bottom::groundAt(Point p) const {
    const double depth = depth_m(p);
    if (humpReach(p) < 1.25) {
        return Ground::hump;
    }
    if (distanceToLine(p, bar_) < 42.0) {
        return Ground::bar;
    }
    const Point off = p - shelfMiddle;
    if (std::hypot(off.x_m / 290.0, off.y_m / 215.0) < 1.0 && depth > 3.0 && slope(p) > 0.05) {
        return Ground::shelfEdge;
    }
    if (std::abs(depth - weedLimit_m()) < 0.7 && slope(p) < 0.2) {
        return Ground::weedEdge;
    }
    if (distanceToLine(p, stream_) < 25.0) {
        return Ground::streamBed;
    }
    return Ground::open;
}

} // namespace sample
