// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/track.h"
#include "core/units/speed.h"

#include <span>
#include <vector>

namespace rates {

/// Where the boat was in a short span of time, by the median of its positions: neither a wild one
/// nor dense fixes weigh more than others.
struct TrackSpot {
    geo::WaterPoint place;
    units::Moment time;    ///< The mean of its positions' times.
    std::size_t first = 0; ///< Positions of the track, both included.
    std::size_t last = 0;
};

/// A stretch of a track on which the boat kept its speed and course, as nearly as noise lets one
/// see: it lay, drifted or went straight on.
struct TrackPiece {
    std::size_t first = 0; ///< Spots, both included.
    std::size_t last = 0;
    units::Speed speed;
    friend bool operator==(const TrackPiece&, const TrackPiece&) = default;
};

/// The track in spots of `span` each; a silence ends one. \param track by time.
[[nodiscard]] std::vector<TrackSpot> spotsOf(std::span<const TrackPoint> track,
                                             std::chrono::milliseconds span);

/// How far spots lie from where they should, as their second differences have it; metres. No less
/// than 3 (receivers drift slowly, which neighbours share), no more than 15.
[[nodiscard]] double noiseOf_m(std::span<const TrackSpot> spots);

/// Cuts spots into pieces, the best way there is: least squares about a straight uniform way in
/// each, and a price for each piece. A silence longer than `silence` ends a piece. Optimal
/// partitioning (Jackson et al. 2005, IEEE Signal Processing Letters 12:105); the price of a piece
/// is our choice. Cost: spots times the spots of the longest still stretch, at most four hours.
[[nodiscard]] std::vector<TrackPiece> cutTrack(std::span<const TrackSpot> spots, double noise_m,
                                               std::chrono::milliseconds silence);

} // namespace rates
