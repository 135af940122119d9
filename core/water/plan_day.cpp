// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/plan_day.h"

#include "core/anchoring/place_anchors.h"
#include "core/marks/order_day.h"
#include "core/marks/propose_marks.h"
#include "core/marks/rank_marks.h"
#include "core/rods/spread_rods.h"
#include "core/water/closed_cells.h"
#include "core/water/day_cautions.h"
#include "core/water/day_distances.h"
#include "core/water/day_waves.h"
#include "core/water/day_ways.h"
#include "core/water/hour_weight.h"
#include "core/water/learn_log.h"
#include "core/water/near_place.h"
#include "core/water/plan_notes.h"
#include "core/water/stamps.h"
#include "core/wind/fetch.h"
#include "core/wind/waves.h"

#include <algorithm>

#include <fmt/format.h>

namespace water {

using base::Progress;
using base::Result;

namespace {

/// Everything that is made once for the day and looked at for each candidate.
struct DayGround {
    grid::DepthGrid today;
    grid::Grid<std::uint8_t> closed;
    grid::Grid<std::uint8_t> isGuess;
};

Result<DayGround> groundOf(const Water& water, const Derived& derived, const marks::Plan& plan) {
    auto closed = closedCells(water, derived.drawn->mask.frame());
    if (!closed) {
        return std::unexpected(closed.error());
    }
    const surface::TrustGrid& trust = derived.drawn->trust;
    grid::Grid<std::uint8_t> isGuess(trust.frame(), 0);
    for (std::size_t i = 0; i < isGuess.size(); ++i) {
        isGuess[i] = trust.names()[i] == surface::TrustName::guess ? 1 : 0;
    }
    return DayGround{derived.drawn->depth.raisedBy(plan.day.levelChange), std::move(*closed),
                     std::move(isGuess)};
}

/// Without the log.
marks::MarkInput inputOf(const Water& water, const Derived& derived, const rods::Ground& ground,
                         const DayGround& made) {
    return {.frame = *water.frame,
            .outline = *derived.outline,
            .ground = ground,
            .bands = water.settings.bands,
            .sections = *derived.sections,
            .trust_m = derived.drawn->trust.halfWidths_m(),
            .isGuess = &made.isGuess,
            .learned = nullptr,
            .waveHeightAt = {}};
}

anchoring::BoatSettings boatOf(const marks::Tackle& tackle) {
    anchoring::BoatSettings boat;
    boat.length = tackle.boatLength;
    boat.bowHeight = tackle.bowHeight;
    boat.bowRope = tackle.bowRope;
    boat.sternRope = tackle.sternRope;
    boat.scope = tackle.scope;
    boat.leastScope = std::min(boat.leastScope, tackle.scope);
    return boat;
}

rods::RodSettings rodsOf(const marks::Tackle& tackle) {
    rods::RodSettings settings;
    settings.rods = tackle.rods;
    settings.cast = tackle.cast;
    settings.overDepth = tackle.overDepth;
    settings.nearest = std::min(settings.nearest, tackle.cast * 0.5);
    return settings;
}

/// The candidate with ropes and rods; nothing where no two anchors would hold the boat there. Only
/// a mark that the user himself put into closed water gets its anchors there, with a caution.
Result<marks::WorkedCandidate> workOut(const marks::Candidate& candidate, const Derived& derived,
                                       const rods::Ground& ground,
                                       const grid::Grid<std::uint8_t>& closed,
                                       const marks::Plan& plan, Progress& progress) {
    const marks::WaveState waves =
        wavesAt(*derived.outline, ground.today(), candidate.place, plan.day.wind);
    const anchoring::Weather weather{plan.day.wind.from, plan.day.wind.speed, waves.height};
    auto anchors = anchoring::placeAnchors(ground.today(),
                                           ground.isClosed(candidate.place) ? nullptr : &closed,
                                           candidate.place, weather, boatOf(plan.tackle), progress);
    if (!anchors) {
        return std::unexpected(anchors.error());
    }
    auto spread = rods::spreadRods(ground, *anchors, rodsOf(plan.tackle), progress);
    if (!spread) {
        return std::unexpected(spread.error());
    }
    return marks::WorkedCandidate{candidate, std::move(*anchors), std::move(*spread), waves};
}

struct Worked {
    std::vector<marks::WorkedCandidate> candidates;
    std::size_t refused = 0;
    std::string lastReason;
    std::vector<RefusedMark> pinned; ///< Of the user's own.
};

Result<Worked> workOutAll(const std::vector<marks::Candidate>& candidates, const Derived& derived,
                          const rods::Ground& ground, const grid::Grid<std::uint8_t>& closed,
                          const marks::Plan& plan, Progress& progress) {
    Worked worked;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        progress.tell(static_cast<double>(i) / static_cast<double>(candidates.size()));
        auto one = workOut(candidates[i], derived, ground, closed, plan, progress);
        const bool isTooRough =
            one && !candidates[i].isPinned && one->waves.height > marks::ProposeSettings().roughest;
        if (isTooRough) {
            ++worked.refused;
            worked.lastReason = fmt::format("waves of {:.2f} m", one->waves.height.inMetres());
        } else if (one) {
            worked.candidates.push_back(std::move(*one));
        } else if (one.error().kind == base::ErrorKind::unusableInput) {
            ++worked.refused;
            worked.lastReason = one.error().sentence();
            if (candidates[i].isPinned) {
                worked.pinned.push_back({candidates[i].name, one.error()});
            }
        } else {
            return std::unexpected(one.error());
        }
    }
    if (worked.candidates.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          fmt::format("none of {} places holds the boat between two anchors ({})",
                                      candidates.size(), worked.lastReason),
                          "", "take more rope, a smaller scope, or another limit of depth");
    }
    return worked;
}

std::vector<marks::Candidate> pinnedOf(const Water& water) {
    std::vector<marks::Candidate> pinned;
    for (const PinnedMark& mark : water.pinnedMarks) {
        pinned.push_back({water.frame->toWater(mark.place), 1.0, true, mark.name});
    }
    return pinned;
}

Result<marks::DayPlan> orderOf(const Water& water, const Derived& derived, const marks::Plan& plan,
                               const PlannedDay& planned,
                               const std::optional<marks::LearnedCatch>& learned,
                               Progress& progress) {
    marks::DayInput input;
    std::vector<geo::WaterPoint> places;
    for (const marks::Mark& mark : planned.marks) {
        input.stops.push_back({mark.rank, mark.score});
        places.push_back(mark.place);
    }
    auto distances = dayDistances(water, *derived.outline, places,
                                  plan.launch ? std::optional(water.frame->toWater(*plan.launch))
                                              : std::nullopt);
    if (!distances) {
        return std::unexpected(distances.error());
    }
    input.between_m = std::move(distances->between_m);
    input.fromLaunch_m = std::move(distances->fromLaunch_m);
    input.start = water.clock.at(plan.day.day, plan.day.start);
    input.end = water.clock.at(plan.day.day, plan.day.end);
    input.boatSpeed = plan.tackle.boatSpeed;
    input.stay = plan.day.stay;
    input.hourWeight = hourWeightOf(learned, water.clock);
    input.light = planned.light;
    return marks::orderDay(input, {}, progress);
}

Result<void> checkBefore(const Water& water, const Derived& derived) {
    if (!water.frame || !derived.outline || !derived.drawn || !derived.structure || !derived.weed ||
        !derived.sections) {
        return base::fail(base::ErrorKind::wrongUse,
                          "tomorrow cannot be planned before the water is drawn and divided", "",
                          "bring in soundings and draw the water first");
    }
    return {};
}

} // namespace

Result<PlannedDay> planDay(const Water& water, const Derived& derived, const marks::Plan& asked,
                           Progress& progress) {
    if (auto ready = checkBefore(water, derived); !ready) {
        return std::unexpected(ready.error());
    }
    PlannedDay planned;
    // By the sections that it is planned on: where they are old, so is the day.
    const auto sections = derived.stamps.find(Step::sections);
    planned.madeFrom =
        stampOfPlan(water, asked, sections == derived.stamps.end() ? Stamp() : sections->second);
    planned.plan = asked;
    marks::Plan& plan = planned.plan;
    plan.tackle.rods =
        std::min(plan.tackle.rods, water.houseRules.rodLimit.value_or(plan.tackle.rods));
    const auto made = groundOf(water, derived, plan);
    if (!made) {
        return std::unexpected(made.error());
    }
    const rods::Ground ground(made->today, water.settings.bands.limit(), &made->closed,
                              *derived.structure, derived.weed->zones);
    DayWaves waves(*derived.outline, made->today, plan.day.wind);
    marks::MarkInput input = inputOf(water, derived, ground, *made);
    if (waves.mayExceed(marks::ProposeSettings().roughest)) {
        input.waveHeightAt = [&waves](geo::WaterPoint p) { return waves.heightNear(p); };
    }
    progress.begin("Reading the log");
    const auto log = learnLog(water, input, plan, progress);
    if (!log) {
        return std::unexpected(log.error());
    }
    input.learned = log->learned ? &*log->learned : nullptr;
    progress.begin("Looking for marks");
    const auto candidates = marks::proposeMarks(input, plan, pinnedOf(water), {}, progress);
    if (!candidates) {
        return std::unexpected(candidates.error());
    }
    progress.begin("Working out anchors and rods");
    auto worked = workOutAll(*candidates, derived, ground, made->closed, plan, progress);
    if (!worked) {
        return std::unexpected(worked.error());
    }
    planned.looked = candidates->size();
    planned.unanchorable = worked->refused;
    progress.begin("Ranking the marks");
    auto ranked = marks::rankMarks(input, plan, std::move(worked->candidates), {}, progress);
    if (!ranked) {
        return std::unexpected(ranked.error());
    }
    planned.marks = std::move(*ranked);
    for (marks::Mark& mark : planned.marks) {
        mark.near = nearestNamedPlace(water, mark.place);
    }
    planned.light =
        light::sunTimesOn(plan.day.day, plan.launch.value_or(water.frame->centre()), water.clock);
    tellOfTheLog(water, *log, input, planned);
    auto day = orderOf(water, derived, plan, planned, log->learned, progress);
    if (!day) {
        return std::unexpected(day.error());
    }
    planned.day = std::move(*day);
    layWays(planned.day, planned.marks, openWaterOf(made->today, made->closed),
            plan.launch ? std::optional(water.frame->toWater(*plan.launch)) : std::nullopt);
    planned.cautions = dayCautions(planned);
    planned.rules = rulesOfTheDay(water, planned);
    planned.fishCare = fishCare(planned);
    planned.refused = std::move(worked->pinned);
    return planned;
}

} // namespace water
