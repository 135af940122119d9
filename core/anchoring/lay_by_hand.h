// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/anchoring/boat_settings.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/grid/depth_grid.h"

#include <cstdint>
#include <optional>

namespace anchoring {

/// Where the user himself put the anchors; what is absent the program lands.
struct AnchorsByHand {
    std::optional<geo::WaterPoint> bow;
    std::optional<geo::WaterPoint> stern; ///< Of no account where the boat lies to one anchor.
    std::optional<units::Bearing>
        windFrom; ///< When they were laid; nothing where it was not known.

    [[nodiscard]] bool areAny() const { return bow.has_value() || stern.has_value(); }
};

/// The boat and her ropes where the user put anchors. With one of two put, the boat stays with her
/// middle on `mark`, in line with it, and the other is landed on the far side by its scope. With
/// both, she lies on the line between them, where it passes nearest to `mark`. To one anchor she
/// lies downwind of it, as far from it as the mark does. Ropes are as long as straight ones are.
/// What breaks the rules that placeAnchors() keeps to is laid all the same, and told in the
/// cautions.
/// \param mark where the boat is wanted. Grids as for placeAnchors(). \return unusableInput where
/// the boat fits nowhere between the anchors, or the other one cannot be landed; wrongUse for a
/// setting out of its range, or no anchor by hand; cancelled.
[[nodiscard]] base::Result<AnchorSet> layByHand(const grid::DepthGrid& depth,
                                                const grid::Grid<std::uint8_t>* closed,
                                                geo::WaterPoint mark, const AnchorsByHand& byHand,
                                                const Weather& weather, const BoatSettings& boat,
                                                base::Progress& progress);

} // namespace anchoring
