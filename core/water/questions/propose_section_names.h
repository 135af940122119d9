// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/bearing.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <optional>
#include <string>
#include <vector>

namespace water {

/// What a section may be called: by a named place of the chart.
struct SectionNameProposal {
    std::string place;
    std::optional<units::Bearing> towards; ///< Which way from the place it lies; nothing: round it.
    friend bool operator==(const SectionNameProposal&, const SectionNameProposal&) = default;
};

/// A proposal for each section, in the order of the list; nothing where no named place is near, and
/// where the name would be that of another section. The section that holds a place is called by it
/// alone; others by the nearest place within 250 m of their middle, or within their own size, and
/// by which of eight ways they lie from it. Of two that would be called alike the nearer has the
/// name. Nothing at all without sections.
[[nodiscard]] std::vector<std::optional<SectionNameProposal>>
proposeSectionNames(const Water& water, const Derived& derived);

/// One of eight, 0 for north, clockwise: 22.5 degrees to either side.
[[nodiscard]] int eighthOf(units::Bearing bearing);

} // namespace water
