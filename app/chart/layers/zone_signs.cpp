// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/zone_signs.h"

namespace chart {

using structure::ZoneKind;

namespace {

/// A small bowl.
QPainterPath bowl(double s) {
    QPainterPath sign;
    sign.moveTo(-3.0 * s, -1.5 * s);
    sign.quadTo(0.0, 3.5 * s, 3.0 * s, -1.5 * s);
    return sign;
}

QPainterPath groove(double s) {
    QPainterPath sign;
    sign.moveTo(-3.0 * s, -2.0 * s);
    sign.lineTo(0.0, 1.5 * s);
    sign.lineTo(3.0 * s, -2.0 * s);
    return sign;
}

QPainterPath ridge(double s) {
    QPainterPath sign;
    sign.moveTo(-3.0 * s, 2.0 * s);
    sign.lineTo(0.0, -1.5 * s);
    sign.lineTo(3.0 * s, 2.0 * s);
    return sign;
}

QPainterPath twoBows(double s) {
    QPainterPath sign;
    sign.moveTo(-3.0 * s, -2.0 * s);
    sign.quadTo(0.0, 1.0 * s, 3.0 * s, -2.0 * s);
    sign.moveTo(-3.0 * s, 2.5 * s);
    sign.quadTo(0.0, -0.5 * s, 3.0 * s, 2.5 * s);
    return sign;
}

QPainterPath levelGround(double s) {
    QPainterPath sign;
    sign.moveTo(-2.5 * s, 0.0);
    sign.lineTo(2.5 * s, 0.0);
    return sign;
}

/// The two kinds that weed makes are drawn by its own layer.
constexpr std::array signTable{ZoneSign{ZoneKind::dropOff, ZoneFill::hachures, false, nullptr},
                               ZoneSign{ZoneKind::shelf, ZoneFill::strokes, true, &levelGround},
                               ZoneSign{ZoneKind::plateau, ZoneFill::strokes, true, &levelGround},
                               ZoneSign{ZoneKind::hump, ZoneFill::dots, true, nullptr},
                               ZoneSign{ZoneKind::hole, ZoneFill::strokes, true, &bowl},
                               ZoneSign{ZoneKind::trough, ZoneFill::strokes, true, &groove},
                               ZoneSign{ZoneKind::spur, ZoneFill::strokes, true, &ridge},
                               ZoneSign{ZoneKind::saddle, ZoneFill::strokes, true, &twoBows},
                               ZoneSign{ZoneKind::flat, ZoneFill::none, false, nullptr},
                               ZoneSign{ZoneKind::weedBed, ZoneFill::none, true, nullptr},
                               ZoneSign{ZoneKind::weedEdge, ZoneFill::none, true, nullptr}};
static_assert(structure::hasEveryKind(signTable));

} // namespace

const ZoneSign& signOf(ZoneKind kind) {
    return signTable[static_cast<std::size_t>(kind)];
}

} // namespace chart
