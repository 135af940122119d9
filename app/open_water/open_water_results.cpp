// SPDX-License-Identifier: GPL-3.0-or-later
// What is made of the open water in the background, and whether it is of now or old.
#include "app/open_water/open_water.h"

#include "core/water/steps/derive.h"
#include "core/water/steps/note_numbers.h"
#include "core/water/steps/plan_day.h"

#include <utility>

namespace open_water {

using base::ErrorKind;
using base::Result;
using water::Derived;
using water::Step;
using water::Water;

namespace {

/// Derives up to a step; what is already there is kept.
jobs::JobRunner::Work<Derived> deriving(std::shared_ptr<const Water> water, Derived before,
                                        Step step) {
    return [water = std::move(water), before = std::move(before), step](base::Progress& progress) {
        return water::derive(*water, before, step, progress);
    };
}

/// Where nothing could be drawn, the map before stays to be looked at, with the stamps of what it
/// was drawn from.
Derived withOldMap(Derived made, const Derived& before) {
    if (!made.failures.contains(Step::draw) || made.drawn || !before.drawn) {
        return made;
    }
    made.drawn = before.drawn;
    made.form = before.form;
    made.today = before.today;
    made.structure = before.structure;
    made.weed = before.weed;
    made.sections = before.sections;
    for (const auto& [step, stamp] : before.stamps) {
        made.stamps.emplace(step, stamp);
    }
    return made;
}

} // namespace

const water::Stamps& OpenWater::wanted() const {
    if (wantedOf_ != water_) {
        wanted_ = water::Stamps::of(*water_);
        wantedOf_ = water_;
    }
    return wanted_;
}

bool OpenWater::isCurrent(Step step) const {
    return water_->frame && derived_.isCurrent(step, wanted().at(step));
}

Basis OpenWater::basisOfNow() const {
    return {wanted().ofPlan(), derived_};
}

bool OpenWater::isPlanCurrent() const {
    return planned_ && planBasis_ == basisOfNow();
}

bool OpenWater::isBeingMade() const {
    return jobs_.hasJob(tr("Drawing the water")) || jobs_.hasJob(tr("Working out tomorrow"));
}

void OpenWater::deriveUpTo(Step step) {
    if (water_->frame) {
        startDeriving(recent_.nearestTo(wanted()), step);
    }
}

void OpenWater::drawAfresh() {
    if (water_->frame) {
        startDeriving(water::withoutDrawing(derived_), Step::sections);
    }
}

void OpenWater::divideAfresh() {
    if (water_->frame && derived_.sections) {
        Water forgetful = *water_;
        forgetful.numbering.wantedArea = units::Area();
        water_ = std::make_shared<const Water>(std::move(forgetful));
        startDeriving(water::withoutSections(derived_), Step::sections);
    }
}

void OpenWater::startDeriving(Derived before, Step step) {
    jobs_.start<Derived>(
        tr("Drawing the water"), deriving(water_, std::move(before), step),
        [this, step, from = water_, waters = waters_](Result<Derived> made) {
            if (waters != waters_) {
                return;
            }
            if (!made) {
                if (made.error().kind != ErrorKind::cancelled) {
                    emit failed(made.error());
                }
                return tell(awaitingMap_, std::unexpected(made.error()));
            }
            takeDerived(std::move(*made));
            // Undone and done again while it ran: what came home was made from another water.
            const bool isOfNow = from == water_ || isCurrent(step);
            const bool isFarEnough = awaitingMap_.empty() || step == Step::sections;
            if (!isOfNow || !isFarEnough) {
                deriveUpTo(isFarEnough ? step : Step::sections);
            } else if (isCurrent(Step::sections)) {
                tell(awaitingMap_, {});
            } else if (!derived_.failures.empty()) {
                tell(awaitingMap_, std::unexpected(derived_.failures.begin()->second));
            }
        });
}

void OpenWater::noteNumbers(Derived& derived) {
    if (!derived.sections || derived.sections == derived_.sections) {
        return;
    }
    Water numbered = *water_;
    if (water::noteNumbers(numbered, derived)) {
        water_ = std::make_shared<const Water>(std::move(numbered));
        if (!isReadOnly()) {
            keeper_.keep(water_, {water::Part::numbering});
        }
    }
}

void OpenWater::takeDerived(Derived derived) {
    noteNumbers(derived);
    recent_.remember(derived);
    derived_ = withOldMap(std::move(derived), derived_);
    if (isCurrent(Step::reduce)) {
        keepFound();
    }
    emit derivedChanged();
}

void OpenWater::planTomorrow() {
    using Both = std::pair<Derived, std::shared_ptr<const water::PlannedDay>>;
    const auto work = [water = water_, before = recent_.nearestTo(wanted()),
                       workings = workings_](base::Progress& progress) -> Result<Both> {
        auto derived = water::derive(*water, before, Step::sections, progress);
        if (!derived) {
            return std::unexpected(derived.error());
        }
        auto planned = water::planDay(*water, *derived, water->plan, progress, workings.get());
        if (!planned) {
            return std::unexpected(planned.error());
        }
        return Both{std::move(*derived),
                    std::make_shared<const water::PlannedDay>(std::move(*planned))};
    };
    jobs_.start<Both>(tr("Working out tomorrow"), work,
                      [this, from = water_, waters = waters_](Result<Both> made) {
                          if (waters != waters_) {
                              return;
                          }
                          const bool wasStopped =
                              !made && made.error().kind == ErrorKind::cancelled;
                          if (made) {
                              takePlan(std::move(made->first), std::move(made->second));
                          } else if (from == water_ || wasStopped) {
                              return takeNoPlan(made.error());
                          }
                          // The water was changed while it ran: until this is done again, what came
                          // home is old.
                          isPlanCurrent() ? tell(awaitingPlan_, {}) : planTomorrow();
                      });
}

void OpenWater::takePlan(Derived derived, std::shared_ptr<const water::PlannedDay> planned) {
    planned_ = std::move(planned);
    planBasis_ = Basis(planned_->madeFrom, derived);
    whyNoPlan_.reset();
    // A map of the water as it is now is not given up for another: the plan is made again on it.
    const bool isSameMap = derived.drawn == derived_.drawn && derived.sections == derived_.sections;
    if (isSameMap || !isCurrent(Step::sections)) {
        takeDerived(std::move(derived));
    }
    emit plannedChanged();
}

void OpenWater::takeNoPlan(const base::Error& error) {
    if (error.kind != ErrorKind::cancelled) {
        whyNoPlan_ = error;
        emit failed(error);
    }
    tell(awaitingPlan_, std::unexpected(error));
}

void OpenWater::whenPlanIsCurrent(WhenCurrent then) {
    if (isPlanCurrent()) {
        then({});
        return;
    }
    awaitingPlan_.push_back(std::move(then));
    planTomorrow();
}

void OpenWater::whenMapIsCurrent(WhenCurrent then) {
    if (isCurrent(Step::sections)) {
        then({});
        return;
    }
    if (!water_->frame) {
        then(base::fail(ErrorKind::wrongUse, "the water is not drawn yet", {},
                        "bring in a log of soundings first"));
        return;
    }
    awaitingMap_.push_back(std::move(then));
    deriveUpTo(Step::sections);
}

void OpenWater::tell(std::vector<WhenCurrent>& waiting, const Result<void>& outcome) {
    for (const WhenCurrent& then : std::exchange(waiting, {})) {
        then(outcome);
    }
}

void OpenWater::tellStopped() {
    // Nothing runs any more that could still bring what is waited for.
    if (!jobs_.isBusy()) {
        tell(awaitingPlan_, std::unexpected(base::cancelled()));
        tell(awaitingMap_, std::unexpected(base::cancelled()));
    }
}

} // namespace open_water
