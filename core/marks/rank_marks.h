// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/factor_values.h"
#include "core/marks/mark.h"
#include "core/marks/mark_input.h"
#include "core/marks/plan.h"

#include <functional>
#include <vector>

namespace marks {

/// A candidate with its anchors and its waves.
struct WorkedCandidate {
    Candidate candidate;
    anchoring::AnchorSet anchors;
    /// Empty where rods are to be laid for the marks chosen alone.
    rods::RodSpread spread;
    std::optional<WaveState> waves;  ///< Nothing where the wind is not known.
    std::optional<Lying> later = {}; ///< Once the wind has turned; nothing on a day of one wind.
};

/// What is to be minded of waves and of room for rods.
[[nodiscard]] std::vector<Caution> lyingCautions(const std::optional<units::Length>& waveHeight,
                                                 int rods, int wanted);

/// Lays the rods of a boat at its anchors, for the place that was asked for.
using RodsFor =
    std::function<base::Result<rods::RodSpread>(geo::WaterPoint, const anchoring::AnchorSet&)>;

/// How the list is chosen. Defaults are our choice (no source).
struct RankSettings {
    /// Least distance between two marks in casts, 0 to 20. 2: no bait of one mark reaches the
    /// water of another.
    double leastApart = 2.0;
    /// Most marks in one section; 0 means a third of the list, but two at least. It gives way where
    /// the list would otherwise stay short.
    int mostInSection = 0;
    /// Up to this many candidates, 0 to 24, the best list by beliefs alone is found exactly; above,
    /// and with a log, greedily.
    int exactUpTo = 18;
};

/// One sentence for each setting or part of the plan out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const RankSettings& settings, const Plan& plan);

/// Judges every candidate, chooses the plan's count of them, and ranks them, best first. The score
/// is how many times the water's mean is expected, the product of what the factors multiply by and
/// nothing else; equal scores go by promise, then from north to south and west to east. With a log
/// some are chosen in order to learn, as the plan asks for, and are marked so. Pinned candidates
/// are always in the list. Candidates whose lie is on land, on closed water or deeper than the
/// limit are dropped unless pinned (then a caution says so). The result does not depend on the
/// order of `candidates`. Fewer marks than asked for where there is no room for more. \param
/// rodsFor asked for each mark chosen; no place is chosen for its rods. Empty: those of the
/// candidates. \return wrongUse for settings out of range; unusableInput where no candidate is
/// left; cancelled; the error of `rodsFor`.
[[nodiscard]] base::Result<std::vector<Mark>>
rankMarks(const MarkInput& input, const Plan& plan, std::vector<WorkedCandidate> candidates,
          const RankSettings& settings, base::Progress& progress, const RodsFor& rodsFor = {});

} // namespace marks
