// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/spoken_names.h"

namespace wording {

QString spoken(soundings::Verdict verdict) {
    using soundings::Verdict;
    switch (verdict) {
    case Verdict::kept:
        return QStringLiteral("kept");
    case Verdict::dropOut:
        return QStringLiteral("no echo");
    case Verdict::spike:
        return QStringLiteral("spike");
    case Verdict::doubleEcho:
        return QStringLiteral("double echo");
    case Verdict::stuckDepth:
        return QStringLiteral("depth stuck");
    case Verdict::positionJump:
        return QStringLiteral("position jumped");
    case Verdict::stuckPosition:
        return QStringLiteral("position stuck");
    case Verdict::outsideShore:
        return QStringLiteral("on land");
    case Verdict::disagrees:
        return QStringLiteral("other passes disagree");
    case Verdict::byHand:
        return QStringLiteral("by hand");
    }
    return {};
}

QString calledBy(const marks::Mark& mark, const Words& words) {
    // So near the place itself is meant. Our choice (no source).
    constexpr units::Length onThePlace = units::Length::metres(40.0);
    if (!mark.name.empty()) {
        return QString::fromStdString(mark.name);
    }
    if (!mark.near) {
        return QString::fromStdString(mark.sectionName);
    }
    const QString name = QString::fromStdString(mark.near->name);
    return mark.near->distance <= onThePlace ? name
                                             : QStringLiteral("%1, %2 %3")
                                                   .arg(name, words.length(mark.near->distance),
                                                        Words::windPoint(mark.near->bearing));
}

} // namespace wording
