// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/shore.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sample {

namespace {

constexpr double step_m = 9.0;

/// From the dam's north end round by north, west and south to its south end: counter-clockwise.
const Line bankKnots{
    {1040, 345},  {1000, 430},  {890, 478},   {760, 462},    {655, 405},    {575, 300},
    {525, 215},   {478, 180},   {430, 212},   {395, 310},    {335, 425},    {235, 520},
    {90, 560},    {-60, 535},   {-180, 480},  {-290, 432},   {-398, 384},   {-424, 452},
    {-462, 545},  {-570, 632},  {-730, 712},  {-895, 770},   {-1020, 772},  {-1075, 705},
    {-1040, 615}, {-930, 545},  {-800, 492},  {-685, 425},   {-585, 383},   {-505, 362},
    {-433, 345},  {-438, 302},  {-525, 258},  {-650, 240},   {-785, 228},   {-925, 195},
    {-1060, 140}, {-1185, 65},  {-1245, -20}, {-1210, -110}, {-1095, -155}, {-960, -195},
    {-820, -262}, {-690, -350}, {-560, -420}, {-430, -438},  {-315, -388},  {-238, -290},
    {-195, -205}, {-145, -188}, {-102, -255}, {-62, -370},   {25, -470},    {150, -540},
    {310, -570},  {480, -562},  {640, -530},  {780, -508},   {900, -470},   {975, -385}};

/// The bank as nature leaves it: moved across itself by a few metres, in and out, but not beside
/// the dam.
Line roughened(const Line& bank) {
    const double total_m = lengthOf(bank);
    double along_m = 0.0;
    Line out{bank.front()};
    for (std::size_t i = 1; i + 1 < bank.size(); ++i) {
        along_m += distance(bank[i - 1], bank[i]);
        const Point chord = bank[i + 1] - bank[i - 1];
        const double length = std::hypot(chord.x_m, chord.y_m);
        const Point outward{chord.y_m / length, -chord.x_m / length};
        const double move_m = 11.5 +
                              7.5 * std::sin(along_m / 47.0 + 1.9 * std::sin(along_m / 211.0)) +
                              5.0 * std::sin(along_m / 21.5 + 2.3 * std::sin(along_m / 133.0)) +
                              9.0 * std::sin(along_m / 96.0);
        const double fade = std::min({1.0, along_m / 90.0, (total_m - along_m) / 90.0});
        out.push_back(bank[i] + (fade * move_m) * outward);
    }
    out.push_back(bank.back());
    return evenly(out, step_m);
}

/// A closed clockwise ring about a centre: an ellipse with a few bumps.
Line islandRing(Point centre, double long_m, double short_m, double turn_deg, double bump,
                double phase) {
    constexpr int corners = 40;
    const double turn = turn_deg * std::numbers::pi / 180.0;
    Line ring;
    for (int i = 0; i < corners; ++i) {
        const double angle = -2.0 * std::numbers::pi * i / corners;
        const double swell =
            1.0 + bump * std::sin(3.0 * angle + phase) + 0.5 * bump * std::cos(2.0 * angle - phase);
        const double u = long_m * swell * std::cos(angle);
        const double v = short_m * swell * std::sin(angle);
        ring.push_back(centre + Point{u * std::cos(turn) - v * std::sin(turn),
                                      u * std::sin(turn) + v * std::cos(turn)});
    }
    ring.push_back(ring.front());
    return ring;
}

double ringArea_m2(const Line& ring) {
    double twice = 0.0;
    for (std::size_t i = 1; i < ring.size(); ++i) {
        twice += ring[i - 1].x_m * ring[i].y_m - ring[i].x_m * ring[i - 1].y_m;
    }
    return 0.5 * twice;
}

bool ringHolds(const Line& ring, Point p) {
    bool inside = false;
    for (std::size_t i = 1; i < ring.size(); ++i) {
        const Point a = ring[i - 1];
        const Point b = ring[i];
        if ((a.y_m > p.y_m) != (b.y_m > p.y_m) &&
            p.x_m < a.x_m + (p.y_m - a.y_m) * (b.x_m - a.x_m) / (b.y_m - a.y_m)) {
            inside = !inside;
        }
    }
    return inside;
}

double bell(double value, double centre, double width) {
    const double t = (value - centre) / width;
    return std::exp(-t * t);
}

/// How the bank falls away: 1 is ordinary, small is steep, large is gentle.
double bankWeight(Point middle, bool onDam) {
    if (onDam) {
        return 0.16;
    }
    const double quarryBank = middle.y_m < -430 ? bell(middle.x_m, 420, 280) : 0.0;
    const double westFlats = bell(middle.x_m, -1230, 260);
    const double points =
        bell(distance(middle, {478, 180}), 0, 120) + bell(distance(middle, {-165, -190}), 0, 110);
    return (1.0 - 0.86 * quarryBank) * (1.0 + 0.8 * westFlats) * (1.0 + 0.7 * points);
}

} // namespace

Shore::Shore() {
    outer_ = roughened(smoothThrough(bankKnots, step_m));
    dam_ = evenly({bankKnots.back(), bankKnots.front()}, step_m);
    outer_.insert(outer_.end(), dam_.begin() + 1, dam_.end());
    islands_.push_back(islandRing({215, -318}, 78, 41, 24, 0.10, 0.7));
    islands_.push_back(islandRing({-668, -62}, 46, 27, -38, 0.12, 2.1));
    addRing(outer_);
    for (const Line& ring : islands_) {
        addRing(ring);
    }
}

void Shore::addRing(const Line& ring) {
    for (std::size_t i = 1; i < ring.size(); ++i) {
        const Point middle = 0.5 * (ring[i - 1] + ring[i]);
        pieces_.push_back(
            {ring[i - 1], ring[i], bankWeight(middle, distanceToLine(middle, dam_) < 0.01)});
    }
}

bool Shore::holds(Point p) const {
    return ringHolds(outer_, p) &&
           std::none_of(islands_.begin(), islands_.end(),
                        [p](const Line& ring) { return ringHolds(ring, p); });
}

double Shore::area_m2() const {
    double area = ringArea_m2(outer_);
    for (const Line& ring : islands_) {
        area += ringArea_m2(ring);
    }
    return area;
}

double Shore::length_m() const {
    double length = lengthOf(outer_);
    for (const Line& ring : islands_) {
        length += lengthOf(ring);
    }
    return length;
}

double Shore::distance_m(Point p) const {
    double best = distanceToLine(p, outer_);
    for (const Line& ring : islands_) {
        best = std::min(best, distanceToLine(p, ring));
    }
    return best;
}

double Shore::softDistance_m(Point p) const {
    double sum = 0.0;
    for (const Piece& piece : pieces_) {
        // Integral of ds / r^3 along a straight piece, h from p: (b / rb - a / ra) / h^2 with a, b
        // measured along it.
        const double length = distance(piece.from, piece.to);
        const Point unit = (1.0 / length) * (piece.to - piece.from);
        const Point to = piece.from - p;
        const double a = to.x_m * unit.x_m + to.y_m * unit.y_m;
        const double b = a + length;
        const double across = to.x_m * unit.y_m - to.y_m * unit.x_m;
        const double h2 = across * across;
        const double ra = std::sqrt(a * a + h2);
        const double rb = std::sqrt(b * b + h2);
        if (ra < 1e-6 || rb < 1e-6) {
            return 0.0;
        }
        if (h2 < 1e-6 * ra * ra && a * b > 0.0) {
            sum += piece.weight * 0.5 * std::abs(1.0 / (a * a) - 1.0 / (b * b));
        } else if (h2 < 1e-12) {
            return 0.0;
        } else {
            sum += piece.weight * (b / rb - a / ra) / h2;
        }
    }
    return std::sqrt(2.0 / sum);
}

} // namespace sample
