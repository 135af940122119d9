// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/work_out_places.h"

#include "core/geo/nearest_points.h"
#include "core/marks/propose_marks.h"
#include "core/marks/winds_of_day.h"
#include "core/water/steps/anchor_ground.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace water {

using base::Result;

namespace {

/// The candidate with its ropes; nothing where no anchors would hold the boat there in one of
/// the day's winds.
Result<marks::WorkedCandidate> workOut(const marks::Candidate& candidate, const PlanWork& work) {
    std::vector<marks::Lying> lying;
    const LaidByHand* laid = laidAt(work.water, candidate);
    for (const marks::WindOfHours& part : marks::windsOf(work.plan.day)) {
        auto one = lyingIn(part.wind, candidate.place, laid, work.lies());
        if (!one) {
            return std::unexpected(one.error());
        }
        lying.push_back(std::move(*one));
    }
    marks::WorkedCandidate out{
        candidate, std::move(lying.front().anchors), {}, lying.front().waves, {}};
    if (lying.size() > 1) {
        out.later = std::move(lying.back());
    }
    return out;
}

/// In none of the day's winds an open boat can lie there.
bool isTooRough(const marks::WorkedCandidate& one) {
    const auto isRough = [](const std::optional<marks::WaveState>& waves) {
        return waves && waves->height > marks::ProposeSettings().roughest;
    };
    return isRough(one.waves) && (!one.later || isRough(one.later->waves));
}

/// The same from what is kept, if it is there. What the user calls a place, and whether he put it
/// there, may have changed since.
Result<marks::WorkedCandidate> workedOut(const marks::Candidate& candidate, const PlanWork& work) {
    if (laidAt(work.water, candidate) != nullptr) {
        return workOut(candidate, work); // What is kept knows nothing of the user's hand.
    }
    const std::pair place{candidate.place.x_m, candidate.place.y_m};
    auto found = work.kept.worked.find(place);
    if (found == work.kept.worked.end()) {
        auto made = workOut(candidate, work);
        if (!made && made.error().kind == base::ErrorKind::cancelled) {
            return made;
        }
        found = work.kept.worked.emplace(place, std::move(made)).first;
    }
    Result<marks::WorkedCandidate> out = found->second;
    if (out) {
        out->candidate = candidate;
    }
    return out;
}

/// What hinders a boat at a place that was worked out. An error is of the ropes.
std::optional<marks::Exclusion> hindranceAt(const Result<marks::WorkedCandidate>& worked,
                                            const PlanWork& work) {
    if (!worked) {
        return marks::Exclusion::noAnchors;
    }
    if (isTooRough(*worked)) {
        return marks::Exclusion::tooRough;
    }
    const bool isLaterSteep = worked->later && isTooSteep(worked->later->anchors, work.day);
    return isTooSteep(worked->anchors, work.day) || isLaterSteep
               ? std::optional(marks::Exclusion::tooSteep)
               : std::nullopt;
}

std::string reasonText(const Result<marks::WorkedCandidate>& worked, marks::Exclusion why) {
    if (why == marks::Exclusion::tooRough) {
        return fmt::format("waves of {:.2f} m", worked->waves->height.inMetres());
    }
    return why == marks::Exclusion::tooSteep ? "the bottom is too steep for an anchor"
                                             : worked.error().sentence();
}

} // namespace

Result<bool> TriedPlaces::holds(const marks::Candidate& candidate) {
    const auto worked = workedOut(candidate, work_);
    if (!worked && worked.error().kind != base::ErrorKind::unusableInput) {
        return std::unexpected(worked.error());
    }
    const auto why = hindranceAt(worked, work_);
    tried_.push_back({candidate.place, why});
    if (why) {
        lastReason_ = reasonText(worked, *why);
    }
    return !why;
}

std::size_t TriedPlaces::refused() const {
    return static_cast<std::size_t>(
        std::ranges::count_if(tried_, [](const Tried& one) { return one.why.has_value(); }));
}

void TriedPlaces::addTo(marks::ExcludedAreas& areas, const marks::LyingCells& lying,
                        units::Length reach) const {
    std::vector<geo::WaterPoint> places;
    for (const Tried& one : tried_) {
        places.push_back(one.place);
    }
    const geo::NearestPoints nearest(places);
    const grid::GridFrame& frame = lying.frame();
    const int cells = static_cast<int>(std::ceil(reach.inMetres() / frame.cell_m()));
    for (std::size_t k = 0; k < tried_.size(); ++k) {
        if (!tried_[k].why) {
            continue;
        }
        const grid::Cell middle = frame.cellOf(tried_[k].place);
        for (int row = middle.row - cells; row <= middle.row + cells; ++row) {
            for (int col = middle.col - cells; col <= middle.col + cells; ++col) {
                const grid::Cell c{col, row};
                const geo::WaterPoint p = frame.centre(c);
                if (lying.mayLieIn(c) && geo::distance_m(p, places[k]) <= reach.inMetres() &&
                    nearest.nearest(p)->index == k) {
                    areas[static_cast<std::size_t>(*tried_[k].why)] +=
                        units::Area::squareMetres(frame.cellArea_m2());
                }
            }
        }
    }
}

Result<Worked> workOutAll(const std::vector<marks::Candidate>& candidates, const PlanWork& work) {
    Worked worked;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        if (work.progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        work.progress.tell(static_cast<double>(i) / static_cast<double>(candidates.size()));
        auto one = workedOut(candidates[i], work);
        if (one) {
            worked.candidates.push_back(std::move(*one));
        } else if (one.error().kind == base::ErrorKind::unusableInput) {
            worked.pinned.push_back(
                {candidates[i].name, one.error(), work.water.frame->toEarth(candidates[i].place)});
        } else {
            return std::unexpected(one.error());
        }
    }
    return worked;
}

marks::RodsFor rodsFrom(const PlanWork& work) {
    return [&work](geo::WaterPoint place, const anchoring::AnchorSet& anchors) {
        return rodsAt(anchors, laidAt(work.water, place), work.lies());
    };
}

} // namespace water
