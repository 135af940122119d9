// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/zone.h"
#include "core/water/document/derived.h"

#include <vector>

namespace water {

/// How much of a section is of one kind of structure.
struct KindShare {
    structure::ZoneKind kind = structure::ZoneKind::flat;
    double share = 0.0; ///< Of its cells, above 0 and up to 1.
};

/// The kinds of structure in each section, in the order of structure::allZoneKinds, kinds that are
/// not in it left out. One entry for each section of the map; empty without structure or sections.
[[nodiscard]] std::vector<std::vector<KindShare>> groundOfSections(const Derived& derived);

} // namespace water
