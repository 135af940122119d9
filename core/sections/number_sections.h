// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/sections/numbering.h"
#include "core/sections/section.h"

#include <span>

namespace sections {

/// Gives each section its number and its name. A section has the number of the water that it
/// covers: of all ways to hand the known numbers out, each once, the one that leaves the most area
/// under the number it had. Numbers of earlier maps come back with their water, where none of the
/// latest map fits better. A number goes only to a section that shares at least half of the
/// smaller of the two waters; whatever is left has numbers that were never given before, in the
/// order of the list. The sections are put into the order of their numbers.
///
/// The name is the user's for that number; else one given to a place inside it, where the name's
/// own number is unknown or no longer on the map; else "Section 3".
void numberSections(SectionMap& map, const Numbering& known, std::span<const SectionName> names,
                    const geo::WaterFrame& frame);

/// What is known once the map has been shown: its numbers with the water they have now, those of
/// earlier maps with the water they had last; none is ever lost. The same map again adds nothing,
/// and has the same numbers by it.
[[nodiscard]] Numbering numberingAfter(const SectionMap& map, const Numbering& known,
                                       units::Area wantedArea, const geo::WaterFrame& frame);

} // namespace sections
