// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/marks/mark.h"

#include <QStringList>

namespace wording {

// How a boat comes to lie at her mark, in words.

/// "Heading 300°. Bow down, fall back on 31 m, stern down, haul the bow rope in to 20 m."; to one
/// anchor "Heading 300°. Bow down, 20 m of rope. She swings within 23 m of it."
[[nodiscard]] QString howToLie(const marks::Mark& mark, const Words& words);
/// How far she swings, in a sentence; empty between two anchors.
[[nodiscard]] QString swingOf(const marks::Mark& mark, const Words& words);
/// "bow anchor and baits laid by hand"; empty where the program laid all of it.
[[nodiscard]] QString laidByHand(const marks::Mark& mark);
/// Both anchors with place, depth and rope, and each rod: "rod 1: 045°, 22 m, knot at 6.4 m".
[[nodiscard]] QStringList lieLines(const marks::Mark& mark, const Words& words);

} // namespace wording
