// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/expected.h"

#include "sample-survey/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

namespace sample {

namespace {

constexpr double bucket_m = 25.0;

/// A short stretch of one day's shown track between two clean fixes, with reduced depths at its
/// ends.
struct Stretch {
    std::size_t day = 0;
    std::int64_t time_s = 0;
    Point from;
    Point to;
    double fromDepth_m = 0.0;
    double toDepth_m = 0.0;
};

std::vector<Stretch> stretchesOf(const std::vector<SurveyDay>& days) {
    std::vector<Stretch> out;
    for (std::size_t d = 0; d < days.size(); ++d) {
        const DayFacts& facts = days[d].facts;
        for (std::size_t i = 1; i < days[d].fixes.size(); ++i) {
            const Fix& a = days[d].fixes[i - 1];
            const Fix& b = days[d].fixes[i];
            if (a.fault == Fault::none && b.fault == Fault::none && !b.afterGap) {
                out.push_back({d, b.time_s, a.shownAt, b.shownAt, reducedDepth_m(*a.shown, facts),
                               reducedDepth_m(*b.shown, facts)});
            }
        }
    }
    return out;
}

double cross(Point a, Point b) {
    return a.x_m * b.y_m - a.y_m * b.x_m;
}

/// Depth of the first minus depth of the second where two stretches cross; nothing if they do not.
std::optional<double> difference_m(const Stretch& one, const Stretch& other) {
    const Point r = one.to - one.from;
    const Point s = other.to - other.from;
    const double turn = cross(r, s);
    if (std::abs(turn) < 1e-9) {
        return std::nullopt;
    }
    const double t = cross(other.from - one.from, s) / turn;
    const double u = cross(other.from - one.from, r) / turn;
    if (t < 0.0 || t >= 1.0 || u < 0.0 || u >= 1.0) {
        return std::nullopt;
    }
    return one.fromDepth_m + t * (one.toDepth_m - one.fromDepth_m) - other.fromDepth_m -
           u * (other.toDepth_m - other.fromDepth_m);
}

using Bucket = std::pair<int, int>;

Bucket bucketOf(Point p) {
    return {static_cast<int>(std::floor(p.x_m / bucket_m)),
            static_cast<int>(std::floor(p.y_m / bucket_m))};
}

std::string rowText(const std::string& from, const std::string& to,
                    std::vector<double> differences) {
    double sum = 0.0;
    double squares = 0.0;
    for (double& difference : differences) {
        sum += difference;
        squares += difference * difference;
        difference = std::abs(difference);
    }
    std::sort(differences.begin(), differences.end());
    const auto count = static_cast<double>(differences.size());
    const double p95 = differences[static_cast<std::size_t>(0.95 * (count - 1.0))];
    return "{\"days\": [\"" + from + "\", \"" + to +
           "\"], \"count\": " + std::to_string(differences.size()) +
           ", \"mean_difference_m\": " + fixed(sum / count, 3) +
           ", \"rms_m\": " + fixed(std::sqrt(squares / count), 3) +
           ", \"p95_m\": " + fixed(p95, 3) + "}";
}

} // namespace

std::string expectedCrossingsText(const std::vector<SurveyDay>& days) {
    const std::vector<Stretch> stretches = stretchesOf(days);
    std::map<Bucket, std::vector<std::size_t>> buckets;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        buckets[bucketOf(stretches[i].from)].push_back(i);
    }
    std::map<std::pair<std::size_t, std::size_t>, std::vector<double>> differences;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const Bucket home = bucketOf(stretches[i].from);
        for (int dx = -1; dx <= 1; ++dx) {
            for (int dy = -1; dy <= 1; ++dy) {
                const auto found = buckets.find({home.first + dx, home.second + dy});
                if (found == buckets.end()) {
                    continue;
                }
                for (const std::size_t j : found->second) {
                    const Stretch& one = stretches[i];
                    const Stretch& other = stretches[j];
                    const bool apart = one.day != other.day || other.time_s - one.time_s > 60;
                    if (j <= i || !apart) {
                        continue;
                    }
                    if (const auto difference = difference_m(one, other)) {
                        differences[{one.day, other.day}].push_back(*difference);
                    }
                }
            }
        }
    }
    std::vector<std::string> rows;
    for (const auto& [pair, all] : differences) {
        rows.push_back(rowText(days[pair.first].facts.date, days[pair.second].facts.date, all));
    }
    return "{\n  \"at_true_levels\": " + listText(rows, "  ") +
           ",\n  \"count_tolerance_share\": 0.15,\n  \"rms_tolerance_m\": 0.05,\n"
           "  \"what\": \"clean soundings only, stretches between neighbouring fixes, at least a "
           "minute apart; first day minus second\"\n}\n";
}

} // namespace sample
