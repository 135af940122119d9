// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/expected.h"

#include "sample-survey/survey_plan.h"
#include "sample-survey/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace sample {

namespace {

std::string valued(const std::string& key, const std::string& value, const std::string& tolerance) {
    return "  \"" + key + "\": {\"value\": " + value + ", \"tolerance\": " + tolerance + "}";
}

struct CheckPoint {
    Point at;
    std::string place;
    bool hard = false; ///< in a thin area
};

/// How far the mean depth on a circle about a point lies from the depth at the point: what a gap
/// that wide can hide.
double relief_m(const Bottom& bottom, Point p, double radius_m) {
    constexpr int corners = 12;
    double sum = 0.0;
    for (int i = 0; i < corners; ++i) {
        const double turn = 2.0 * std::numbers::pi * i / corners;
        sum += bottom.depth_m(p + Point{radius_m * std::sin(turn), radius_m * std::cos(turn)});
    }
    return std::abs(sum / corners - bottom.depth_m(p));
}

/// What a fair drawing may miss by: noise and rounding, position error on a slope, and relief
/// hidden between soundings.
double tolerance_m(const Bottom& bottom, Point p, double nearest_m, bool thin) {
    const double depth = bottom.depth_m(p);
    if (thin) {
        return 0.7 + 0.06 * depth + 6.0 * bottom.slope(p) + relief_m(bottom, p, nearest_m);
    }
    return 0.25 + 0.02 * depth + (2.0 + 0.1 * nearest_m) * bottom.slope(p) +
           relief_m(bottom, p, std::max(nearest_m, 5.0));
}

double nearestSounding_m(Point p, const std::vector<SurveyDay>& days) {
    double best = std::numeric_limits<double>::infinity();
    for (const SurveyDay& day : days) {
        for (const Fix& fix : day.fixes) {
            if (fix.fault == Fault::none) {
                best = std::min(best, distance(p, fix.truly));
            }
        }
    }
    return best;
}

} // namespace

std::string expectedWaterText(const Bottom& bottom) {
    constexpr double cell_m = 4.0;
    constexpr std::size_t layers = 23;
    std::array<double, layers> area_m2{};
    std::array<double, layers> volume_m3{};
    double volume = 0.0;
    double deepest_m = 0.0;
    Point deepestAt;
    for (double y = -640.0; y < 860.0; y += cell_m) {
        for (double x = -1320.0; x < 1100.0; x += cell_m) {
            const Point p{x + 0.5 * cell_m, y + 0.5 * cell_m};
            const double depth = bottom.depth_m(p);
            if (depth > deepest_m) {
                deepest_m = depth;
                deepestAt = p;
            }
            volume += depth * cell_m * cell_m;
            for (std::size_t i = 0; i < layers && depth > static_cast<double>(i); ++i) {
                area_m2[i] += cell_m * cell_m;
                volume_m3[i] += (depth - static_cast<double>(i)) * cell_m * cell_m;
            }
        }
    }
    area_m2[0] = bottom.shore().area_m2();
    std::vector<std::string> rows;
    for (std::size_t i = 0; i < layers && area_m2[i] > 0.0; ++i) {
        rows.push_back("{\"depth_m\": " + std::to_string(i) +
                       ", \"area_m2\": " + fixed(area_m2[i], 0) +
                       ", \"volume_below_m3\": " + fixed(volume_m3[i], 0) + "}");
    }
    const double area = bottom.shore().area_m2();
    return "{\n" + valued("area_m2", fixed(area, 0), fixed(0.005 * area, 0)) + ",\n" +
           valued("shoreline_m", fixed(bottom.shore().length_m(), 0),
                  fixed(0.02 * bottom.shore().length_m(), 0)) +
           ",\n" + valued("max_depth_m", fixed(deepest_m, 2), "0.50") + ",\n" +
           valued("volume_m3", fixed(volume, 0), fixed(0.02 * volume, 0)) + ",\n" +
           valued("mean_depth_m", fixed(volume / area, 2), fixed(0.02 * volume / area, 2)) +
           ",\n  \"deepest\": {" + lonLatKeys(deepestAt) +
           "},\n  \"weed_limit_m\": {\"value\": " + fixed(bottom.weedLimit_m(), 1) +
           ", \"tolerance\": 0.5},\n  \"hypsography_true\": " + listText(rows, "  ") + "\n}\n";
}

std::string expectedCheckPointsText(const Bottom& bottom, const std::vector<SurveyDay>& days,
                                    Chance& chance) {
    std::vector<CheckPoint> points;
    for (const NamedPlace& place : bottom.places()) {
        if (bottom.depth_m(place.at) > 1.0) {
            points.push_back({place.at, place.name, false});
        }
    }
    const std::size_t easy = 52;
    while (points.size() < easy) {
        const Point p{chance.between(-1240.0, 1030.0), chance.between(-580.0, 790.0)};
        if (bottom.depth_m(p) > 1.0 && bottom.shore().distance_m(p) > 15.0 &&
            nearestSounding_m(p, days) < 22.0) {
            points.push_back({p, "", false});
        }
    }
    for (const ThinArea& area : thinAreas()) {
        for (int n = 0; n < 4;) {
            const Point p =
                area.middle + Point{chance.between(-110.0, 110.0), chance.between(-110.0, 110.0)};
            if (bottom.depth_m(p) > 1.0 && nearestSounding_m(p, days) > 30.0) {
                points.push_back({p, "", true});
                ++n;
            }
        }
    }
    std::vector<std::string> rows;
    for (const CheckPoint& point : points) {
        const double depth = bottom.depth_m(point.at);
        const double near_m = nearestSounding_m(point.at, days);
        const double tolerance = tolerance_m(bottom, point.at, near_m, point.hard);
        rows.push_back(
            "{" + lonLatKeys(point.at) + ", \"depth_m\": " + fixed(depth, 2) +
            ", \"tolerance_m\": " + fixed(tolerance, 2) + ", \"nearest_sounding_m\": " +
            fixed(near_m, 1) + ", \"thin\": " + (point.hard ? "true" : "false") +
            (point.place.empty() ? std::string() : ", \"place\": \"" + point.place + "\"") + "}");
    }
    return "{\"points\": " + listText(rows, "") + "}\n";
}

std::string expectedStructureText(const Bottom& bottom) {
    std::vector<std::string> rows;
    for (const NamedPlace& place : bottom.places()) {
        rows.push_back("{\"kind\": \"" + place.kind + "\", \"name\": \"" + place.name + "\", " +
                       lonLatKeys(place.at) +
                       ", \"depth_m\": " + fixed(bottom.depth_m(place.at), 1) + ", \"slope\": " +
                       fixed(bottom.slope(place.at), 3) + ", \"note\": \"" + place.note + "\"}");
    }
    std::vector<std::string> thin;
    for (const ThinArea& area : thinAreas()) {
        thin.push_back("{" + lonLatKeys(area.middle) +
                       ", \"radius_m\": " + fixed(area.radius_m, 0) + "}");
    }
    return "{\n  \"places\": " + listText(rows, "  ") +
           ",\n  \"stream_bed\": " + ringText(bottom.streamBed()) +
           ",\n  \"lade\": " + ringText(bottom.lade()) +
           ",\n  \"bar_crest\": " + ringText(bottom.barCrest()) +
           ",\n  \"thinly_sounded\": " + listText(thin, "  ") + "\n}\n";
}

} // namespace sample
