// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/year_words.h"

#include "app/wording/tongue.h"

#include <cmath>

namespace wording {

namespace {

/// All of a bottom hardly rises or sinks by as much as this between two surveys, but a level is
/// easily noted wrongly by it (our choice, no source).
constexpr auto suspectRise = units::Length::metres(0.1);

units::Length sizeOf(units::Length length) {
    return units::Length::metres(std::fabs(length.inMetres()));
}

QString part(const QString& sentence, units::Area area, units::Volume volume, const Words& words) {
    return sentence.arg(words.area(area), words.volume(volume));
}

} // namespace

QString saidOfYears(const water::YearsCompared& years, const Words& words) {
    const surface::ChangeSums& sums = years.sums;
    const QString over = Tongue::tr("Of %1 drawn both times %2").arg(words.area(sums.compared));
    const bool hasRisen = sums.risen > units::Area();
    const bool hasFallen = sums.fallen > units::Area();
    if (!hasRisen && !hasFallen) {
        return over.arg(Tongue::tr("nothing has changed by more than both surveys may be off."));
    }
    QStringList parts;
    if (hasRisen) {
        parts += part(Tongue::tr("%1 have risen by more than both surveys may be off, %2 in all"),
                      sums.risen, sums.filled, words);
    }
    if (hasFallen) {
        parts += part(Tongue::tr("%1 have fallen by more than both surveys may be off, %2 in all"),
                      sums.fallen, sums.lost, words);
    }
    return over.arg(parts.join(QStringLiteral("; ")) + '.');
}

QStringList doubtsOfYears(const water::YearsCompared& years, const Words& words) {
    QStringList doubts;
    const units::Length middle = years.sums.middle;
    if (!years.takenOff && sizeOf(middle) >= suspectRise) {
        doubts +=
            (middle > units::Length()
                 ? Tongue::tr("Half of the bottom has risen by %1 or more: is a level of one of "
                              "the surveys noted wrongly?")
                 : Tongue::tr("Half of the bottom has sunk by %1 or more: is a level of one of "
                              "the surveys noted wrongly?"))
                .arg(words.fineDepth(units::Depth::fromLength(sizeOf(middle))));
    }
    if (years.takenOff) {
        doubts += Tongue::tr("%1 that all of the bottom has in common is taken for a level "
                             "noted wrongly, and taken off.")
                      .arg(words.levelChange(*years.takenOff));
    }
    if (years.daysWithoutLevel > 0 && !years.takenOff) {
        doubts += Tongue::counted("%n survey days have no level: what all of the bottom has "
                                  "in common may be that.",
                                  "One survey day has no level: what all of the bottom has in "
                                  "common may be that.",
                                  years.daysWithoutLevel);
    }
    return doubts;
}

QString saidOfMark(const water::MarkThen& mark, const Words& words) {
    if (!mark.rise) {
        return Tongue::tr("not drawn both times");
    }
    const QString within = words.plusMinus(units::Depth::fromLength(mark.halfWidth));
    if (!mark.isSure()) {
        return Tongue::tr("as it was, %1").arg(within);
    }
    const bool hasRisen = *mark.rise > units::Length();
    return QStringLiteral("%1 %2 %3")
        .arg(hasRisen ? Tongue::tr("risen") : Tongue::tr("fallen"),
             words.fineDepth(units::Depth::fromLength(sizeOf(*mark.rise))), within);
}

} // namespace wording
