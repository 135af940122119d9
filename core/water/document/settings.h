// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/contours/band.h"
#include "core/contours/counts_in.h"
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
    /// The bands and their limit. Absent: chosen from the depths (Derived::bands).
    std::optional<contours::Bands> bands;
    /// The deepest depth worth fishing, where the bands are chosen for it. Absent: chosen too.
    std::optional<units::Depth> limit;
    /// What the steps that are chosen are round in.
    contours::CountsIn countsIn = contours::CountsIn::metres;
    /// Wanted size of a section, 0.1 to 1000 ha. Absent: chosen from the fishable area
    /// (Derived::sectionArea).
    std::optional<units::Area> sectionArea;
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
