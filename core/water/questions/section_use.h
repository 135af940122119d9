// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/rate.h"
#include "core/units/length.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <optional>
#include <vector>

namespace water {

/// What the log holds of one section, and how it lies to the wind of the day that is planned.
struct SectionUse {
    int stays = 0;
    int blanks = 0;           ///< Stays without a landed fish.
    rates::Tally tally;       ///< Landed fish and rod-hours of the stays in it.
    int effortUnknown = 0;    ///< Stays that are not in the tally: nobody noted their rods.
    double fishedShare = 0.0; ///< Share of its water within a cast of any stay.
    /// Effective fetch at its middle; nothing where nobody knows where the wind comes from.
    std::optional<units::Length> fetch;
    /// Significant height there, as on deep water; nothing where the wind is not known.
    std::optional<units::Length> waves;
};

/// One for each section, in the order of the map. \param derived made up to Step::sections; empty
/// where it is not.
[[nodiscard]] std::vector<SectionUse> useOfSections(const Water& water, const Derived& derived);

} // namespace water
