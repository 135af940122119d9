// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/plan_day.h"

#include "core/marks/propose_marks.h"
#include "core/marks/rank_marks.h"
#include "core/marks/winds_of_day.h"
#include "core/water/document/stamp_values.h"
#include "core/water/steps/banned_places.h"
#include "core/water/steps/day_waves.h"
#include "core/water/steps/lay_out_day.h"
#include "core/water/steps/learn_log.h"
#include "core/water/steps/lie_at.h"
#include "core/water/steps/plan_notes.h"
#include "core/water/steps/stamps.h"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

namespace water {

using base::Progress;
using base::Result;

namespace {

/// Where a plan stands: what it is asked with, and what it works out or finds worked out.
struct PlanWork {
    const Water& water;
    const marks::Plan& plan;
    const DayGround& day;
    Workings& kept;
    Progress& progress;

    [[nodiscard]] LieWork lies() const { return {water, day, plan.tackle, progress}; }
};

/// The candidate with its ropes; nothing where no two anchors would hold the boat there in one of
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
    return !one.candidate.isPinned && isRough(one.waves) &&
           (!one.later || isRough(one.later->waves));
}

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

/// The same from what is kept, if it is there. What the user calls a place, and whether he put it
/// there, may have changed since.
Result<marks::WorkedCandidate> workedOut(const marks::Candidate& candidate, const PlanWork& work) {
    const std::pair place{candidate.place.x_m, candidate.place.y_m};
    if (laidAt(work.water, candidate) != nullptr) {
        return workOut(candidate, work); // What is kept knows nothing of the user's hand.
    }
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

struct Worked {
    std::vector<marks::WorkedCandidate> candidates;
    std::size_t refused = 0;
    std::string lastReason;
    std::vector<RefusedMark> pinned; ///< Of the user's own.
};

Result<Worked> workOutAll(const std::vector<marks::Candidate>& candidates, const PlanWork& work) {
    Worked worked;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        if (work.progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        work.progress.tell(static_cast<double>(i) / static_cast<double>(candidates.size()));
        auto one = workedOut(candidates[i], work);
        if (one && isTooRough(*one)) {
            ++worked.refused;
            worked.lastReason = fmt::format("waves of {:.2f} m", one->waves->height.inMetres());
        } else if (one) {
            worked.candidates.push_back(std::move(*one));
        } else if (one.error().kind == base::ErrorKind::unusableInput) {
            ++worked.refused;
            worked.lastReason = one.error().sentence();
            if (candidates[i].isPinned) {
                worked.pinned.push_back({candidates[i].name, one.error(),
                                         work.water.frame->toEarth(candidates[i].place)});
            }
        } else {
            return std::unexpected(one.error());
        }
    }
    if (worked.candidates.empty()) {
        return base::fail(
            base::ErrorKind::unusableInput,
            fmt::format("none of {} places holds the boat {} ({})", candidates.size(),
                        work.plan.tackle.toOneAnchor ? "at one anchor" : "between two anchors",
                        worked.lastReason),
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

Result<void> checkBefore(const Water& water, const Derived& derived) {
    if (!water.frame || !derived.outline || !derived.drawn || !derived.structure || !derived.weed ||
        !derived.sections) {
        return base::fail(base::ErrorKind::wrongUse,
                          "tomorrow cannot be planned before the water is drawn and divided", "",
                          "bring in soundings and draw the water first");
    }
    return {};
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

Result<std::vector<marks::Candidate>>
candidatesOf(const PlanWork& work, const marks::MarkInput& input, std::optional<Stamp> ground) {
    const auto stamp = stampOfPlaces(work.plan, ground);
    if (!stamp || work.kept.workedFrom != *stamp) {
        work.kept.worked.clear();
        work.kept.workedFrom = stamp.value_or(Stamp());
    }
    const auto open = withBans(stamp, work.water);
    const auto looked = keptOr(work.kept.looked, open, [&] {
        return sharedOf(marks::lookRound(input, work.plan, {}, work.progress));
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
    return marks::proposeMarks(input, work.plan, **looked, **prospects, pinnedOf(work.water), {},
                               work.progress);
}

/// Where the baits lie from a set of anchors.
marks::RodsFor rodsFrom(const PlanWork& work) {
    return [&work](geo::WaterPoint place, const anchoring::AnchorSet& anchors) {
        return rodsAt(anchors, laidAt(work.water, place), work.lies());
    };
}

/// How much water each condition leaves out.
Workings::Excluded excludedOf(const PlanWork& work, const marks::MarkInput& input,
                              std::optional<Stamp> ground) {
    const auto stamp = withBans(stampOfPlaces(work.plan, ground), work.water);
    return **keptOr(work.kept.excluded, stamp, [&] {
        return sharedOf(Result<Workings::Excluded>(marks::excludedAreas(input, work.plan, {})));
    });
}

} // namespace

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
    const auto candidates = candidatesOf(work, input, stamp);
    if (!candidates) {
        return std::unexpected(candidates.error());
    }
    progress.begin("Working out anchors");
    auto worked = workOutAll(*candidates, work);
    if (!worked) {
        return std::unexpected(worked.error());
    }
    planned.looked = candidates->size();
    planned.unanchorable = worked->refused;
    progress.begin("Ranking the marks and laying out rods");
    auto ranked =
        marks::rankMarks(input, plan, std::move(worked->candidates), {}, progress, rodsFrom(work));
    if (!ranked) {
        return std::unexpected(ranked.error());
    }
    planned.marks = std::move(*ranked);
    planned.excluded = excludedOf(work, input, stamp);
    tellOfTheLog(water, *log, input, planned);
    if (auto laid =
            layOutDay(water, work.day, input, log->learned, rodsFrom(work), planned, progress);
        !laid) {
        return std::unexpected(laid.error());
    }
    planned.refused = offTheWater(work);
    std::ranges::move(worked->pinned, std::back_inserter(planned.refused));
    return planned;
}

} // namespace water
