// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/plan_day.h"

#include "core/marks/propose_marks.h"
#include "core/marks/rank_marks.h"
#include "core/water/document/stamp_values.h"
#include "core/water/steps/anchor_ground.h"
#include "core/water/steps/banned_places.h"
#include "core/water/steps/day_waves.h"
#include "core/water/steps/lay_out_day.h"
#include "core/water/steps/learn_log.h"
#include "core/water/steps/plan_notes.h"
#include "core/water/steps/stamps.h"
#include "core/water/steps/work_out_places.h"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

namespace water {

using base::Progress;
using base::Result;

namespace {

/// Own marks that lie on no water today: nothing can be worked out for them.
std::vector<RefusedMark> offTheWater(const PlanWork& work) {
    std::vector<RefusedMark> off;
    for (const PinnedMark& mark : work.water.pinnedMarks) {
        if (!work.day.ground().depthAt(work.water.frame->toWater(mark.place))) {
            off.push_back(
                {mark.name,
                 {base::ErrorKind::unusableInput, "it lies on no water of this chart today",
                  "marks", "put it on the water, or let it go"},
                 mark.place});
        }
    }
    return off;
}

std::vector<marks::Candidate> pinnedOf(const Water& water) {
    std::vector<marks::Candidate> pinned;
    for (const PinnedMark& mark : water.pinnedMarks) {
        pinned.push_back({water.frame->toWater(mark.place), 1.0, true, mark.name});
    }
    return pinned;
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

/// A launch is a slip or a stage on the bank: one far from it is a slip in its position.
Result<void> checkLaunch(const Water& water, const geo::Outline& outline, const marks::Plan& plan) {
    const units::Length away =
        plan.launch ? ashore(*water.frame, outline, *plan.launch) : units::Length::metres(0.0);
    if (away <= farthestLaunch) {
        return {};
    }
    const double away_m = away.inMetres();
    const std::string far = away_m < 1000.0 ? fmt::format("{:.0f} m", away_m)
                                            : fmt::format("{:.1f} km", away_m / 1000.0);
    return base::fail(base::ErrorKind::unusableInput, "the launch lies " + far + " from this water",
                      "launch", "put it on the bank, or plan without one");
}

/// What the bottom of the day is made from; without a stamp of the sections nothing can be kept.
std::optional<Stamp> stampOfGround(const Water& water, const Derived& derived,
                                   const marks::Plan& plan) {
    const auto sections = derived.stamps.find(Step::sections);
    if (sections == derived.stamps.end()) {
        return std::nullopt;
    }
    Stamp stamp;
    stamp.take(sections->second).take(plan.day.levelChange.inMetres());
    take(stamp, water.houseRules);
    return stamp;
}

template <class T>
Result<std::shared_ptr<const T>> sharedOf(Result<T> made) {
    if (!made) {
        return std::unexpected(std::move(made.error()));
    }
    return std::make_shared<const T>(std::move(*made));
}

/// What stands on the log as well.
std::optional<Stamp> withLog(std::optional<Stamp> stamp, const Kept<FittedLog>& log) {
    if (stamp) {
        stamp->take(log.from.value());
    }
    return stamp;
}

/// What is made anew where it does not stand on just this.
template <class T, class Make>
Result<std::shared_ptr<const T>> keptOr(Kept<T>& kept, std::optional<Stamp> from, Make make) {
    if (!from || !kept.holds(*from)) {
        auto made = make();
        if (!made) {
            return std::unexpected(made.error());
        }
        kept = {from.value_or(Stamp()), std::move(*made)};
    }
    return kept.what;
}

Result<std::shared_ptr<const DayGround>> groundOf(const Water& water, const Derived& derived,
                                                  const marks::Plan& plan, Workings& workings) {
    return keptOr(workings.ground, stampOfGround(water, derived, plan),
                  [&] { return DayGround::make(water, derived, plan.day.levelChange); });
}

Result<LearnedLog> logOf(const PlanWork& work, const marks::MarkInput& input,
                         std::optional<Stamp> ground) {
    if (ground) {
        const std::chrono::sys_days day = work.plan.day.day;
        ground->take(day.time_since_epoch().count())
            .take(std::string_view(work.water.clock.zone()))
            .take(work.plan.tackle.cast.inMetres())
            .take(effortOf(work.water.log));
    }
    const auto fitted = keptOr(work.kept.log, ground, [&] {
        return sharedOf(fitLog(work.water, input, work.plan, work.progress));
    });
    if (!fitted) {
        return std::unexpected(fitted.error());
    }
    return learnedFor(**fitted, work.plan);
}

/// What places, ropes and rods stand on: all but log, launch and what matters to the user.
std::optional<Stamp> stampOfPlaces(const marks::Plan& plan, std::optional<Stamp> ground) {
    if (ground) {
        marks::Plan places;
        places.day = plan.day;
        places.tackle = plan.tackle;
        take(*ground, places);
    }
    return ground;
}

/// The same, and where the user wants no mark: ropes hold there as well as elsewhere.
std::optional<Stamp> withBans(std::optional<Stamp> places, const Water& water) {
    if (places) {
        take(*places, water.banned);
    }
    return places;
}

Result<std::vector<marks::Candidate>> candidatesOf(const PlanWork& work,
                                                   const marks::MarkInput& input,
                                                   std::optional<Stamp> ground,
                                                   TriedPlaces& tried) {
    const auto stamp = stampOfPlaces(work.plan, ground);
    if (!stamp || work.kept.workedFrom != *stamp) {
        work.kept.worked.clear();
        work.kept.workedFrom = stamp.value_or(Stamp());
    }
    const auto open = withBans(stamp, work.water);
    const auto lying = keptOr(work.kept.lying, open, [&] {
        return sharedOf(marks::LyingCells::of(input, work.plan, {}, work.progress));
    });
    if (!lying) {
        return std::unexpected(lying.error());
    }
    const auto looked = keptOr(work.kept.looked, open, [&] {
        return sharedOf(marks::lookRound(input, work.plan, {}, **lying, work.progress));
    });
    if (!looked) {
        return std::unexpected(looked.error());
    }
    const auto prospects = keptOr(work.kept.prospects, withLog(open, work.kept.log), [&] {
        return sharedOf(marks::prospectsOf(input, work.plan, **looked, work.progress));
    });
    if (!prospects) {
        return std::unexpected(prospects.error());
    }
    return marks::proposeMarks(
        input, work.plan, **looked, **prospects, pinnedOf(work.water), {}, work.progress,
        [&tried](const marks::Candidate& candidate) { return tried.holds(candidate); });
}

/// Candidates that hold, with their ropes.
Result<Worked> workedOf(const PlanWork& work, const std::vector<marks::Candidate>& candidates,
                        const TriedPlaces& tried) {
    auto worked = workOutAll(candidates, work);
    if (worked && worked->candidates.empty()) {
        const std::string why =
            worked->pinned.empty() ? tried.lastReason() : worked->pinned.back().why.sentence();
        return base::fail(
            base::ErrorKind::unusableInput,
            fmt::format(
                "none of {} places holds the boat {} ({})", tried.count() + worked->pinned.size(),
                work.plan.tackle.toOneAnchor ? "at one anchor" : "between two anchors", why),
            "", "take more rope, a smaller scope, or another limit of depth");
    }
    return worked;
}

} // namespace

units::Length ashore(const geo::WaterFrame& frame, const geo::Outline& outline,
                     geo::LonLat launch) {
    // Of no water, a shore lies so far from the middle; beyond it a flat frame means ever less.
    constexpr units::Length farOff = units::Length::kilometres(1000.0);
    const units::Length overTheEarth = geo::courseBetween(frame.centre(), launch).distance;
    if (overTheEarth > farOff) {
        return overTheEarth;
    }
    const geo::WaterPoint place = frame.toWater(launch);
    return units::Length::metres(outline.contains(place) ? 0.0 : outline.distanceToShore_m(place));
}

Result<PlannedDay> planDay(const Water& water, const Derived& derived, const marks::Plan& asked,
                           Progress& progress, Workings* workings) {
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
    if (auto near = checkLaunch(water, *derived.outline, plan); !near) {
        return std::unexpected(near.error());
    }
    Workings ownWorkings;
    Workings& kept = workings != nullptr ? *workings : ownWorkings;
    const auto ground = groundOf(water, derived, plan, kept);
    if (!ground) {
        return std::unexpected(ground.error());
    }
    const auto banned = BannedPlaces::of(water);
    if (!banned) {
        return std::unexpected(banned.error());
    }
    const PlanWork work{water, plan, **ground, kept, progress};
    WavesOfWinds waves(*derived.outline, work.day.today(), plan.day);
    marks::MarkInput input = work.day.input(water);
    if (banned->areAny()) {
        input.bannedAt = [&banned](geo::WaterPoint p) { return banned->at(p); };
    }
    if (waves.areAny()) {
        input.wavesNear = [&waves](geo::WaterPoint p) { return waves.near(p); };
    }
    if (waves.mayExceed(marks::ProposeSettings().roughest)) {
        input.waveHeightAt = [&waves](geo::WaterPoint p) { return waves.lowestNear(p); };
    }
    const auto stamp = stampOfGround(water, derived, plan);
    progress.begin("Reading the log");
    const auto log = logOf(work, input, stamp);
    if (!log) {
        return std::unexpected(log.error());
    }
    input.learned = log->learned ? &*log->learned : nullptr;
    progress.begin("Looking for marks");
    TriedPlaces tried(work);
    const auto candidates = candidatesOf(work, input, stamp, tried);
    if (!candidates) {
        return std::unexpected(candidates.error());
    }
    progress.begin("Working out anchors");
    auto worked = workedOf(work, *candidates, tried);
    if (!worked) {
        return std::unexpected(worked.error());
    }
    planned.looked = worked->candidates.size() + worked->pinned.size() + tried.refused();
    planned.unanchorable = worked->pinned.size() + tried.refused();
    progress.begin("Ranking the marks and laying out rods");
    auto ranked =
        marks::rankMarks(input, plan, std::move(worked->candidates), {}, progress, rodsFrom(work));
    if (!ranked) {
        return std::unexpected(ranked.error());
    }
    planned.marks = std::move(*ranked);
    planned.excluded = kept.lying.what->excludedAreas();
    tried.addTo(planned.excluded, *kept.lying.what,
                plan.tackle.cast * marks::ProposeSettings().leastApart);
    tellOfTheDrawing(derived.drawn->report, planned);
    tellOfTheLog(water, *log, input, planned);
    if (auto laid =
            layOutDay(water, work.day, input, log->learned, rodsFrom(work), planned, progress);
        !laid) {
        return std::unexpected(laid.error());
    }
    tellOfAnchorGround(water, work.day, planned.marks);
    planned.refused = offTheWater(work);
    std::ranges::move(worked->pinned, std::back_inserter(planned.refused));
    return planned;
}

} // namespace water
