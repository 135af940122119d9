// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/find_stays.h"

#include <algorithm>
#include <cmath>

namespace rates {

namespace {

using geo::WaterPoint;
using std::chrono::milliseconds;

constexpr milliseconds closest = std::chrono::seconds(2); // denser fixes add nothing but time

double median(std::vector<double>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) {
        return *middle;
    }
    return 0.5 * (*middle + *std::max_element(values.begin(), middle));
}

/// Middle of the points first..last, by each coordinate's median: a single wild fix does not move
/// it.
WaterPoint middleOf(const Track& track, std::size_t first, std::size_t last) {
    std::vector<double> xs;
    std::vector<double> ys;
    for (std::size_t i = first; i <= last; ++i) {
        xs.push_back(track[i].place.x_m);
        ys.push_back(track[i].place.y_m);
    }
    return {median(xs), median(ys)};
}

/// By time, one fix in two seconds at most, only finite ones.
Track inOrder(std::span<const TrackPoint> points) {
    Track sorted(points.begin(), points.end());
    std::erase_if(sorted, [](const TrackPoint& p) {
        return !std::isfinite(p.place.x_m) || !std::isfinite(p.place.y_m);
    });
    std::ranges::stable_sort(sorted, {}, &TrackPoint::time);
    Track track;
    for (const TrackPoint& p : sorted) {
        if (track.empty() || p.time - track.back().time >= closest) {
            track.push_back(p);
        }
    }
    return track;
}

milliseconds meanTime(const Track& track, std::size_t first, std::size_t last) {
    milliseconds sum{0};
    for (std::size_t i = first; i <= last; ++i) {
        sum += track[i].time - track[first].time;
    }
    return track[first].time.time_since_epoch() + sum / static_cast<std::int64_t>(last - first + 1);
}

/// A point with the noise taken out, and whether the boat lay still there.
struct Settled {
    WaterPoint place;
    bool still = false;
};

std::vector<Settled> settledPoints(const Track& track, const FindStaysSettings& settings) {
    std::vector<Settled> out;
    std::size_t first = 0;
    std::size_t last = 0;
    for (std::size_t i = 0; i < track.size(); ++i) {
        while (track[i].time - track[first].time > settings.window) {
            ++first;
        }
        while (last + 1 < track.size() && track[last + 1].time - track[i].time <= settings.window) {
            ++last;
        }
        // Where fixes are sparse, the neighbours stand in for the window.
        const std::size_t from = std::min(first, i == 0 ? i : i - 1);
        const std::size_t to = std::min(track.size() - 1, std::max({last, i, i + 1}));
        const double gone_m = geo::distance_m(middleOf(track, from, i), middleOf(track, i, to));
        const double time_s =
            std::chrono::duration<double>(meanTime(track, i, to) - meanTime(track, from, i))
                .count();
        out.push_back({middleOf(track, from, to),
                       gone_m <= settings.stillBelow.inMetresPerSecond() * time_s});
        last = std::max(last, i);
    }
    return out;
}

/// A run of still points round one middle.
struct Halt {
    std::size_t first;
    std::size_t last;
    WaterPoint middle;
};

milliseconds lengthOf(const Halt& halt, const Track& track) {
    return track[halt.last].time - track[halt.first].time;
}

std::vector<Halt> haltsIn(const std::vector<Settled>& points, const Track& track,
                          const FindStaysSettings& settings) {
    const double swing_m = settings.swing.inMetres();
    // Nobody knows where the boat was in a longer silence.
    const milliseconds silence = std::max(settings.window, std::chrono::seconds(settings.bridged));
    std::vector<Halt> halts;
    bool isOpen = false;
    double count = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!points[i].still) {
            isOpen = false;
            continue;
        }
        const bool isSilent = i > 0 && track[i].time - track[i - 1].time > silence;
        if (!isOpen || isSilent ||
            geo::distance_m(points[i].place, halts.back().middle) > swing_m) {
            halts.push_back({i, i, points[i].place});
            isOpen = true;
            count = 1.0;
            continue;
        }
        Halt& halt = halts.back();
        count += 1.0;
        halt.last = i;
        halt.middle.x_m += (points[i].place.x_m - halt.middle.x_m) / count;
        halt.middle.y_m += (points[i].place.y_m - halt.middle.y_m) / count;
    }
    return halts;
}

/// The last of `halts` that is the same stay as `next`: near enough in place and time, and no other
/// stay in between. halts.size() where there is none.
std::size_t sameStay(const std::vector<Halt>& halts, const Halt& next, const Track& track,
                     const FindStaysSettings& settings) {
    for (std::size_t k = halts.size(); k > 0; --k) {
        const Halt& before = halts[k - 1];
        if (track[next.first].time - track[before.last].time > settings.bridged) {
            break;
        }
        if (geo::distance_m(before.middle, next.middle) <= settings.swing.inMetres()) {
            return k - 1;
        }
        if (lengthOf(before, track) >= settings.least) {
            break;
        }
    }
    return halts.size();
}

/// Joins halts of one stay; short halts between them are swallowed.
std::vector<Halt> bridged(const std::vector<Halt>& halts, const Track& track,
                          const FindStaysSettings& settings) {
    std::vector<Halt> joined;
    for (const Halt& halt : halts) {
        const std::size_t same = sameStay(joined, halt, track, settings);
        if (same == joined.size()) {
            joined.push_back(halt);
            continue;
        }
        joined.resize(same + 1, halt);
        Halt& whole = joined.back();
        const auto before = static_cast<double>(whole.last - whole.first + 1);
        const auto here = static_cast<double>(halt.last - halt.first + 1);
        const double share = here / (before + here);
        whole.middle.x_m += share * (halt.middle.x_m - whole.middle.x_m);
        whole.middle.y_m += share * (halt.middle.y_m - whole.middle.y_m);
        whole.last = halt.last;
    }
    return joined;
}

TrackStay stayOf(const Halt& halt, const Track& track) {
    const WaterPoint place = middleOf(track, halt.first, halt.last);
    std::vector<double> apart_m;
    for (std::size_t i = halt.first; i <= halt.last; ++i) {
        apart_m.push_back(geo::distance_m(track[i].place, place));
    }
    return {place, track[halt.first].time, track[halt.last].time,
            units::Length::metres(median(apart_m))};
}

base::Result<void> checkSettings(const FindStaysSettings& settings) {
    const double swing_m = settings.swing.inMetres();
    const double still_m_s = settings.stillBelow.inMetresPerSecond();
    using std::chrono::minutes;
    using std::chrono::seconds;
    const bool isFine = swing_m >= 5.0 && swing_m <= 100.0 && still_m_s >= 0.05 &&
                        still_m_s <= 0.5 && settings.window >= seconds(10) &&
                        settings.window <= seconds(300) && settings.least >= minutes(1) &&
                        settings.least <= minutes(120) && settings.bridged >= minutes(0) &&
                        settings.bridged <= minutes(120);
    if (!isFine) {
        return base::fail(base::ErrorKind::wrongUse,
                          "a setting for finding stays is out of its range", "",
                          "set it between the limits that its setting names");
    }
    return {};
}

} // namespace

base::Result<std::vector<TrackStay>> findStays(std::span<const TrackPoint> points,
                                               const FindStaysSettings& settings,
                                               base::Progress& progress) {
    if (const auto fine = checkSettings(settings); !fine) {
        return std::unexpected(fine.error());
    }
    const Track track = inOrder(points);
    if (track.size() < 2) {
        return base::fail(base::ErrorKind::unusableInput, "the track has fewer than two positions",
                          "", "give a track with positions and times of the day's fishing");
    }
    progress.begin("finding stays");
    const std::vector<Settled> settled = settledPoints(track, settings);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    std::vector<TrackStay> stays;
    for (const Halt& halt : bridged(haltsIn(settled, track, settings), track, settings)) {
        if (lengthOf(halt, track) >= settings.least) {
            stays.push_back(stayOf(halt, track));
        }
    }
    return stays;
}

} // namespace rates
