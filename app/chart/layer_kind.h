// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace chart {

/// The layers of the chart, from the bottom up.
enum class LayerKind {
    backdrop,  ///< A picture or lines from a file, under everything.
    depth,     ///< Bands of the depth ramp, faded where the depth is a guess.
    rates,     ///< Sections or zones shaded by what they gave.
    change,    ///< What the bottom has done since an earlier survey.
    contours,  ///< Lines of equal depth with their labels.
    structure, ///< Drop-offs, humps and the rest as drawn texture.
    weed,
    sections,
    closed,    ///< Closed water.
    graticule, ///< Meridians and parallels.
    soundings, ///< Tracks, and what is set aside.
    crossings,
    nextLines, ///< Where to sound next.
    places,    ///< Names of places, the launch.
    log,       ///< Stays and fish.
    marks,     ///< Marks; ropes and rods of the chosen one to scale.
    furniture, ///< Scale, north, wind, key.
};

inline constexpr std::array allLayerKinds{
    LayerKind::backdrop,  LayerKind::depth,     LayerKind::rates,     LayerKind::change,
    LayerKind::contours,  LayerKind::structure, LayerKind::weed,      LayerKind::sections,
    LayerKind::closed,    LayerKind::graticule, LayerKind::soundings, LayerKind::crossings,
    LayerKind::nextLines, LayerKind::places,    LayerKind::log,       LayerKind::marks,
    LayerKind::furniture};

/// Those that may be drawn fainter than they are: what neither warns nor tells where to anchor.
inline constexpr std::array fadingLayers{
    LayerKind::depth,     LayerKind::rates,     LayerKind::contours,
    LayerKind::structure, LayerKind::weed,      LayerKind::sections,
    LayerKind::graticule, LayerKind::soundings, LayerKind::crossings};

} // namespace chart
