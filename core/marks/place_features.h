// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/factor.h"
#include "core/marks/surroundings.h"

#include <vector>

namespace marks {

/// The features of one place that one reason stands for.
struct FeaturePart {
    FactorKind kind = FactorKind::record;
    learning::Features features;
};

/// What the log is asked of a place, one part for each of depth, drop-off, weed edge, feature,
/// bottom, windward, hour and record, in this order. Kinds of bottom under the boat and within the
/// cast go to the reason that names them; depth goes with the temperature; the record is section,
/// season and place. The same of a stay and of a mark, so that one speaks of the other.
[[nodiscard]] std::vector<FeaturePart> placeFeaturesOf(const MarkInput& input,
                                                       const Surroundings& around,
                                                       geo::WaterPoint place,
                                                       const Circumstances& then);

/// All parts in one.
[[nodiscard]] learning::Features joined(const std::vector<FeaturePart>& parts);

/// The reason that names a kind of bottom.
[[nodiscard]] FactorKind reasonOf(structure::ZoneKind kind);

} // namespace marks
