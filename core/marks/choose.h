// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_point.h"
#include "core/sections/section.h"

#include <cstddef>
#include <vector>

namespace marks {

/// One thing that may be chosen for the list.
struct Eligible {
    geo::WaterPoint place;
    double score = 0.0;
    sections::SectionNumber section = sections::noSection;
    bool isPinned = false;
};

/// What the list must keep to.
struct ChoiceRules {
    std::size_t count = 0;         ///< Longest list; pinned ones may make it longer.
    double apart_m = 0.0;          ///< Least distance between two that are not both pinned.
    std::size_t mostInSection = 0; ///< Pinned ones count; places in no section are not capped.
};

/// True where `next` may join those chosen.
[[nodiscard]] bool fits(const std::vector<Eligible>& all, const std::vector<std::size_t>& chosen,
                        std::size_t next, const ChoiceRules& rules);

/// Positions, ascending, of the best list: pinned ones always, then greedily by score.
/// \param sorted by falling score.
[[nodiscard]] std::vector<std::size_t> chooseGreedily(const std::vector<Eligible>& sorted,
                                                      const ChoiceRules& rules);

/// The same with the greatest sum of scores of all lists that keep the rules, by branch and bound.
/// For up to some twenty.
[[nodiscard]] std::vector<std::size_t> chooseExactly(const std::vector<Eligible>& sorted,
                                                     const ChoiceRules& rules);

/// `chosen` with what fits when the cap of sections is lifted, best first, while the list is short.
[[nodiscard]] std::vector<std::size_t> filledUp(std::vector<std::size_t> chosen,
                                                const std::vector<Eligible>& sorted,
                                                const ChoiceRules& rules);

} // namespace marks
