// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/reduced_survey.h"

#include <cstddef>
#include <vector>

namespace reduction {

/// The kept soundings of one pass as a series along the track, to look for faults in.
struct TrackSeries {
    std::vector<std::size_t> index; ///< Position of each in its day.
    std::vector<double> along_m;    ///< Distance sailed since the first.
    std::vector<double> shown_m;    ///< Depth as shown: echoes double before they are corrected.

    [[nodiscard]] std::size_t size() const { return index.size(); }
    /// The typical distance from one to the next, at least 0.1 m.
    [[nodiscard]] double step_m() const;
};

/// One series for each pass of the day, of what is still kept.
[[nodiscard]] std::vector<TrackSeries> seriesOf(const soundings::SurveyDay& day,
                                                const ReducedDay& reduced);

} // namespace reduction
