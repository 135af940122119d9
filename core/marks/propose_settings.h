// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/marks/plan.h"
#include "core/units/depth.h"
#include "core/units/length.h"

#include <string>
#include <vector>

namespace marks {

/// How to look for places. Defaults are our choice (no source).
struct ProposeSettings {
    /// Candidates that go on to ropes and rods, 1 to 5000. 240: thirty for each of eight marks.
    int most = 240;
    /// Places tried in vain before the search ends, 1 to 1 million. 2000: eight times as many as
    /// are wanted; each costs up to half a millisecond.
    int mostInVain = 2000;
    /// Places looked at on a large water, 100 to 1 million: the lattice widens to keep to it.
    int mostLookedAt = 40000;
    /// Least distance between two candidates as a share of the cast, 0.1 to 4.
    double leastApart = 0.5;
    /// Shallowest water to lie in, 0.3 to 5 m.
    units::Depth shallowest = units::Depth::metres(1.0);
    /// Room from the boat's middle to the shore, in boat lengths, 0 to 5: a swing must not end on
    /// the bank.
    double swingRoom = 1.0;
    /// Significant wave height from which an open boat does not lie between two anchors, 0.05 to 5
    /// m.
    units::Length roughest = units::Length::metres(0.35);
    /// Bottom, rise over run, from which no anchor is trusted, 0.1 to 3. One in two: little that an
    /// anchor bites into lies steeper under water, and what does is rock or a wall; common practice
    /// (no source).
    double steepest = 0.5;
    /// Bottom from which an anchor's slope is a caution, 0.02 to 3. A fall of 10 degrees towards
    /// the boat takes as much from a scope of 3 as paying out 2 does; that arithmetic is ours.
    double steep = 0.18;
};

/// One sentence for each setting or part of the plan out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const ProposeSettings& settings,
                                                  const Plan& plan);

/// The same as an error: wrongUse, with the first of them.
[[nodiscard]] base::Result<void> checkSettings(const ProposeSettings& settings, const Plan& plan);

} // namespace marks
