// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/lie_words.h"

#include "app/wording/tongue.h"

#include <algorithm>

namespace wording {

namespace {

constexpr double anywhere_deg = 180.0;

QString anchorLine(const QString& name, const anchoring::Anchor& anchor, const Words& words) {
    return Tongue::tr("%1 anchor in %2, rope %3%4")
        .arg(name, words.depth(anchor.depth), words.length(anchor.rope),
             anchor.isByHand ? Tongue::tr(", laid by hand") : QString());
}

} // namespace

QString swingOf(const marks::Mark& mark, const Words& words) {
    const auto& swing = mark.anchors.swing;
    if (!swing) {
        return {};
    }
    const QString within =
        Tongue::tr("She swings within %1 of the anchor").arg(words.length(swing->radius));
    return swing->toEachSide_deg < anywhere_deg
               ? within + Tongue::tr("; baits are laid for %1° to either side.")
                              .arg(Tongue::number(swing->toEachSide_deg, 0))
               : within + Tongue::tr(", to any side: nobody knows to "
                                     "which, and no bait is sure.");
}

QString howToLie(const marks::Mark& mark, const Words& words) {
    const anchoring::AnchorSet& set = mark.anchors;
    if (!set.stern) {
        return Tongue::tr("Heading %1. Bow down, %2 of rope. %3")
            .arg(Words::bearing(set.lie.heading), words.length(set.bow.rope), swingOf(mark, words));
    }
    return Tongue::tr("Heading %1. Bow down, fall back on %2, stern down, haul the bow rope "
                      "in to %3.")
        .arg(Words::bearing(set.lie.heading), words.length(set.fallBackRope),
             words.length(set.bow.rope));
}

QString laidByHand(const marks::Mark& mark) {
    QStringList parts;
    if (mark.anchors.bow.isByHand) {
        parts += Tongue::tr("bow anchor");
    }
    if (mark.anchors.stern && mark.anchors.stern->isByHand) {
        parts += Tongue::tr("stern anchor");
    }
    if (std::ranges::any_of(mark.spread.rods, &rods::RodPlace::isByHand)) {
        parts += Tongue::tr("baits");
    }
    return parts.isEmpty() ? QString()
                           : Tongue::tr("%1 laid by hand").arg(parts.join(QStringLiteral(", ")));
}

QStringList lieLines(const marks::Mark& mark, const Words& words) {
    QStringList lines{howToLie(mark, words),
                      anchorLine(Tongue::tr("bow"), mark.anchors.bow, words)};
    if (mark.anchors.stern) {
        lines += anchorLine(Tongue::tr("stern"), *mark.anchors.stern, words);
    }
    int number = 0;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        lines += Tongue::tr("rod %1: %2, %3, in %4, stop knot %5%6")
                     .arg(++number)
                     .arg(Words::bearing(rod.bearing), words.length(rod.distance),
                          words.depth(rod.depth), words.depth(rod.stopKnot),
                          rod.isByHand ? Tongue::tr(", laid by hand") : QString());
    }
    return lines;
}

} // namespace wording
