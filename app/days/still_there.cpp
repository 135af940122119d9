// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/still_there.h"

namespace days {

namespace {

/// Marks of two plans nearer than this are the same place.
constexpr double samePlace_m = 15.0;

} // namespace

std::optional<int> markStillThere(const chart::ChartContent& before, const water::PlannedDay* now) {
    if (now == nullptr || now->marks.empty()) {
        return std::nullopt;
    }
    if (before.planned && before.selection.mark) {
        for (const marks::Mark& old : before.planned->marks) {
            for (const marks::Mark& mark : now->marks) {
                if (old.rank == *before.selection.mark &&
                    geo::distance_m(old.place, mark.place) < samePlace_m) {
                    return mark.rank;
                }
            }
        }
    }
    return now->marks.front().rank;
}

std::optional<int> sectionStillThere(const chart::ChartContent& before,
                                     const sections::SectionMap* now) {
    const auto& old = before.derived.sections;
    const int chosen = before.selection.section.value_or(-1);
    if (!old || now == nullptr || chosen < 0 ||
        static_cast<std::size_t>(chosen) >= old->sections.size()) {
        return std::nullopt;
    }
    const sections::SectionNumber there =
        sections::sectionAt(*now, old->sections[static_cast<std::size_t>(chosen)].middle);
    return there == sections::noSection ? std::nullopt : std::optional(there);
}

} // namespace days
