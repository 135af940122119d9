// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/lie_hand.h"

#include "app/days/chart_link.h"
#include "app/days/tomorrow/steps.h"
#include "app/edits/lay_by_hand.h"
#include "app/edits/pin_mark.h"
#include "app/wording/cautions.h"
#include "app/wording/tongue.h"
#include "core/acts/plan.h"

#include <algorithm>

namespace days::tomorrow {

using chart::LiePart;

namespace {

/// The baits of the mark, as they were laid before, else as the program has them; in the order of
/// its rods.
std::vector<geo::LonLat> baitsOf(const water::LieTrial& trial) {
    std::vector<geo::LonLat> baits;
    for (const rods::RodPlace& rod : trial.mark().spread.rods) {
        baits.push_back(trial.water().frame->toEarth(rod.place));
    }
    return baits;
}

/// As the user's own mark, before the hand came to it.
water::PinnedMark pinOf(const water::LieTrial& trial, const water::Water& now) {
    const geo::LonLat at = pinnedPlaceOf(now, trial.mark());
    const auto pin = std::ranges::find(now.pinnedMarks, at, &water::PinnedMark::place);
    return pin == now.pinnedMarks.end() ? water::PinnedMark{trial.mark().name, at} : *pin;
}

/// With no other cautions than those that the hand can do something about.
marks::Mark ofTheHand(marks::Mark mark) {
    std::erase_if(mark.cautions, [](const marks::Caution& caution) {
        return !std::holds_alternative<marks::RoomForRods>(caution);
    });
    std::erase_if(mark.anchors.cautions, [](const anchoring::Caution& caution) {
        return std::holds_alternative<anchoring::HighWaves>(caution) ||
               std::holds_alternative<anchoring::ShortForTheWind>(caution) ||
               std::holds_alternative<anchoring::BowToOpenWater>(caution);
    });
    return mark;
}

QString actName(LiePart::Kind kind) {
    switch (kind) {
    case LiePart::Kind::boat:
        break;
    case LiePart::Kind::bow:
        return wording::Tongue::tr("Lay bow anchor");
    case LiePart::Kind::stern:
        return wording::Tongue::tr("Lay stern anchor");
    case LiePart::Kind::bait:
        return wording::Tongue::tr("Lay bait");
    }
    return {};
}

} // namespace

water::PinnedMark withPart(const water::LieTrial& trial, const water::Water& now,
                           const LiePart& part, geo::WaterPoint to) {
    const geo::LonLat place = trial.water().frame->toEarth(to);
    water::PinnedMark pin = pinOf(trial, now);
    switch (part.kind) {
    case LiePart::Kind::boat: {
        const geo::LonLat from = pin.place;
        pin.place = place;
        // What was laid of it goes along.
        if (const auto moved = acts::pinMark(now, from, {pin.name, place})) {
            const auto there =
                std::ranges::find(moved->pinnedMarks, place, &water::PinnedMark::place);
            pin = there == moved->pinnedMarks.end() ? pin : *there;
        }
        break;
    }
    case LiePart::Kind::bow:
        pin.laid.bow = place;
        pin.laid.windFrom = trial.wind().from;
        break;
    case LiePart::Kind::stern:
        pin.laid.stern = place;
        pin.laid.windFrom = trial.wind().from;
        break;
    case LiePart::Kind::bait:
        pin.laid.baits = baitsOf(trial);
        if (part.bait < pin.laid.baits.size()) {
            pin.laid.baits[part.bait] = place;
        }
        break;
    }
    return pin;
}

const water::LieTrial* LieHand::trialOf(int rank) {
    if (trial_ && trial_->mark().rank == rank) {
        return &*trial_;
    }
    trial_.reset();
    const auto planned = context_.open.planned();
    if (!planned) {
        return nullptr;
    }
    auto trial = water::LieTrial::of(context_.open.water(), context_.open.derived(), planned, rank);
    if (!trial) {
        emit context_.open.failed(trial.error());
        return nullptr;
    }
    trial_ = std::move(*trial);
    context_.chart.selectMark(rank);
    return &*trial_;
}

base::Result<marks::Mark> LieHand::tried(const LiePart& part, geo::WaterPoint at) {
    return trial_->with(withPart(*trial_, *context_.open.water(), part, at));
}

void LieHand::hold(const LiePart& part, geo::WaterPoint at) {
    const water::LieTrial* trial = trialOf(part.rank);
    if (trial == nullptr) {
        return;
    }
    // The cut leads along the cast of the bait that is held, and through both anchors else.
    const bool isBait = part.kind == LiePart::Kind::bait;
    context_.chart.selectRod(isBait ? std::optional(part.bait) : std::nullopt);
    const wording::Words words(context_.preferences.units());
    const auto mark = tried(part, at);
    chart::TriedLie lie;
    lie.boatLength = trial->planned().plan.tackle.boatLength;
    lie.mark = mark.value_or(trial->mark());
    if (mark) {
        lie.breaks = wording::cautionsOf(ofTheHand(*mark), words);
    } else {
        lie.cannot = wording::Tongue::sentence(mark.error());
    }
    context_.chart.setTried(std::move(lie));
}

void LieHand::drop(const LiePart& part, geo::WaterPoint to) {
    const water::LieTrial* trial = trialOf(part.rank);
    if (trial == nullptr) {
        return;
    }
    const water::Water& now = *context_.open.water();
    const geo::LonLat from = pinnedPlaceOf(now, trial->mark());
    water::PinnedMark pin = withPart(*trial, now, part, to);
    const auto mark = tried(part, to);
    const bool isBoat = part.kind == LiePart::Kind::boat;
    if (!isBoat && !mark) {
        context_.chart.setTried(std::nullopt);
        emit context_.open.failed(mark.error());
        trial_.reset();
        return;
    }
    if (isBoat) {
        edits::pinMark(context_.open, from, pin);
    } else {
        if (pin.laid.bow || pin.laid.stern) {
            pin.place = mark->lonLat; // The boat lies where the anchors hold her.
        }
        edits::layByHand(context_.open, actName(part.kind), from, pin);
    }
    trial_.reset();
    if (context_.open.isPlanCurrent()) {
        context_.chart.setTried(std::nullopt); // It came back to where it was.
    }
}

void LieHand::letGo() {
    trial_.reset();
    context_.chart.setTried(std::nullopt);
}

} // namespace days::tomorrow
