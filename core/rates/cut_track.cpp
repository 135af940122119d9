// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/cut_track.h"

#include <algorithm>
#include <cmath>

namespace rates {

namespace {

using geo::WaterPoint;
using std::chrono::milliseconds;

/// Squares of the noise that a cut has to save: two coordinates, each with a place and a speed, and
/// the moment of the cut, at about three each.
constexpr double priceOfAPiece = 15.0;
constexpr double leastNoise_m = 3.0;
constexpr double mostNoise_m = 15.0;
/// Neighbouring spots err together, so that their differences show less than there is.
constexpr double sharedNoise = 1.5;
constexpr std::chrono::hours longestPiece{4};

double secondsOf(milliseconds time) {
    return std::chrono::duration<double>(time).count();
}

double median(std::vector<double>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return values.size() % 2 == 1 ? *middle
                                  : 0.5 * (*middle + *std::max_element(values.begin(), middle));
}

TrackSpot spotOf(std::span<const TrackPoint> track, std::size_t first, std::size_t last) {
    std::vector<double> xs;
    std::vector<double> ys;
    milliseconds sum{0};
    for (std::size_t i = first; i <= last; ++i) {
        xs.push_back(track[i].place.x_m);
        ys.push_back(track[i].place.y_m);
        sum += track[i].time - track[first].time;
    }
    const auto mean = sum / static_cast<std::int64_t>(last - first + 1);
    return {{median(xs), median(ys)}, track[first].time + mean, first, last};
}

/// Sums over the spots before each, about the first spot, from which any stretch's least squares
/// follow.
class Sums {
public:
    explicit Sums(std::span<const TrackSpot> spots) : sums_(spots.size() + 1) {
        for (std::size_t i = 0; i < spots.size(); ++i) {
            const double t = secondsOf(spots[i].time - spots[0].time);
            const double x = spots[i].place.x_m - spots[0].place.x_m;
            const double y = spots[i].place.y_m - spots[0].place.y_m;
            const Sum& before = sums_[i];
            sums_[i + 1] = {before.t + t,     before.tt + t * t,         before.x + x,
                            before.y + y,     before.xx + x * x + y * y, before.tx + t * x,
                            before.ty + t * y};
        }
    }

    struct Fit {
        double squares = 0.0; ///< Left about the straight way.
        double speed_m_s = 0.0;
    };
    [[nodiscard]] Fit fit(std::size_t first, std::size_t last) const {
        const Sum& a = sums_[first];
        const Sum& b = sums_[last + 1];
        const auto n = static_cast<double>(last - first + 1);
        const double t = b.t - a.t;
        const double x = b.x - a.x;
        const double y = b.y - a.y;
        const double tt = b.tt - a.tt - t * t / n;
        const double tx = b.tx - a.tx - t * x / n;
        const double ty = b.ty - a.ty - t * y / n;
        const double still = b.xx - a.xx - (x * x + y * y) / n;
        if (!(tt > 0.0)) {
            return {std::max(0.0, still), 0.0};
        }
        return {std::max(0.0, still - (tx * tx + ty * ty) / tt), std::hypot(tx, ty) / tt};
    }

private:
    struct Sum {
        double t = 0.0;
        double tt = 0.0;
        double x = 0.0;
        double y = 0.0;
        double xx = 0.0; ///< Both coordinates.
        double tx = 0.0;
        double ty = 0.0;
    };
    std::vector<Sum> sums_;
};

/// The best pieces of one stretch without a long silence.
void cutStretch(std::span<const TrackSpot> spots, std::size_t offset, double noise_m,
                std::vector<TrackPiece>& out) {
    const Sums sums(spots);
    const double scale = 1.0 / (noise_m * noise_m);
    std::vector<double> best(spots.size() + 1, 0.0);
    std::vector<std::size_t> cut(spots.size() + 1, 0);
    std::vector<std::size_t> open; // beginnings that a later end may still be best with
    for (std::size_t end = 1; end <= spots.size(); ++end) {
        open.push_back(end - 1);
        best[end] = HUGE_VAL;
        std::vector<double> costs;
        for (const std::size_t begin : open) {
            const double cost = best[begin] + scale * sums.fit(begin, end - 1).squares;
            costs.push_back(cost);
            if (cost + priceOfAPiece < best[end]) {
                best[end] = cost + priceOfAPiece;
                cut[end] = begin;
            }
        }
        // What is dearer already without its price never becomes best (PELT, Killick et al. 2012).
        std::size_t kept = 0;
        for (std::size_t k = 0; k < open.size(); ++k) {
            const bool isLong = spots[end - 1].time - spots[open[k]].time > longestPiece;
            if (costs[k] <= best[end] && !isLong) {
                open[kept++] = open[k];
            }
        }
        open.resize(kept);
    }
    std::vector<TrackPiece> pieces;
    for (std::size_t end = spots.size(); end > 0; end = cut[end]) {
        const auto speed = units::Speed::metresPerSecond(sums.fit(cut[end], end - 1).speed_m_s);
        pieces.push_back({offset + cut[end], offset + end - 1, speed});
    }
    out.insert(out.end(), pieces.rbegin(), pieces.rend());
}

} // namespace

std::vector<TrackSpot> spotsOf(std::span<const TrackPoint> track, milliseconds span) {
    std::vector<TrackSpot> spots;
    for (std::size_t first = 0; first < track.size();) {
        std::size_t last = first;
        while (last + 1 < track.size() && track[last + 1].time - track[first].time < span) {
            ++last;
        }
        spots.push_back(spotOf(track, first, last));
        first = last + 1;
    }
    return spots;
}

double noiseOf_m(std::span<const TrackSpot> spots) {
    std::vector<double> off_m;
    for (std::size_t i = 1; i + 1 < spots.size(); ++i) {
        const WaterPoint& a = spots[i - 1].place;
        const WaterPoint& b = spots[i].place;
        const WaterPoint& c = spots[i + 1].place;
        off_m.push_back(std::abs(a.x_m - 2.0 * b.x_m + c.x_m));
        off_m.push_back(std::abs(a.y_m - 2.0 * b.y_m + c.y_m));
    }
    if (off_m.empty()) {
        return leastNoise_m;
    }
    constexpr double ofNormal = 0.6745; // the median of |z|
    const double one = median(off_m) / (ofNormal * std::sqrt(6.0));
    return std::clamp(sharedNoise * one, leastNoise_m, mostNoise_m);
}

std::vector<TrackPiece> cutTrack(std::span<const TrackSpot> spots, double noise_m,
                                 milliseconds silence) {
    std::vector<TrackPiece> pieces;
    for (std::size_t first = 0; first < spots.size();) {
        std::size_t last = first;
        while (last + 1 < spots.size() && spots[last + 1].time - spots[last].time <= silence) {
            ++last;
        }
        cutStretch(spots.subspan(first, last - first + 1), first, noise_m, pieces);
        first = last + 1;
    }
    return pieces;
}

} // namespace rates
