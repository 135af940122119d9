// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/bottom_change.h"
#include "core/surface/drawn_water.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <optional>
#include <string>
#include <vector>

namespace water {

/// A mark of the user's own, in the later water or in the earlier, and what has become of it.
struct MarkThen {
    std::string name;
    geo::LonLat place;
    std::optional<units::Length> rise; ///< Of the bottom; nothing where not both hold a depth.
    units::Length halfWidth;           ///< The true rise is within plus or minus this.
    [[nodiscard]] bool isSure() const {
        return rise && std::abs(rise->inMetres()) > halfWidth.inMetres();
    }
};

/// One water as it was sounded twice, years apart.
struct YearsCompared {
    surface::BottomChange change; ///< On the cells of the later drawing.
    surface::ChangeSums sums;
    /// What all of it had in common and was taken off; nothing where nothing was.
    std::optional<units::Length> takenOff;
    std::vector<MarkThen>
        marks; ///< Of the later water, then those of the earlier that are not in it.
    std::size_t daysWithoutLevel = 0; ///< In both: then the whole of it may be a change of level.
};

/// What to make of what all of the bottom has in common.
enum class CommonRise {
    isChange,  ///< It is silt, or dug out.
    isOfLevel, ///< A level was noted wrongly: the median is taken off.
};

/// What has changed since an earlier survey, by the bottom's height on one gauge: both chart levels
/// are read on it. \return wrongUse where the later water is not drawn; what
/// surface::compareDrawings() returns.
[[nodiscard]] base::Result<YearsCompared> compareYears(const Water& later, const Derived& derived,
                                                       const Water& earlier,
                                                       const surface::DrawnWater& earlierDrawn,
                                                       CommonRise common, base::Progress& progress);

} // namespace water
