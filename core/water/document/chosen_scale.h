// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/derived.h"
#include "core/water/document/water.h"

namespace water {

/// The bands in force: the user's, or those chosen for the drawing.
[[nodiscard]] inline const contours::Bands& bandsOf(const Water& water, const Derived& derived) {
    return water.settings.bands ? *water.settings.bands : derived.bands;
}

/// The size of section in force.
[[nodiscard]] inline units::Area sectionAreaOf(const Water& water, const Derived& derived) {
    return water.settings.sectionArea.value_or(derived.sectionArea);
}

} // namespace water
