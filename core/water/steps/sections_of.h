// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <optional>

namespace water {

/// The water divided into sections, with what the user changed about them made again. \param
/// derived with all that stands before Step::sections. \return the error of
/// sections::divideWater(), or of closed water that cannot be.
[[nodiscard]] base::Result<sections::SectionMap>
sectionsOf(const Water& water, const Derived& derived, const std::optional<geo::WaterPoint>& launch,
           base::Progress& progress);

} // namespace water
