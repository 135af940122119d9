// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/zone_kinds.h"

#include <QString>

namespace wording {

/// A kind of bottom in a sentence: "drop-off", "weed bed".
[[nodiscard]] QString spoken(structure::ZoneKind kind);
/// What it is, in a sentence: the help of a zone that is chosen.
[[nodiscard]] QString meaningOf(structure::ZoneKind kind);
/// All kinds of a family, one of each: "hump, hole, spur or saddle".
[[nodiscard]] QString anyOf(structure::KindFamily family);
/// The same, many of each: "humps, holes, spurs and saddles".
[[nodiscard]] QString allOf(structure::KindFamily family);

} // namespace wording
