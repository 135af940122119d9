// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/copy_words.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"

#include <QDateTime>
#include <QLocale>
#include <QObject>
#include <QStringList>

#include <array>

namespace wording {

namespace {

struct Counted {
    std::size_t store::CopyCounts::*count;
    QString (*words)(qint64);
};

std::array<Counted, 5> allCounted() {
    using store::CopyCounts;
    return {{{&CopyCounts::surveyDays, surveyDaysCounted},
             {&CopyCounts::soundings, soundingsCounted},
             {&CopyCounts::stays, staysCounted},
             {&CopyCounts::fish,
              [](qint64 n) { return Tongue::counted("%n fish and runs", "%n fish or run", n); }},
             {&CopyCounts::notes, [](qint64 n) {
                  return Tongue::counted("%n notes and marks", "%n note or mark", n);
              }}}};
}

QString counted(std::size_t count, const Counted& what) {
    return what.words(static_cast<qint64>(count));
}

QString holdings(const store::CopyCounts& copy) {
    QStringList parts;
    for (const Counted& what : allCounted()) {
        if (const std::size_t count = copy.*what.count; count > 0) {
            parts << counted(count, what);
        }
    }
    return parts.isEmpty() ? Tongue::tr("nothing yet") : parts.join(QStringLiteral(", "));
}

} // namespace

QString takenWords(const store::Copy& copy) {
    const auto taken =
        QDateTime::fromMSecsSinceEpoch(copy.taken.time_since_epoch().count()).toLocalTime();
    return Tongue::locale().toString(taken, Tongue::tr("ddd d MMM yyyy, HH:mm"));
}

QString differenceWords(const std::optional<store::CopyCounts>& copy,
                        const std::optional<store::CopyCounts>& now) {
    if (!copy) {
        return Tongue::tr("it cannot be read");
    }
    if (!now) {
        return holdings(*copy);
    }
    QStringList parts;
    for (const Counted& what : allCounted()) {
        const std::size_t then = (*copy).*what.count;
        const std::size_t today = (*now).*what.count;
        if (then < today) {
            parts << Tongue::tr("%1 fewer").arg(counted(today - then, what));
        } else if (then > today) {
            parts << Tongue::tr("%1 more").arg(counted(then - today, what));
        }
    }
    return parts.isEmpty() ? Tongue::tr("as many of everything as now")
                           : Tongue::tr("%1 than now").arg(parts.join(QStringLiteral(", ")));
}

} // namespace wording
