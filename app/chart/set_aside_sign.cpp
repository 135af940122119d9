// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/set_aside_sign.h"

#include "app/chart/boat_drawing.h"

namespace chart {

std::optional<ReasonFamily> familyOf(soundings::Verdict verdict) {
    switch (verdict) {
    case soundings::Verdict::kept:
        return std::nullopt;
    case soundings::Verdict::dropOut:
    case soundings::Verdict::spike:
    case soundings::Verdict::doubleEcho:
    case soundings::Verdict::stuckDepth:
        return ReasonFamily::echo;
    case soundings::Verdict::positionJump:
    case soundings::Verdict::stuckPosition:
    case soundings::Verdict::outsideShore:
        return ReasonFamily::position;
    case soundings::Verdict::disagrees:
    case soundings::Verdict::byHand:
        return ReasonFamily::others;
    }
    return std::nullopt;
}

void addSign(QPainterPath& path, ReasonFamily family, QPointF at, double arm) {
    switch (family) {
    case ReasonFamily::echo:
        path.addPath(crossShape(at, arm));
        break;
    case ReasonFamily::position:
        path.moveTo(at - QPointF(1.3 * arm, 0.0));
        path.lineTo(at + QPointF(1.3 * arm, 0.0));
        path.moveTo(at - QPointF(0.0, 1.3 * arm));
        path.lineTo(at + QPointF(0.0, 1.3 * arm));
        break;
    case ReasonFamily::others:
        path.addRect(at.x() - arm, at.y() - arm, 2.0 * arm, 2.0 * arm);
        break;
    }
}

QColor colourOf(const Palette& palette, ReasonFamily family) {
    switch (family) {
    case ReasonFamily::echo:
        return palette.rust;
    case ReasonFamily::position:
        return palette.plum;
    case ReasonFamily::others:
        break;
    }
    return palette.ink;
}

} // namespace chart
