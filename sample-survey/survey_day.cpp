// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/survey_day.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sample {

namespace {

/// The planned way with its corners rounded as a boat would (Chaikin's cutting).
Line rounded(const Line& way) {
    Line line = evenly(way, 14.0);
    for (int pass = 0; pass < 3; ++pass) {
        Line cut{line.front()};
        for (std::size_t i = 1; i < line.size(); ++i) {
            cut.push_back(0.75 * line[i - 1] + 0.25 * line[i]);
            cut.push_back(0.25 * line[i - 1] + 0.75 * line[i]);
        }
        cut.push_back(line.back());
        line = cut;
    }
    return evenly(line, 0.5);
}

double shownDepth(double depth_m, const DayFacts& facts) {
    const double belowTransducer_m = depth_m + facts.level_m - facts.draft_m;
    return belowTransducer_m * facts.assumedSoundSpeed_m_s /
           soundSpeed_m_s(facts.waterTemperature_c) / facts.unit_m;
}

} // namespace

double soundSpeed_m_s(double t) {
    return 1402.385 +
           t * (5.038813 +
                t * (-5.799136e-2 + t * (3.287156e-4 + t * (-1.398845e-6 + t * 2.787860e-9))));
}

double reducedDepth_m(double shown, const DayFacts& facts) {
    const double displayed = std::round(shown * 10.0) / 10.0;
    return displayed * facts.unit_m * soundSpeed_m_s(facts.waterTemperature_c) /
               facts.assumedSoundSpeed_m_s +
           facts.draft_m - facts.level_m;
}

std::string nameOf(Fault fault) {
    switch (fault) {
    case Fault::spike:
        return "spike";
    case Fault::zeroDepth:
        return "zero_depth";
    case Fault::noDepth:
        return "no_depth";
    case Fault::stuck:
        return "stuck";
    case Fault::positionJump:
        return "position_jump";
    case Fault::doubleEcho:
        return "double_echo";
    case Fault::badChecksum:
        return "bad_checksum";
    case Fault::truncated:
        return "truncated";
    case Fault::voidFix:
        return "void_fix";
    case Fault::none:
        break;
    }
    return "none";
}

std::vector<Fix> sail(const Line& way, const Bottom& bottom, const DayFacts& facts,
                      Chance& chance) {
    const Line line = rounded(way);
    const double each_m = lengthOf(line) / static_cast<double>(line.size() - 1);
    const double dt = facts.everySeconds;
    Drift helm(chance, 2.2, 45.0);
    Drift throttle(chance, 0.14, 60.0);
    Drift east(chance, 1.05, 150.0);
    Drift north(chance, 1.05, 150.0);
    std::vector<double> stops{0.36, 0.71};
    const double unrecordedFrom = 0.52;
    const double unrecordedTo = unrecordedFrom + 0.006;
    std::vector<Fix> fixes;
    std::int64_t now = facts.start_s;
    bool gap = false;
    for (double at_m = 0.0; at_m < each_m * static_cast<double>(line.size() - 2);) {
        const auto i = static_cast<std::size_t>(at_m / each_m);
        const Point ahead = line[std::min(i + 8, line.size() - 1)] - line[i > 8 ? i - 8 : 0];
        const double length = std::max(std::hypot(ahead.x_m, ahead.y_m), 1e-6);
        const Point left{-ahead.y_m / length, ahead.x_m / length};
        const double wander_m = helm.after(dt);
        Fix fix;
        fix.truly = line[i] + wander_m * left;
        if (bottom.depth_m(fix.truly) < 0.9) {
            fix.truly = line[i];
        }
        fix.time_s = now;
        fix.depth_m = bottom.depth_m(fix.truly);
        const double east_m = east.after(dt);
        const double north_m = north.after(dt);
        const double jitterEast_m = 0.15 * chance.normal();
        const double jitterNorth_m = 0.15 * chance.normal();
        fix.shownAt = fix.truly + Point{east_m + jitterEast_m, north_m + jitterNorth_m};
        const double noise_m = (0.05 + 0.005 * fix.depth_m) * chance.normal();
        fix.shown = shownDepth(fix.depth_m + noise_m, facts);
        fix.speed_m_s = std::max(0.6, facts.boatSpeed_m_s + throttle.after(dt));
        const double course = std::atan2(ahead.x_m, ahead.y_m) * 180.0 / std::numbers::pi;
        fix.course_deg = course < 0.0 ? course + 360.0 : course;
        at_m += fix.speed_m_s * dt;
        now += facts.everySeconds;
        const double share = at_m / (each_m * static_cast<double>(line.size()));
        if (!stops.empty() && share > stops.front()) {
            stops.erase(stops.begin());
            now += chance.whole(420, 1500);
            gap = true;
        }
        if (share > unrecordedFrom && share < unrecordedTo) {
            gap = true;
            continue;
        }
        fix.afterGap = gap && !fixes.empty();
        gap = false;
        fixes.push_back(fix);
    }
    return fixes;
}

} // namespace sample
