// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/contours/band.h"
#include "core/units/area.h"
#include "core/units/depth.h"
#include "core/units/length.h"

#include <optional>
#include <string>
#include <vector>

namespace water {

/// What the user wants otherwise about structure. Absent: as structure::StructureSettings has it,
/// or as the water itself leads to; the ranges are those of that too.
struct StructureChoice {
    std::optional<units::Length> fineScale;
    std::optional<units::Length> broadScale;
    std::optional<double> dropOffFrom_percent;
    std::optional<units::Length> highGround;
    std::optional<units::Area> leastArea;
    friend bool operator==(const StructureChoice&, const StructureChoice&) = default;
};

/// What the user may choose about the drawing and the dividing of one water. Each has a default
/// that suits a large stillwater; absent means "chosen from the data".
struct Settings {
    /// Side of a grid cell, 0.5 to 100 m. Absent: chosen from the soundings' spacing and the
    /// water's size.
    std::optional<units::Length> cell;
    /// The bands and the limit.
    contours::Bands bands;
    /// Wanted size of a section, 0.1 to 1000 ha. 4 ha (10 acres): what one boat can cover
    /// in one outing (ours).
    units::Area sectionArea = units::Area::hectares(4.0);
    /// Clarity of the water: depth at which a Secchi disc vanishes, 0.1 to 40 m. Absent: weed from
    /// notes alone.
    std::optional<units::Depth> secchi;
    /// How much of the summer's weed still stands, 0 to 1.
    double weedLeft = 1.0;
    StructureChoice structure;
    friend bool operator==(const Settings&, const Settings&) = default;
};

/// One sentence for each setting out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const Settings& settings);

} // namespace water
