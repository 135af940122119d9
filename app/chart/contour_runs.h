// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/path.h"
#include "core/units/depth.h"
#include "core/water/document/derived.h"

#include <memory>
#include <vector>

namespace chart {

/// A stretch of one contour that is either trusted or a guess all along.
struct ContourRun {
    units::Depth depth;
    geo::Path line;
    geo::Box box;
    bool isGuess = false;
};

/// The contours cut where they pass from what is known to what is a guess and back; made once for
/// each form of the water.
[[nodiscard]] std::shared_ptr<const std::vector<ContourRun>>
contourRuns(const water::Derived& derived);

} // namespace chart
