// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"
#include "core/anchoring/boat_settings.h"
#include "core/base/result.h"
#include "core/grid/depth_grid.h"

#include <cstdint>
#include <optional>

// Where a rope leads, and what is in its way: what laying anchors and judging laid ones share.
namespace anchoring {

inline constexpr double leastSternScope = 1.2; // below it the rope stands nearly upright

/// Why there is no lying so.
enum class Hindrance { none, land, rope };

/// One rope from its cleat to the bottom.
struct Rope {
    geo::WaterPoint cleat;
    units::Bearing towards;
    units::Length cleatHeight;
    units::Length available;
    double scope = 0.0;
};

/// The bottom, and where no boat may be; null where there is no such water.
struct Room {
    const grid::DepthGrid& depth;
    const grid::Grid<std::uint8_t>* closed;

    [[nodiscard]] bool isClosed(geo::WaterPoint p) const;
};

/// Open water deep enough to row over.
[[nodiscard]] std::optional<units::Depth> floating(const Room& room, geo::WaterPoint at,
                                                   units::Length draught);
/// All along the boat, so that nothing narrow lies under it between bow and stern.
[[nodiscard]] bool boatFloats(const Room& room, const Lie& lie, const BoatSettings& boat);

struct Landed {
    std::optional<Anchor> anchor;
    Hindrance hindrance = Hindrance::none;
};

/// The first place along the rope's way where the run to it is the run over the depth there. The
/// way is walked in small steps, because on a slope there may be several such places, and because
/// the boat has to float all along it.
[[nodiscard]] Landed landAnchor(const Room& room, const Rope& rope, units::Length draught);

/// What the circle of a boat at one anchor holds beside water to float in.
struct SwingRoom {
    bool isClosed = false; ///< Closed water reaches into it.
    bool isAshore = false; ///< Land does, or water too shallow to float.
};
[[nodiscard]] SwingRoom swingRoomAt(const Room& room, geo::WaterPoint anchor, units::Length radius,
                                    units::Length draught);

/// Bow rope out when the stern is above the stern anchor's place.
[[nodiscard]] units::Length fallBackRopeOf(const Anchor& bow, const Anchor& stern,
                                           const BoatSettings& boat);

/// \return wrongUse for a setting out of its range.
[[nodiscard]] base::Result<void> checkSettings(const BoatSettings& boat, const Weather& weather);

} // namespace anchoring
