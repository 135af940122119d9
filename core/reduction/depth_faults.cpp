// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/depth_faults.h"

#include "core/reduction/robust.h"
#include "core/reduction/series_looks.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace reduction {

namespace {

using soundings::Verdict;

/// One side of a stretch of faults: the bottom just before it, or just after it.
struct Bank {
    double depth_m = 0.0;
    double along_m = 0.0;
};

Bank bankBefore(const TrackSeries& series, std::size_t first) {
    const std::size_t from = first >= 3 ? first - 3 : 0;
    return {medianBetween(series, from, first), series.along_m[first - 1]};
}

Bank bankAfter(const TrackSeries& series, std::size_t last) {
    const std::size_t to = std::min(series.size(), last + 4);
    return {medianBetween(series, last + 1, to), series.along_m[last + 1]};
}

/// A stretch [first, last] judged against the bottom on both sides.
class Judged {
public:
    Judged(const TrackSeries& series, const AlongTrackSettings& settings, double usualStep_m,
           std::size_t first, std::size_t last)
        : series_(&series), settings_(&settings), usualStep_m_(usualStep_m), first_(first),
          last_(last), before_(bankBefore(series, first)), after_(bankAfter(series, last)) {
        std::vector<double> heights_m;
        std::vector<double> ratios;
        for (std::size_t i = first; i <= last; ++i) {
            heights_m.push_back(series.shown_m[i] - bottomAt(i));
            ratios.push_back(series.shown_m[i] / std::fmax(bottomAt(i), 0.1));
        }
        ratio_ = medianOf(std::move(ratios));
        height_m_ = std::fabs(medianOf(std::move(heights_m)));
    }

    /// Halved, the stretch joins the bottom on both sides; as shown it does not. In a few feet of
    /// water a long stretch of twice the depth is a gully as soon as an echo.
    [[nodiscard]] bool isDoubleEcho() const {
        constexpr double better = 0.35;
        constexpr double leastRise = 0.6; // Of the depth before; an echo of two doubles it.
        const double least_m =
            isLong() ? settings_->threshold * floor_m(*settings_, before_.depth_m) : 0.0;
        return areBanksNear() && leftByHalving() < better && joins(first_) && joins(last_ + 1) &&
               series_->shown_m[first_] > (1.0 + leastRise) * series_->shown_m[first_ - 1] &&
               ratio_ > 1.4 && ratio_ < 2.6 && height_m_ > least_m;
    }

    /// What halving the stretch leaves of the steps at its ends, as a share.
    [[nodiscard]] double leftByHalving() const {
        const double asShown_m = gap(first_, 1.0) + gap(last_ + 1, 1.0);
        const double halved_m = gap(first_, 0.5) + gap(last_ + 1, 0.5);
        return asShown_m > 0.0 ? halved_m / asShown_m : 1.0;
    }

    /// Up to three soundings on a bottom that goes on; or more, if no bottom can rise and fall so.
    [[nodiscard]] bool isSpike() const {
        const double least_m =
            settings_->threshold * floor_m(*settings_, std::fmax(before_.depth_m, after_.depth_m));
        const bool isShort = last_ - first_ < 3 && isSudden(0.7);
        const bool isWalled =
            isWall(first_) && isWall(last_ + 1) && isSudden(0.8) && areBanksTrue();
        return height_m_ > least_m && areBanksLevel() && (isShort || isWalled);
    }

private:
    [[nodiscard]] double bottomAt(std::size_t i) const {
        const double length_m = after_.along_m - before_.along_m;
        const double share =
            length_m > 0.0 ? (series_->along_m[i] - before_.along_m) / length_m : 0.5;
        return std::lerp(before_.depth_m, after_.depth_m, share);
    }

    [[nodiscard]] bool isLong() const { return last_ - first_ >= 8; }

    /// No gap lies between the stretch and what it is judged by: over a gap the bottom may do
    /// anything. A long stretch needs more than one sounding on each side.
    [[nodiscard]] bool areBanksNear() const {
        const double farthest_m = std::fmax(12.0, 2.5 * usualStep_m_); // For each step.
        const std::size_t bank = isLong() ? 3 : 1;
        return first_ >= bank && last_ + bank < series_->size() &&
               series_->along_m[first_] - series_->along_m[first_ - bank] <=
                   farthest_m * static_cast<double>(bank) &&
               series_->along_m[last_ + bank] - series_->along_m[last_] <=
                   farthest_m * static_cast<double>(bank);
    }

    /// The bottom goes on after the stretch where it was before it.
    [[nodiscard]] bool areBanksLevel() const {
        return std::fabs(after_.depth_m - before_.depth_m) < 0.5 * height_m_;
    }

    /// The soundings next to the stretch are no faults themselves.
    [[nodiscard]] bool areBanksTrue() const {
        constexpr double share = 0.25;
        return std::fabs(series_->shown_m[first_ - 1] - before_.depth_m) < share * height_m_ &&
               std::fabs(series_->shown_m[last_ + 1] - after_.depth_m) < share * height_m_;
    }

    /// Both ends are single steps that make most of the height, steeper than the bottom nearby.
    [[nodiscard]] bool isSudden(double share) const {
        return isStep(first_, share) && isStep(last_ + 1, share);
    }

    /// The step between the stretch and the bottom at one of its ends, were its depths `times` as
    /// deep.
    [[nodiscard]] double gap(std::size_t i, double times) const {
        const double inside_m = series_->shown_m[i == first_ ? i : i - 1];
        const double outside_m = series_->shown_m[i == first_ ? i - 1 : i];
        return std::fabs(times * inside_m - outside_m);
    }

    [[nodiscard]] bool joins(std::size_t i) const {
        const double run_m = series_->along_m[i] - series_->along_m[i - 1];
        constexpr double timesTheSlope = 2.5;
        return gap(i, 0.5) < 0.5 * settings_->threshold * floor_m(*settings_, before_.depth_m) +
                                 timesTheSlope * slopeNear(*series_, i) * run_m;
    }

    /// Steeper than any bottom that is believed, a metre of position error allowed for.
    [[nodiscard]] bool isWall(std::size_t i) const {
        const double rise_m = std::fabs(series_->shown_m[i] - series_->shown_m[i - 1]);
        const double run_m = series_->along_m[i] - series_->along_m[i - 1];
        return rise_m > settings_->steepest * (run_m + 1.0);
    }

    [[nodiscard]] bool isStep(std::size_t i, double share) const {
        const double rise_m = std::fabs(series_->shown_m[i] - series_->shown_m[i - 1]);
        const double run_m = series_->along_m[i] - series_->along_m[i - 1];
        constexpr double timesTheSlope = 3.0;
        const double usual_m = timesTheSlope * slopeNear(*series_, i) * run_m;
        return rise_m > share * height_m_ && rise_m > usual_m;
    }

    const TrackSeries* series_;
    const AlongTrackSettings* settings_;
    double usualStep_m_;
    std::size_t first_;
    std::size_t last_;
    Bank before_;
    Bank after_;
    double ratio_ = 1.0;
    double height_m_ = 0.0;
};

bool isJump(const TrackSeries& series, const AlongTrackSettings& settings, std::size_t i) {
    const double rise_m = std::fabs(series.shown_m[i] - series.shown_m[i - 1]);
    const double depth_m = std::fmin(series.shown_m[i], series.shown_m[i - 1]);
    return rise_m > 0.5 * settings.threshold * floor_m(settings, depth_m);
}

/// Longest run of soundings that a fault may be.
constexpr std::size_t longestRun = 40;

/// The end of the fault that begins at `first` and its kind; nothing where none does. Of the ends
/// that a double echo might have, the one where halving joins it best.
std::optional<std::pair<std::size_t, Verdict>> faultFrom(const TrackSeries& series,
                                                         const AlongTrackSettings& settings,
                                                         double usualStep_m, std::size_t first) {
    const double goesUp = series.shown_m[first] - series.shown_m[first - 1];
    std::optional<std::pair<std::size_t, Verdict>> echo;
    double left = 1.0;
    for (std::size_t last = first; last + 1 < series.size() && last < first + longestRun; ++last) {
        if (series.along_m[last] - series.along_m[first] > settings.longestFault_m) {
            break;
        }
        // A second doubling within it belongs to a fault of its own.
        if (last > first && series.shown_m[last] > 1.6 * series.shown_m[last - 1]) {
            break;
        }
        const double comesBack = series.shown_m[last + 1] - series.shown_m[last];
        if (!isJump(series, settings, last + 1) || goesUp * comesBack > 0.0) {
            continue;
        }
        const Judged judged(series, settings, usualStep_m, first, last);
        if (goesUp > 0.0 && judged.isDoubleEcho()) {
            if (judged.leftByHalving() < left) {
                left = judged.leftByHalving();
                echo = std::pair(last, Verdict::doubleEcho);
            }
        } else if (!echo && judged.isSpike()) {
            return std::pair(last, Verdict::spike);
        }
    }
    return echo;
}

/// Residuals of the window [first, last) from its robust line: the median of the slopes between its
/// halves, then the median of what is left (Siegel's idea at the cost of one pass).
std::vector<double> residuals(const TrackSeries& series, std::size_t first, std::size_t last,
                              std::size_t leftOut) {
    const std::size_t half = (last - first) / 2;
    std::vector<double> slopes;
    for (std::size_t k = first; k + half < last; ++k) {
        const double run_m = series.along_m[k + half] - series.along_m[k];
        if (run_m > 0.05 && k != leftOut && k + half != leftOut) {
            slopes.push_back((series.shown_m[k + half] - series.shown_m[k]) / run_m);
        }
    }
    const double slope = slopes.empty() ? 0.0 : medianOf(std::move(slopes));
    std::vector<double> left_m;
    for (std::size_t k = first; k < last; ++k) {
        left_m.push_back(series.shown_m[k] - slope * series.along_m[k]);
    }
    const double middle_m = medianOf(left_m);
    for (double& value : left_m) {
        value -= middle_m;
    }
    return left_m;
}

/// Its neighbours on both sides are farther off than `sigma_m` and any bottom explain: the foot of
/// a bank has one of them on its own side.
bool isAgainstBoth(const TrackSeries& series, const AlongTrackSettings& settings, std::size_t i,
                   double sigma_m) {
    const auto contradicts = [&](std::size_t k) {
        const double run_m = std::fabs(series.along_m[k] - series.along_m[i]);
        return std::fabs(series.shown_m[k] - series.shown_m[i]) >
               0.5 * settings.threshold * sigma_m + 0.5 * settings.steepest * run_m;
    };
    return (i == 0 || contradicts(i - 1)) && (i + 1 == series.size() || contradicts(i + 1));
}

bool isSpikeAt(const TrackSeries& series, const AlongTrackSettings& settings, std::size_t i) {
    const double least_m = floor_m(settings, series.shown_m[i]);
    // The spread is never less: most soundings need no window.
    if (!isAgainstBoth(series, settings, i, least_m)) {
        return false;
    }
    constexpr std::size_t leastEachWay = 4;
    constexpr std::size_t mostEachWay = 12;
    std::size_t first = i;
    while (first > 0 && i - first < mostEachWay &&
           (i - first < leastEachWay ||
            series.along_m[i] - series.along_m[first - 1] <= settings.window_m)) {
        --first;
    }
    std::size_t last = i + 1;
    while (last < series.size() && last - i <= mostEachWay &&
           (last - i <= leastEachWay ||
            series.along_m[last] - series.along_m[i] <= settings.window_m)) {
        ++last;
    }
    if (last - first < 5) {
        return false;
    }
    const std::vector<double> left_m = residuals(series, first, last, i);
    const double sigma_m = std::fmax(least_m, robustSigma(left_m, 0.0));
    return std::fabs(left_m[i - first]) > settings.threshold * sigma_m &&
           isAgainstBoth(series, settings, i, sigma_m);
}

} // namespace

void findEchoFaults(const TrackSeries& series, const AlongTrackSettings& settings,
                    std::vector<Verdict>& verdicts) {
    const TrackSeries kept = keptOf(series, verdicts);
    const double usualStep_m = kept.step_m();
    for (std::size_t first = 1; first + 1 < kept.size(); ++first) {
        if (!isJump(kept, settings, first)) {
            continue;
        }
        if (const auto fault = faultFrom(kept, settings, usualStep_m, first)) {
            for (std::size_t k = first; k <= fault->first; ++k) {
                verdicts[kept.index[k]] = fault->second;
            }
            first = fault->first + 1;
        }
    }
}

void findSpikes(const TrackSeries& series, const AlongTrackSettings& settings,
                std::vector<Verdict>& verdicts) {
    const TrackSeries kept = keptOf(series, verdicts);
    for (std::size_t i = 0; i < kept.size(); ++i) {
        if (isSpikeAt(kept, settings, i)) {
            verdicts[kept.index[i]] = Verdict::spike;
        }
    }
}

} // namespace reduction
