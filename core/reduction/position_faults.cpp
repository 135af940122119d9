// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/position_faults.h"

#include "core/reduction/robust.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace reduction {

namespace {

using soundings::Verdict;

/// A stretch of track without a step that is too long: positions in the list of kept soundings.
struct Stretch {
    std::size_t first = 0;
    std::size_t last = 0;
    [[nodiscard]] std::size_t size() const { return last - first + 1; }
};

/// Judges whether the boat can have come from one sounding to another.
class Reach {
public:
    Reach(const soundings::SurveyDay& day, const ReducedDay& reduced,
          const AlongTrackSettings& settings, const std::vector<std::size_t>& kept)
        : day_(&day), reduced_(&reduced), settings_(&settings) {
        std::vector<double> steps_m;
        std::vector<double> speeds_m_s;
        for (std::size_t k = 1; k < kept.size(); ++k) {
            steps_m.push_back(distance_m(kept[k - 1], kept[k]));
            if (const auto time_s = between_s(kept[k - 1], kept[k]); time_s && *time_s > 0.0) {
                speeds_m_s.push_back(steps_m.back() / *time_s);
            }
        }
        if (!steps_m.empty()) {
            usualStep_m_ = medianOf(std::move(steps_m));
        }
        if (!speeds_m_s.empty()) {
            usualSpeed_m_s_ = medianOf(std::move(speeds_m_s));
        } else if (kept.size() > 2) {
            usualTurn_ = turnOf(kept);
        }
    }

    /// One step of the track, from a sounding to the next.
    [[nodiscard]] bool isStepPlausible(std::size_t a, std::size_t b) const {
        const double far_m = distance_m(a, b);
        if (const auto time_s = between_s(a, b)) {
            return far_m <= settings_->leastJump_m ||
                   far_m <= settings_->fastest_m_s * std::fmax(*time_s, 1.0);
        }
        return far_m <= std::fmax(settings_->leastJump_m, 10.0 * usualStep_m_);
    }

    /// The boat can have come from `a` to `b`, with `skipped` soundings between them, at up to
    /// thrice its usual speed.
    [[nodiscard]] bool canFollow(std::size_t a, std::size_t b, std::size_t skipped) const {
        const double far_m = distance_m(a, b);
        constexpr double hurry = 3.0;
        if (const auto time_s = between_s(a, b)) {
            const double speed_m_s =
                std::clamp(hurry * usualSpeed_m_s_, 1.0, settings_->fastest_m_s);
            return far_m <= settings_->leastJump_m + speed_m_s * *time_s;
        }
        constexpr double roundabout = 1.5;
        return far_m <= settings_->leastJump_m +
                            roundabout * usualStep_m_ * static_cast<double>(skipped + 1);
    }

    /// From `a` away to `b`, on as before to `c`, and then back to `d`, as a receiver errs: a piece
    /// of the track that was moved aside. What goes its own way from gap to gap is a log with gaps.
    /// Only times tell it otherwise.
    [[nodiscard]] bool isMovedAside(std::size_t a, std::size_t b, std::size_t c, std::size_t d,
                                    std::size_t count) const {
        if (between_s(a, d)) {
            return true;
        }
        const geo::WaterPoint& from = reduced_->points[a];
        const geo::WaterPoint& to = reduced_->points[b];
        const geo::WaterPoint& away = reduced_->points[c];
        const geo::WaterPoint& back = reduced_->points[d];
        const double along = (to.x_m - from.x_m) * (back.x_m - away.x_m) +
                             (to.y_m - from.y_m) * (back.y_m - away.y_m);
        constexpr double opposed = -0.7; // Within 45 degrees of straight back.
        const double share = static_cast<double>(count - 1) / static_cast<double>(count + 1);
        const double astray_m = std::hypot(away.x_m - to.x_m - share * (back.x_m - from.x_m),
                                           away.y_m - to.y_m - share * (back.y_m - from.y_m));
        const double allowed_m =
            0.5 * settings_->leastJump_m + 0.3 * usualStep_m_ * static_cast<double>(count);
        return along < opposed * distance_m(a, b) * distance_m(c, d) && astray_m < allowed_m;
    }

    /// False for soundings without times that lie as they come: far from one another, or now this
    /// way and now that. A boat goes on much as she went.
    [[nodiscard]] bool isTrack() const {
        constexpr double farthest_m = 60.0;
        constexpr double steady = 0.5; // Within 60 degrees of straight on, most of the time.
        return usualSpeed_m_s_ > 0.0 || (usualStep_m_ <= farthest_m && usualTurn_ >= steady);
    }

private:
    /// Cosine of the usual turn from one step to the next: 1 straight on, -1 straight back.
    [[nodiscard]] double turnOf(const std::vector<std::size_t>& kept) const {
        std::vector<double> turns;
        for (std::size_t k = 2; k < kept.size(); ++k) {
            const geo::WaterPoint& a = reduced_->points[kept[k - 2]];
            const geo::WaterPoint& b = reduced_->points[kept[k - 1]];
            const geo::WaterPoint& c = reduced_->points[kept[k]];
            const double both_m2 = geo::distance_m(a, b) * geo::distance_m(b, c);
            if (both_m2 > 0.0) {
                turns.push_back(
                    ((b.x_m - a.x_m) * (c.x_m - b.x_m) + (b.y_m - a.y_m) * (c.y_m - b.y_m)) /
                    both_m2);
            }
        }
        return turns.empty() ? 1.0 : medianOf(std::move(turns));
    }
    [[nodiscard]] double distance_m(std::size_t a, std::size_t b) const {
        return geo::distance_m(reduced_->points[a], reduced_->points[b]);
    }
    [[nodiscard]] std::optional<double> between_s(std::size_t a, std::size_t b) const {
        const auto& from = day_->soundings[a].time;
        const auto& to = day_->soundings[b].time;
        if (!from || !to || *to < *from) {
            return std::nullopt;
        }
        return std::chrono::duration<double>(*to - *from).count();
    }

    const soundings::SurveyDay* day_;
    const ReducedDay* reduced_;
    const AlongTrackSettings* settings_;
    double usualStep_m_ = 0.0;
    double usualSpeed_m_s_ = 0.0;
    double usualTurn_ = 1.0; ///< Of soundings without times.
};

std::vector<std::size_t> keptPositions(const ReducedDay& reduced) {
    std::vector<std::size_t> kept;
    for (std::size_t i = 0; i < reduced.verdicts.size(); ++i) {
        if (reduced.verdicts[i] == Verdict::kept) {
            kept.push_back(i);
        }
    }
    return kept;
}

/// For each stretch whether the boat has been there: the track through them that costs least. A
/// sounding left out costs 1, a way that cannot have been sailed (the log has a gap) as much as
/// `gapCost` soundings. So a short excursion that comes back is left out, while a long stretch
/// stays wherever it begins.
std::vector<bool> likeliestTrack(const std::vector<Stretch>& stretches,
                                 const std::vector<std::size_t>& kept, const Reach& reach) {
    constexpr std::size_t gapCost = 15;
    constexpr std::size_t lookBack = 50;
    const std::size_t n = stretches.size();
    std::vector<std::size_t> cost(n);
    std::vector<std::size_t> before(n);
    for (std::size_t i = 0; i < n; ++i) {
        cost[i] = stretches[i].first; // All before it left out.
        before[i] = i;
        for (std::size_t j = i > lookBack ? i - lookBack : 0; j < i; ++j) {
            const std::size_t skipped = stretches[i].first - stretches[j].last - 1;
            const bool isWay =
                reach.canFollow(kept[stretches[j].last], kept[stretches[i].first], skipped);
            const std::size_t through = cost[j] + skipped + (isWay ? 0 : gapCost);
            if (through < cost[i]) {
                cost[i] = through;
                before[i] = j;
            }
        }
    }
    std::size_t at = n - 1;
    for (std::size_t i = 0; i < n; ++i) {
        const auto withRest = [&](std::size_t k) {
            return cost[k] + kept.size() - 1 - stretches[k].last;
        };
        at = withRest(i) < withRest(at) ? i : at;
    }
    std::vector<bool> isOnTrack(n, false);
    isOnTrack[at] = true;
    while (before[at] != at) {
        at = before[at];
        isOnTrack[at] = true;
    }
    return isOnTrack;
}

/// Takes back stretches that are no piece of the track moved aside.
void keepWhatGoesOn(const std::vector<Stretch>& stretches, const std::vector<std::size_t>& kept,
                    const Reach& reach, std::vector<bool>& isOnTrack) {
    const std::vector<bool> found = isOnTrack;
    for (std::size_t s = 1; s + 1 < stretches.size(); ++s) {
        std::size_t before = s - 1;
        while (before > 0 && !found[before]) {
            --before;
        }
        std::size_t after = s + 1;
        while (after + 1 < stretches.size() && !found[after]) {
            ++after;
        }
        isOnTrack[s] =
            found[s] || (found[before] && found[after] &&
                         !reach.isMovedAside(kept[stretches[before].last], kept[stretches[s].first],
                                             kept[stretches[s].last], kept[stretches[after].first],
                                             stretches[s].size()));
    }
}

} // namespace

void markPositionJumps(const soundings::SurveyDay& day, const AlongTrackSettings& settings,
                       const std::vector<bool>& isHeld, ReducedDay& reduced) {
    const std::vector<std::size_t> kept = keptPositions(reduced);
    if (kept.size() < 3) {
        return;
    }
    const Reach reach(day, reduced, settings, kept);
    if (!reach.isTrack()) {
        return;
    }
    std::vector<Stretch> stretches{{0, 0}};
    for (std::size_t k = 1; k < kept.size(); ++k) {
        if (reach.isStepPlausible(kept[k - 1], kept[k])) {
            stretches.back().last = k;
        } else {
            stretches.push_back({k, k});
        }
    }
    if (stretches.size() == 1) {
        return;
    }
    std::vector<bool> isOnTrack = likeliestTrack(stretches, kept, reach);
    keepWhatGoesOn(stretches, kept, reach, isOnTrack);
    for (std::size_t s = 0; s < stretches.size(); ++s) {
        if (isOnTrack[s]) {
            continue;
        }
        for (std::size_t k = stretches[s].first; k <= stretches[s].last; ++k) {
            if (!isHeld[kept[k]]) {
                reduced.verdicts[kept[k]] = Verdict::positionJump;
            }
        }
    }
}

void markStuckPositions(const soundings::SurveyDay& day, const AlongTrackSettings& settings,
                        const std::vector<bool>& isHeld, ReducedDay& reduced) {
    constexpr std::size_t leastLong = 6;
    const std::vector<std::size_t> kept = keptPositions(reduced);
    for (std::size_t first = 0; first < kept.size();) {
        std::size_t last = first;
        double shallowest_m = day.soundings[kept[first]].shown.inMetres();
        double deepest_m = shallowest_m;
        while (last + 1 < kept.size() &&
               day.soundings[kept[last + 1]].place == day.soundings[kept[first]].place) {
            ++last;
            const double shown_m = day.soundings[kept[last]].shown.inMetres();
            shallowest_m = std::fmin(shallowest_m, shown_m);
            deepest_m = std::fmax(deepest_m, shown_m);
        }
        const double still_m = 6.0 * (settings.floor_m + settings.floorShare * deepest_m);
        if (last - first + 1 >= leastLong && deepest_m - shallowest_m > still_m) {
            for (std::size_t k = first + 1; k <= last; ++k) {
                if (!isHeld[kept[k]]) {
                    reduced.verdicts[kept[k]] = Verdict::stuckPosition;
                }
            }
        }
        first = last + 1;
    }
}

} // namespace reduction
