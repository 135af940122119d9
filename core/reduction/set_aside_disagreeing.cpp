// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/set_aside_disagreeing.h"

#include "core/reduction/hand_kept.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <span>
#include <unordered_map>

namespace reduction {

namespace {

using Kept = soundings::KeptSounding;

/// Soundings by squares of ground as wide as `near_m`, as runs along their passes, so that the many
/// of the own pass are stepped over at once.
class Squares {
public:
    Squares(std::span<const Kept> kept, double near_m) : near_m_(near_m) {
        for (std::size_t i = 0; i < kept.size(); ++i) {
            auto& runs = runs_[keyOf(column(kept[i].x_m), column(kept[i].y_m))];
            if (!runs.empty() && runs.back().end == i && runs.back().pass == kept[i].pass) {
                ++runs.back().end;
            } else {
                runs.push_back({kept[i].pass, i, i + 1});
            }
        }
    }

    /// Calls `see(index)` for all soundings of other passes within near_m of the place, and for
    /// some beyond.
    template <class See>
    void othersAround(const Kept& at, See see) const {
        for (std::int32_t dx = -1; dx <= 1; ++dx) {
            for (std::int32_t dy = -1; dy <= 1; ++dy) {
                const auto found = runs_.find(keyOf(column(at.x_m) + dx, column(at.y_m) + dy));
                if (found != runs_.end()) {
                    for (const Run& run : found->second) {
                        for (std::size_t i = run.begin; i < run.end && run.pass != at.pass; ++i) {
                            see(i);
                        }
                    }
                }
            }
        }
    }

private:
    struct Run {
        int pass;
        std::size_t begin;
        std::size_t end;
    };

    [[nodiscard]] std::int32_t column(double along_m) const {
        return static_cast<std::int32_t>(std::floor(along_m / near_m_));
    }
    static std::uint64_t keyOf(std::int32_t x, std::int32_t y) {
        return (static_cast<std::uint64_t>(static_cast<std::uint32_t>(x)) << 32U) |
               static_cast<std::uint32_t>(y);
    }

    double near_m_;
    std::unordered_map<std::uint64_t, std::vector<Run>> runs_;
};

/// The nearest sounding of another pass.
struct Neighbour {
    int pass = 0;
    std::size_t index = 0;
    double distance_m = 0.0;
};

class Judge {
public:
    Judge(std::span<const Kept> kept, const DisagreeingSettings& settings)
        : kept_(kept), settings_(&settings), squares_(kept, settings.near_m) {}

    [[nodiscard]] bool standsAlone(std::size_t i) {
        gatherNeighbours(i);
        constexpr std::size_t leastPasses = 2;
        if (neighbours_.size() < leastPasses) {
            return false;
        }
        double least_m = 1e300; // Of the others' depths less its own.
        double most_m = -1e300;
        double allowed_m = 0.0;
        for (const Neighbour& other : neighbours_) {
            const double off_m = kept_[other.index].depth_m - kept_[i].depth_m;
            least_m = std::fmin(least_m, off_m);
            most_m = std::fmax(most_m, off_m);
            const double slope = std::fmax(slopeAt(other.index), slopeAt(i));
            constexpr double steeper = 1.5; // Than the pass shows, across it.
            const double byPlace_m =
                steeper * slope * (other.distance_m + settings_->positionError_m);
            const double floor_m =
                settings_->floor_m + settings_->floorShare * kept_[other.index].depth_m;
            allowed_m = std::fmax(allowed_m, settings_->threshold * floor_m + byPlace_m);
        }
        const double apart_m = least_m > 0.0 ? least_m : most_m < 0.0 ? -most_m : 0.0;
        return apart_m > allowed_m && most_m - least_m < 0.5 * apart_m;
    }

private:
    void gatherNeighbours(std::size_t i) {
        neighbours_.clear();
        squares_.othersAround(kept_[i], [&](std::size_t k) {
            const double far_m =
                std::hypot(kept_[k].x_m - kept_[i].x_m, kept_[k].y_m - kept_[i].y_m);
            if (far_m > settings_->near_m) {
                return;
            }
            const auto known = std::ranges::find(neighbours_, kept_[k].pass, &Neighbour::pass);
            if (known == neighbours_.end()) {
                neighbours_.push_back({kept_[k].pass, k, far_m});
            } else if (far_m < known->distance_m) {
                *known = {kept_[k].pass, k, far_m};
            }
        });
    }

    /// Along its pass, between ends some metres apart, so that noise is no slope, and a step there
    /// and back counts as none.
    [[nodiscard]] double slopeAt(std::size_t i) const {
        constexpr std::size_t reach = 4;
        std::size_t first = i;
        std::size_t last = i;
        while (first > 0 && i - first < reach && kept_[first - 1].pass == kept_[i].pass) {
            --first;
        }
        while (last + 1 < kept_.size() && last - i < reach &&
               kept_[last + 1].pass == kept_[i].pass) {
            ++last;
        }
        const double run_m =
            std::hypot(kept_[last].x_m - kept_[first].x_m, kept_[last].y_m - kept_[first].y_m);
        return run_m > 1.0 ? std::fabs(kept_[last].depth_m - kept_[first].depth_m) / run_m : 0.0;
    }

    std::span<const Kept> kept_;
    const DisagreeingSettings* settings_;
    Squares squares_;
    std::vector<Neighbour> neighbours_;
};

bool areFine(const DisagreeingSettings& settings) {
    const auto isIn = [](double value, double least, double most) {
        return value >= least && value <= most;
    };
    return isIn(settings.near_m, 1.0, 50.0) && isIn(settings.threshold, 3.0, 20.0) &&
           isIn(settings.floor_m, 0.01, 2.0) && isIn(settings.floorShare, 0.0, 0.1) &&
           isIn(settings.positionError_m, 0.0, 20.0);
}

} // namespace

base::Result<ReducedSurvey> setAsideDisagreeing(const std::vector<soundings::SurveyDay>& days,
                                                ReducedSurvey survey,
                                                const DisagreeingSettings& settings,
                                                base::Progress& progress) {
    if (!areFine(settings)) {
        return base::fail(base::ErrorKind::wrongUse, "a setting is out of its range",
                          "near_m, threshold, floor_m, floorShare or positionError_m",
                          "choose 1 to 50 m, 3 to 20, 0.01 to 2 m, 0 to 0.1 and 0 to 20 m");
    }
    progress.begin("comparing neighbouring passes");
    const std::vector<Kept> kept = keptSoundings(days, survey);
    Judge judge(kept, settings);
    std::size_t at = 0;
    for (std::size_t d = 0; d < survey.days.size(); ++d) {
        const std::vector<bool> isHeld = handKept(days[d]);
        for (std::size_t i = 0; i < survey.days[d].verdicts.size(); ++i) {
            soundings::Verdict& verdict = survey.days[d].verdicts[i];
            if (verdict != soundings::Verdict::kept) {
                continue;
            }
            constexpr std::size_t often = 8192;
            if (at % often == 0) {
                if (progress.stopAsked()) {
                    return std::unexpected(base::cancelled());
                }
                progress.tell(static_cast<double>(at) / static_cast<double>(kept.size()));
            }
            if (!isHeld[i] && judge.standsAlone(at)) {
                verdict = soundings::Verdict::disagrees;
            }
            ++at;
        }
    }
    return survey;
}

} // namespace reduction
