// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/find_stays.h"

#include "core/rates/cut_track.h"

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

/// A time that the boat lay in one place.
struct Halt {
    std::size_t first; ///< Points of the track, both included.
    std::size_t last;
    WaterPoint middle;
};

milliseconds lengthOf(const Halt& halt, const Track& track) {
    return track[halt.last].time - track[halt.first].time;
}

/// Looks for the stretches of still pieces in which the boat lay.
class Lying {
public:
    Lying(std::span<const TrackSpot> spots, const FindStaysSettings& settings, double noise_m)
        : spots_(spots), reach_m_(std::max(settings.swing.inMetres(), swingOfNoise * noise_m)) {}

    /// Whether the boat lay from one spot to another: all but a few within the swing of their
    /// middle, and not on its way, however slow.
    [[nodiscard]] bool isLying(std::size_t first, std::size_t last) const {
        const WaterPoint middle = middleOfSpots(first, last);
        const auto off = std::count_if(
            spots_.begin() + static_cast<std::ptrdiff_t>(first),
            spots_.begin() + static_cast<std::ptrdiff_t>(last) + 1,
            [&](const TrackSpot& spot) { return geo::distance_m(spot.place, middle) > reach_m_; });
        const auto count = static_cast<double>(last - first + 1);
        return static_cast<double>(off) <= strayShare * count && !isUnderWay(first, last);
    }

    [[nodiscard]] WaterPoint middleOfSpots(std::size_t first, std::size_t last) const {
        std::vector<double> xs;
        std::vector<double> ys;
        for (std::size_t i = first; i <= last; ++i) {
            xs.push_back(spots_[i].place.x_m);
            ys.push_back(spots_[i].place.y_m);
        }
        return {median(xs), median(ys)};
    }

private:
    static constexpr double swingOfNoise = 2.5;
    static constexpr double strayShare = 0.1;
    /// Slower than this a boat at anchor swings; faster it drifts, if it keeps its course.
    static constexpr double driftFrom_m_s = 0.025;
    static constexpr double driftFrom_m = 9.0;
    static constexpr double shareOfTheWay = 0.55;

    [[nodiscard]] bool isUnderWay(std::size_t first, std::size_t last) const {
        double t = 0.0;
        double x = 0.0;
        double y = 0.0;
        const auto n = static_cast<double>(last - first + 1);
        const auto timeOf = [&](std::size_t i) {
            return std::chrono::duration<double>(spots_[i].time - spots_[first].time).count();
        };
        for (std::size_t i = first; i <= last; ++i) {
            t += timeOf(i) / n;
            x += spots_[i].place.x_m / n;
            y += spots_[i].place.y_m / n;
        }
        double tt = 0.0;
        double tx = 0.0;
        double ty = 0.0;
        double all = 0.0;
        for (std::size_t i = first; i <= last; ++i) {
            const double dt = timeOf(i) - t;
            const double dx = spots_[i].place.x_m - x;
            const double dy = spots_[i].place.y_m - y;
            tt += dt * dt;
            tx += dt * dx;
            ty += dt * dy;
            all += dx * dx + dy * dy;
        }
        if (!(tt > 0.0) || !(all > 0.0)) {
            return false;
        }
        const double speed_m_s = std::hypot(tx, ty) / tt;
        const double explained = (tx * tx + ty * ty) / tt / all;
        return speed_m_s >= driftFrom_m_s && speed_m_s * timeOf(last) >= driftFrom_m &&
               explained >= shareOfTheWay;
    }

    std::span<const TrackSpot> spots_;
    double reach_m_;
};

/// The spots of a stretch in which the boat lay, both included.
struct Lay {
    std::size_t first;
    std::size_t last;
};

/// Cuts a track and finds the lays in it.
class Lays {
public:
    Lays(const std::vector<TrackSpot>& spots, const FindStaysSettings& settings,
         milliseconds silence)
        : spots_(spots), settings_(settings), silence_(silence), noise_m_(noiseOf_m(spots)),
          pieces_(cutTrack(spots, noise_m_, silence)), lying_(spots, settings, noise_m_) {}

    [[nodiscard]] std::vector<Lay> find() {
        std::vector<Lay> lays;
        for (std::size_t from = 0; from < pieces_.size();) {
            std::size_t to = from;
            while (to < pieces_.size() && pieces_[to].speed <= settings_.stillBelow &&
                   (to == from || follows(pieces_[to].first))) {
                ++to;
            }
            takeLongest(from, to, lays);
            from = std::max(to, from + 1);
        }
        for (std::size_t i = 0; i < lays.size(); ++i) {
            widen(lays[i], i == 0 ? 0 : lays[i - 1].last + 1,
                  i + 1 == lays.size() ? spots_.size() : lays[i + 1].first);
        }
        return lays;
    }
    [[nodiscard]] WaterPoint middleOf(const Lay& lay) const {
        return lying_.middleOfSpots(lay.first, lay.last);
    }

private:
    [[nodiscard]] bool follows(std::size_t spot) const {
        return spots_[spot].time - spots_[spot - 1].time <= silence_;
    }
    [[nodiscard]] milliseconds lengthOf(const TrackPiece& piece) const {
        return spots_[piece.last].time - spots_[piece.first].time;
    }

    /// Two long lays farther apart than the swing are two stays, however still the boat was
    /// between.
    [[nodiscard]] bool isOnePlace(std::size_t from, std::size_t to) const {
        const TrackPiece* last = nullptr;
        for (std::size_t i = from; i < to; ++i) {
            if (lengthOf(pieces_[i]) < settings_.least) {
                continue;
            }
            const TrackPiece& piece = pieces_[i];
            if (last != nullptr && geo::distance_m(lying_.middleOfSpots(last->first, last->last),
                                                   lying_.middleOfSpots(piece.first, piece.last)) >
                                       settings_.swing.inMetres()) {
                return false;
            }
            last = &piece;
        }
        return true;
    }

    /// Of the pieces from..to the longest stretch in which the boat lay, and of what is left on
    /// both sides again.
    void takeLongest(std::size_t from, std::size_t to, std::vector<Lay>& lays) const {
        for (std::size_t length = to - from; length > 0; --length) {
            for (std::size_t first = from; first + length <= to; ++first) {
                const std::size_t end = first + length;
                const Lay lay{pieces_[first].first, pieces_[end - 1].last};
                if (lying_.isLying(lay.first, lay.last) && isOnePlace(first, end)) {
                    takeLongest(from, first, lays);
                    lays.push_back(lay);
                    takeLongest(end, to, lays);
                    return;
                }
            }
        }
    }

    /// Takes in what swings on at both ends, as far out as the boat swung before, but no drift.
    void widen(Lay& lay, std::size_t least, std::size_t end) const {
        const WaterPoint middle = middleOf(lay);
        std::vector<double> off_m;
        for (std::size_t i = lay.first; i <= lay.last; ++i) {
            off_m.push_back(geo::distance_m(spots_[i].place, middle));
        }
        std::ranges::sort(off_m);
        const double reach_m =
            std::min(settings_.swing.inMetres(), off_m[off_m.size() * 9 / 10] + noise_m_);
        const auto swingsOn = [&](std::size_t spot) {
            const auto piece = std::ranges::upper_bound(pieces_, spot, {}, &TrackPiece::first) - 1;
            const bool isDrift =
                piece->speed <= settings_.stillBelow && lengthOf(*piece) > settings_.least / 4;
            return !isDrift && geo::distance_m(spots_[spot].place, middle) <= reach_m;
        };
        // One spot beyond the reach is an error where the next ones are back again.
        constexpr std::size_t lookAhead = 4;
        for (std::size_t ahead = 1;
             ahead <= lookAhead && lay.first >= least + ahead && follows(lay.first - ahead + 1);
             ++ahead) {
            if (swingsOn(lay.first - ahead)) {
                lay.first -= ahead;
                ahead = 0;
            }
        }
        for (std::size_t ahead = 1;
             ahead <= lookAhead && lay.last + ahead < end && follows(lay.last + ahead); ++ahead) {
            if (swingsOn(lay.last + ahead)) {
                lay.last += ahead;
                ahead = 0;
            }
        }
    }

    const std::vector<TrackSpot>& spots_;
    const FindStaysSettings& settings_;
    milliseconds silence_;
    double noise_m_;
    std::vector<TrackPiece> pieces_;
    Lying lying_;
};

std::vector<Halt> haltsIn(const Track& track, const FindStaysSettings& settings) {
    constexpr int spotsOfWindow = 3;
    // Nobody knows where the boat was in a longer silence.
    const milliseconds silence = std::max(settings.window, std::chrono::seconds(settings.bridged));
    const auto spots = spotsOf(track, milliseconds(settings.window) / spotsOfWindow);
    Lays lays(spots, settings, silence);
    std::vector<Halt> halts;
    for (const Lay& lay : lays.find()) {
        halts.push_back({spots[lay.first].first, spots[lay.last].last, lays.middleOf(lay)});
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
    const std::vector<Halt> halts = haltsIn(track, settings);
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    std::vector<TrackStay> stays;
    for (const Halt& halt : bridged(halts, track, settings)) {
        if (lengthOf(halt, track) >= settings.least) {
            stays.push_back(stayOf(halt, track));
        }
    }
    return stays;
}

} // namespace rates
