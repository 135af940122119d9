// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/spoken_names.h"

#include "app/wording/one_line.h"
#include "app/wording/section_words.h"
#include "app/wording/tongue.h"

#include <cmath>

namespace wording {

QString spoken(soundings::Verdict verdict) {
    using soundings::Verdict;
    switch (verdict) {
    case Verdict::kept:
        return Tongue::tr("kept");
    case Verdict::dropOut:
        return Tongue::tr("no echo");
    case Verdict::spike:
        return Tongue::tr("spike");
    case Verdict::doubleEcho:
        return Tongue::tr("double echo");
    case Verdict::stuckDepth:
        return Tongue::tr("depth stuck");
    case Verdict::positionJump:
        return Tongue::tr("position jumped");
    case Verdict::stuckPosition:
        return Tongue::tr("position stuck");
    case Verdict::outsideShore:
        return Tongue::tr("on land");
    case Verdict::disagrees:
        return Tongue::tr("other passes disagree");
    case Verdict::byHand:
        return Tongue::tr("by hand");
    }
    return {};
}

namespace {

/// N, NE, E and so on: as finely as somebody says where a mark lies.
units::Bearing toEighths(units::Bearing bearing) {
    constexpr double eighth_deg = 45.0;
    return units::Bearing::degrees(eighth_deg * std::round(bearing.inDegrees() / eighth_deg));
}

} // namespace

QString said(const marks::NearPlace& near, const Words& words) {
    // So near the place itself is meant. Our choice (no source).
    constexpr units::Length onThePlace = units::Length::metres(40.0);
    const QString name = oneLine(near.name);
    return near.distance <= onThePlace ? name
                                       : QStringLiteral("%1, %2 %3")
                                             .arg(name, words.roughLength(near.distance),
                                                  Words::windPoint(toEighths(near.bearing)));
}

QString calledBy(const marks::Mark& mark, const Words& words) {
    if (!mark.name.empty()) {
        return oneLine(mark.name);
    }
    return mark.near ? said(*mark.near, words) : nameCalled(mark.sectionName);
}

} // namespace wording
