// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/sort_stays.h"

#include <algorithm>

namespace water {

StaySorter::StaySorter(const Water& water, From from, Sharing sharing, std::int64_t next)
    : known_(water, sharing), from_(from), next_(std::max(next, freshId(water))) {}

void StaySorter::take(logbook::Stay stay, std::size_t row, LogBroughtIn& brought) {
    const StayStanding standing = known_.standingOf(stay);
    switch (standing.is) {
    case StayStanding::Is::known:
        ++brought.known;
        return;
    case StayStanding::Is::doubtful:
        brought.doubtful.push_back({std::move(stay), *standing.of, row});
        return;
    case StayStanding::Is::update:
        ++(from_ == From::track ? brought.known : brought.updates);
        if (from_ == From::track) {
            return;
        }
        break;
    case StayStanding::Is::fresh:
        break;
    }
    giveIds(stay, standing.of.has_value());
    if (standing.of) {
        known_.take(updatedBy(*known_.find(*standing.of), stay));
    } else {
        known_.take(stay);
    }
    brought.stays.push_back(std::move(stay));
}

/// A stay keeps the number that it comes with, where it is to have one of its own and no other has
/// it.
void StaySorter::giveIds(logbook::Stay& stay, bool isUpdate) {
    if (isUpdate || !stay.id.isGiven() || known_.find(stay.id) != nullptr) {
        stay.id = logbook::StayId(next_++);
    }
    for (logbook::Fish& fish : stay.runs) {
        fish.id = logbook::FishId(next_++);
    }
}

base::Result<LogBroughtIn> sortStays(const Water& water, logbook::Log stays, Sharing sharing,
                                     std::int64_t next, base::Progress& progress) {
    constexpr std::size_t often = 1024;
    progress.begin("sorting the stays");
    LogBroughtIn brought;
    StaySorter sorter(water, StaySorter::From::log, sharing, next);
    std::size_t done = 0;
    for (logbook::Stay& stay : stays) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        if (++done % often == 0) {
            progress.tell(static_cast<double>(done) / static_cast<double>(stays.size()));
        }
        sorter.take(std::move(stay), 0, brought);
    }
    return brought;
}

} // namespace water
