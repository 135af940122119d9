// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/swap_parts.h"

#include <tuple>
#include <utility>

namespace water {

namespace {

/// Calls `take` with each member that the part consists of, of both waters.
template <class A, class B, class Take>
void forMembers(A& a, B& b, Part part, const Take& take) {
    switch (part) {
    case Part::facts:
        take(a.name, b.name);
        take(a.clock, b.clock);
        take(a.chartLevel, b.chartLevel);
        take(a.frame, b.frame);
        take(a.places, b.places);
        take(a.settings, b.settings);
        return;
    case Part::shoreline:
        take(a.shoreline, b.shoreline);
        return;
    case Part::days:
        take(a.days, b.days);
        return;
    case Part::leadLine:
        take(a.leadLine, b.leadLine);
        return;
    case Part::weedNotes:
        take(a.weedNotes, b.weedNotes);
        return;
    case Part::houseRules:
        take(a.houseRules, b.houseRules);
        return;
    case Part::sections:
        take(a.sectionNames, b.sectionNames);
        take(a.sectionChanges, b.sectionChanges);
        return;
    case Part::numbering:
        take(a.numbering, b.numbering);
        return;
    case Part::plan:
        take(a.plan, b.plan);
        take(a.pinnedMarks, b.pinnedMarks);
        take(a.banned, b.banned);
        take(a.beliefProfiles, b.beliefProfiles);
        take(a.dayByHand, b.dayByHand);
        return;
    case Part::sheets:
        take(a.sheets, b.sheets);
        return;
    case Part::log:
        take(a.log, b.log);
        return;
    }
}

} // namespace

void swapParts(Water& a, Water& b, std::span<const Part> parts) {
    for (const Part part : parts) {
        forMembers(a, b, part, [](auto& x, auto& y) { std::swap(x, y); });
    }
}

Water copyOfParts(const Water& water, std::span<const Part> parts) {
    Water copy;
    for (const Part part : parts) {
        forMembers(copy, water, part, [](auto& x, const auto& y) { x = y; });
    }
    return copy;
}

std::vector<Part> differingParts(const Water& a, const Water& b) {
    std::vector<Part> differing;
    for (const Part part : allParts) {
        bool isSame = true;
        forMembers(a, b, part,
                   [&isSame](const auto& x, const auto& y) { isSame = isSame && x == y; });
        if (!isSame) {
            differing.push_back(part);
        }
    }
    return differing;
}

} // namespace water
