// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/structure/zone_kinds.h"

#include <QPainterPath>

namespace chart {

/// How zones of a kind are filled on the chart.
enum class ZoneFill {
    none,
    hachures, ///< Strokes down the slope from its top.
    dots,
    strokes, ///< The kind's own sign, strewn.
};

/// The sign of a kind: its one row.
struct ZoneSign {
    structure::ZoneKind kind;
    ZoneFill fill;
    bool isNamed; ///< A large zone has its name on the chart, without being chosen.
    QPainterPath (*strokes)(
        double s); ///< Round the origin, for a scale of `s`; null without strokes.
};

[[nodiscard]] const ZoneSign& signOf(structure::ZoneKind kind);

} // namespace chart
