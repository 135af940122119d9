// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reduction/set_aside_along_track.h"

#include "core/reduction/depth_faults.h"
#include "core/reduction/hand_kept.h"
#include "core/reduction/position_faults.h"
#include "core/reduction/track_series.h"

#include <array>

#include <fmt/format.h>

namespace reduction {

namespace {

using soundings::Verdict;

base::Result<void> checkSettings(const AlongTrackSettings& settings) {
    struct Range {
        const char* name;
        double value;
        double least;
        double most;
    };
    const std::array ranges{
        Range{"window_m", settings.window_m, 3.0, 100.0},
        Range{"threshold", settings.threshold, 3.0, 20.0},
        Range{"floor_m", settings.floor_m, 0.01, 1.0},
        Range{"floorShare", settings.floorShare, 0.0, 0.1},
        Range{"steepest", settings.steepest, 0.3, 5.0},
        Range{"longestFault_m", settings.longestFault_m, 5.0, 500.0},
        Range{"noEcho_m", settings.noEcho_m, 0.0, 0.5},
        Range{"deepest_m", settings.deepest_m, 20.0, 2000.0},
        Range{"fastest_m_s", settings.fastest_m_s, 3.0, 40.0},
        Range{"leastJump_m", settings.leastJump_m, 5.0, 200.0},
        Range{"stuckOver_m", settings.stuckOver_m, 1.0, 1000.0},
        Range{"stuckSoundings", static_cast<double>(settings.stuckSoundings), 4.0, 1000.0}};
    for (const Range& range : ranges) {
        if (!(range.value >= range.least && range.value <= range.most)) {
            return base::fail(base::ErrorKind::wrongUse, "a setting is out of its range",
                              range.name, fmt::format("choose {} to {}", range.least, range.most));
        }
    }
    return {};
}

void markDropOuts(const soundings::SurveyDay& day, const AlongTrackSettings& settings,
                  const std::vector<bool>& isHeld, ReducedDay& reduced) {
    for (std::size_t i = 0; i < reduced.verdicts.size(); ++i) {
        const double shown_m = day.soundings[i].shown.inMetres();
        if (reduced.verdicts[i] == Verdict::kept && !isHeld[i] &&
            (shown_m <= settings.noEcho_m || shown_m > settings.deepest_m)) {
            reduced.verdicts[i] = Verdict::dropOut;
        }
    }
}

void markDepthFaults(const soundings::SurveyDay& day, const AlongTrackSettings& settings,
                     const std::vector<bool>& isHeld, ReducedDay& reduced) {
    for (const TrackSeries& series : seriesOf(day, reduced)) {
        std::vector<Verdict> verdicts(series.size(), Verdict::kept);
        findStuckDepths(series, settings, verdicts);
        findEchoFaults(series, settings, verdicts);
        findSpikes(series, settings, verdicts);
        for (std::size_t i = 0; i < series.size(); ++i) {
            if (!isHeld[series.index[i]]) {
                reduced.verdicts[series.index[i]] = verdicts[i];
            }
        }
    }
}

} // namespace

base::Result<ReducedSurvey> setAsideAlongTrack(const std::vector<soundings::SurveyDay>& days,
                                               ReducedSurvey survey,
                                               const AlongTrackSettings& settings,
                                               base::Progress& progress) {
    if (const auto checked = checkSettings(settings); !checked) {
        return std::unexpected(checked.error());
    }
    progress.begin("looking for faults along the track");
    for (std::size_t d = 0; d < survey.days.size(); ++d) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        const std::vector<bool> isHeld = handKept(days[d]);
        ReducedDay& reduced = survey.days[d];
        markDropOuts(days[d], settings, isHeld, reduced);
        markPositionJumps(days[d], settings, isHeld, reduced);
        markStuckPositions(days[d], settings, isHeld, reduced);
        markDepthFaults(days[d], settings, isHeld, reduced);
        progress.tell(static_cast<double>(d + 1) / static_cast<double>(survey.days.size()));
    }
    return survey;
}

} // namespace reduction
