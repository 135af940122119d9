// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/marks/lying_cells.h"
#include "core/marks/rank_marks.h"
#include "core/water/document/plan_note.h"
#include "core/water/document/water.h"
#include "core/water/steps/day_ground.h"
#include "core/water/steps/lie_at.h"
#include "core/water/steps/workings.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace water {

/// Where a plan stands: what it is asked with, and what it works out or finds worked out. It refers
/// to what others own and keep alive.
struct PlanWork {
    const Water& water;
    const marks::Plan& plan;
    const DayGround& day;
    Workings& kept;
    base::Progress& progress;

    [[nodiscard]] LieWork lies() const { return {water, day, plan.tackle, progress}; }
};

/// Places tried one after the other, while the best of them are looked for: whether the boat holds
/// there in each of the day's winds, and what hinders it where it does not.
class TriedPlaces {
public:
    explicit TriedPlaces(const PlanWork& work) : work_(work) {}

    /// \return cancelled, and whatever is wrong with the plan.
    [[nodiscard]] base::Result<bool> holds(const marks::Candidate& candidate);

    [[nodiscard]] std::size_t count() const { return tried_.size(); }
    [[nodiscard]] std::size_t refused() const;
    /// Why the last that was refused was; empty where none was.
    [[nodiscard]] const std::string& lastReason() const { return lastReason_; }
    /// Adds how much of the water where a boat may lie is nearer to a refused place than to any
    /// other that was tried, as far as `reach`.
    void addTo(marks::ExcludedAreas& areas, const marks::LyingCells& lying,
               units::Length reach) const;

private:
    struct Tried {
        geo::WaterPoint place;
        std::optional<marks::Exclusion> why;
    };
    const PlanWork& work_;
    std::vector<Tried> tried_;
    std::string lastReason_;
};

/// Candidates with their ropes, and those of the user's own that have none.
struct Worked {
    std::vector<marks::WorkedCandidate> candidates;
    std::vector<RefusedMark> pinned;
};

/// The anchors of each candidate that holds, in each of the day's winds, from what is kept where it
/// was tried before. \return cancelled.
[[nodiscard]] base::Result<Worked> workOutAll(const std::vector<marks::Candidate>& candidates,
                                              const PlanWork& work);

/// Where the baits lie from a set of anchors. \param work must outlive what is returned.
[[nodiscard]] marks::RodsFor rodsFrom(const PlanWork& work);

} // namespace water
