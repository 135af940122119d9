// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/track_pulls.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace surface::solver {

namespace {

/// Two soundings at one place are not quite one: the process could not tell them apart.
constexpr double mostAlike = 0.9999;

/// How alike the errors of two soundings are, 0 to 1.
double likenessOf(const Sample& a, const Sample& b, double reach_m) {
    return std::min(mostAlike, std::exp(-geo::distance_m(a.point, b.point) / reach_m));
}

} // namespace

void TrackPulls::set(const std::vector<Sample>& samples, std::vector<TrackPull> pulls,
                     const PositionDrift& drift) {
    samples_ = &samples;
    pulls_ = std::move(pulls);
    values_.resize(pulls_.size());
    pivots_.clear();
    if (drift.deviation_m > 0.0) {
        factorize(drift);
    }
}

void TrackPulls::clear() {
    samples_ = nullptr;
    pulls_.clear();
    pivots_.clear();
}

/// With r the likeness to the neighbour, C^-1 has on each axis 1 / (1 - r^2) from the one before,
/// r^2 / (1 - r^2) from the one after and -r / (1 - r^2) between, over the variance.
void TrackPulls::factorize(const PositionDrift& drift) {
    const std::size_t n = pulls_.size();
    const double precision = 1.0 / (drift.deviation_m * drift.deviation_m);
    pivots_.resize(n);
    shifts_.resize(n);
    double likeness = 0.0; // to the one before
    for (std::size_t i = 0; i < n; ++i) {
        const double next =
            i + 1 < n ? likenessOf((*samples_)[i], (*samples_)[i + 1], drift.reach_m) : 0.0;
        const double diagonal =
            precision * (1.0 / (1.0 - likeness * likeness) + next * next / (1.0 - next * next));
        const TrackPull& pull = pulls_[i];
        Pivot& pivot = pivots_[i];
        pivot.off = -precision * likeness / (1.0 - likeness * likeness);
        double xx = diagonal + pull.weight * pull.east * pull.east;
        double xy = pull.weight * pull.east * pull.north;
        double yy = diagonal + pull.weight * pull.north * pull.north;
        if (i > 0) {
            const Pivot& before = pivots_[i - 1];
            const double square = pivot.off * pivot.off;
            xx -= square * before.xx;
            xy -= square * before.xy;
            yy -= square * before.yy;
        }
        const double determinant = xx * yy - xy * xy;
        pivot.xx = yy / determinant;
        pivot.xy = -xy / determinant;
        pivot.yy = xx / determinant;
        likeness = next;
    }
}

void TrackPulls::weigh(std::vector<double>& values) {
    const std::size_t n = pulls_.size();
    for (std::size_t i = 0; i < n; ++i) {
        values[i] *= pulls_[i].weight;
    }
    if (pivots_.empty()) {
        return;
    }
    for (std::size_t i = 0; i < n; ++i) {
        Shift& shift = shifts_[i];
        shift = {values[i] * pulls_[i].east, values[i] * pulls_[i].north};
        if (i > 0) {
            const Pivot& before = pivots_[i - 1];
            const Shift& last = shifts_[i - 1];
            const double off = pivots_[i].off;
            shift.east -= off * (before.xx * last.east + before.xy * last.north);
            shift.north -= off * (before.xy * last.east + before.yy * last.north);
        }
    }
    Shift next;
    double off = 0.0; // to the next
    for (std::size_t i = n; i-- > 0;) {
        const Pivot& pivot = pivots_[i];
        const double east = shifts_[i].east - off * next.east;
        const double north = shifts_[i].north - off * next.north;
        next = {pivot.xx * east + pivot.xy * north, pivot.xy * east + pivot.yy * north};
        off = pivot.off;
        const TrackPull& pull = pulls_[i];
        values[i] -= pull.weight * (pull.east * next.east + pull.north * next.north);
    }
}

void TrackPulls::spread(const std::vector<double>& values, Field& y) const {
    for (std::size_t i = 0; i < pulls_.size(); ++i) {
        const Footprint& at = (*samples_)[i].at;
        for (std::size_t k = 0; k < 4; ++k) {
            if (at.weights[k] != 0.0) {
                y[at.places[k]] += at.weights[k] * values[i];
            }
        }
    }
}

void TrackPulls::addTimes(const Field& x, Field& y) {
    for (std::size_t i = 0; i < pulls_.size(); ++i) {
        values_[i] = (*samples_)[i].at.of(x);
    }
    weigh(values_);
    spread(values_, y);
}

void TrackPulls::addRight(std::vector<double> values, Field& right) {
    weigh(values);
    spread(values, right);
}

} // namespace surface::solver
