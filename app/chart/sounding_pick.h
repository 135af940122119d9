// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/reduced_survey.h"

#include <cstddef>
#include <optional>

namespace chart {

/// One sounding of the water: the position of its survey day, and its own in that day.
struct SoundingPick {
    int day = 0;
    std::size_t sounding = 0;
    friend bool operator==(const SoundingPick&, const SoundingPick&) = default;
    /// In the order of days and of their tracks.
    friend bool operator<(const SoundingPick& a, const SoundingPick& b) {
        return a.day != b.day ? a.day < b.day : a.sounding < b.sounding;
    }
};

/// The sounding at a position among all kept ones, as keptSoundings() counts them.
[[nodiscard]] std::optional<SoundingPick> pickOfKept(const reduction::ReducedSurvey& survey,
                                                     std::size_t kept);

} // namespace chart
