// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/track.h"

#include <array>
#include <cstdint>
#include <vector>

namespace support {

/// What the track of a fishing day is made hard by.
enum class TrackTrouble {
    swing,     ///< The boat swings on its ropes, up to 10 m to either side.
    gaps,      ///< The receiver is silent for up to 15 minutes, and some positions are wild.
    trolling,  ///< Between stays the boat goes to and fro at 0.5 to 1.2 m/s.
    slowDrift, ///< It drifts at 0.04 to 0.10 m/s, which is no stay.
    noise,     ///< Positions err by 8 m instead of 3.
};

inline constexpr std::array allTrackTroubles{TrackTrouble::swing, TrackTrouble::gaps,
                                             TrackTrouble::trolling, TrackTrouble::slowDrift,
                                             TrackTrouble::noise};

/// A made-up day on the water with its truth. Positions come every 1 to 10 seconds, their errors
/// last half a minute.
struct TrackDay {
    rates::Track track;
    std::vector<rates::TrackStay> stays; ///< As they were; spread says nothing.
};

[[nodiscard]] TrackDay trackDay(TrackTrouble trouble, std::uint64_t seed);

/// What was found of such a day.
struct FoundOfDay {
    int stays = 0;  ///< There were.
    int found = 0;  ///< Overlapped by just one that was found, by half of either.
    int timed = 0;  ///< Of those, both ends within two minutes.
    int placed = 0; ///< Of those found, within 5 m; 10 m where the trouble is noise.
    int wrong = 0;  ///< Stays found where the boat did not lie.
    double worstTime_min = 0.0;
    double worstPlace_m = 0.0;
};

[[nodiscard]] FoundOfDay compared(const TrackDay& day, TrackTrouble trouble,
                                  const std::vector<rates::TrackStay>& found);

} // namespace support
