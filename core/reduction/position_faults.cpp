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
        }
    }

    /// One step of the track, from a sounding to the next.
    [[nodiscard]] bool isStepPlausible(std::size_t a, std::size_t b) const {
        const double far_m = distance_m(a, b);
        if (const auto time_s = between_s(a, b)) {
            return far_m <= settings_->leastJump_m ||
                   far_m <= settings_->fastest_m_s * std::fmax(*time_s, 1.0);
        }
        return far_m <= std::fmax(3.0 * settings_->leastJump_m, 10.0 * usualStep_m_);
    }

    /// From the end of one stretch to the beginning of a later one, at up to thrice the usual
    /// speed.
    [[nodiscard]] bool canFollow(std::size_t a, std::size_t b) const {
        const double far_m = distance_m(a, b);
        constexpr double hurry = 3.0;
        if (const auto time_s = between_s(a, b)) {
            const double speed_m_s =
                std::clamp(hurry * usualSpeed_m_s_, 1.0, settings_->fastest_m_s);
            return far_m <= settings_->leastJump_m + speed_m_s * *time_s;
        }
        // Without times a way of some length may have been sailed unrecorded.
        constexpr double otherWater_m = 1000.0;
        return far_m <= otherWater_m;
    }

    /// The track goes on at `b` as if what lies between had been on the way.
    [[nodiscard]] bool goesOn(std::size_t a, std::size_t b, std::size_t skipped) const {
        constexpr double hurry = 3.0;
        return distance_m(a, b) <=
               settings_->leastJump_m + hurry * usualStep_m_ * static_cast<double>(skipped + 1);
    }

    /// False for soundings without times that lie as they come, far from one another.
    [[nodiscard]] bool isTrack() const {
        constexpr double farthest_m = 60.0;
        return usualSpeed_m_s_ > 0.0 || usualStep_m_ <= farthest_m;
    }

    [[nodiscard]] bool hasTimes(std::size_t a, std::size_t b) const {
        return between_s(a, b).has_value();
    }

private:
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

/// For each stretch whether it belongs to the heaviest chain that can be sailed.
std::vector<bool> heaviestChain(const std::vector<Stretch>& stretches,
                                const std::vector<std::size_t>& kept, const Reach& reach) {
    constexpr std::size_t lookBack = 50;
    const std::size_t n = stretches.size();
    std::vector<std::size_t> weight(n);
    std::vector<std::size_t> before(n);
    for (std::size_t i = 0; i < n; ++i) {
        weight[i] = stretches[i].size();
        before[i] = i;
        const std::size_t from = i > lookBack ? i - lookBack : 0;
        for (std::size_t j = from; j < i; ++j) {
            if (weight[j] + stretches[i].size() > weight[i] &&
                reach.canFollow(kept[stretches[j].last], kept[stretches[i].first])) {
                weight[i] = weight[j] + stretches[i].size();
                before[i] = j;
            }
        }
    }
    std::vector<bool> isInChain(n, false);
    auto at = static_cast<std::size_t>(std::ranges::max_element(weight) - weight.begin());
    isInChain[at] = true;
    while (before[at] != at) {
        at = before[at];
        isInChain[at] = true;
    }
    return isInChain;
}

/// Without times: short stretches from which the track comes back to where it was.
void leaveOutExcursions(const std::vector<Stretch>& stretches, const std::vector<std::size_t>& kept,
                        const Reach& reach, std::vector<bool>& isInChain) {
    constexpr std::size_t longest = 20;
    for (std::size_t s = 1; s + 1 < stretches.size(); ++s) {
        if (stretches[s].size() <= longest && isInChain[s - 1] &&
            reach.goesOn(kept[stretches[s - 1].last], kept[stretches[s + 1].first],
                         stretches[s].size())) {
            isInChain[s] = false;
        }
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
    std::vector<bool> isInChain = heaviestChain(stretches, kept, reach);
    if (!reach.hasTimes(kept.front(), kept.back())) {
        leaveOutExcursions(stretches, kept, reach, isInChain);
    }
    for (std::size_t s = 0; s < stretches.size(); ++s) {
        if (isInChain[s]) {
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
