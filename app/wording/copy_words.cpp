// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/copy_words.h"

#include <QDateTime>
#include <QLocale>
#include <QObject>
#include <QStringList>

#include <array>

namespace wording {

namespace {

struct Counted {
    std::size_t store::CopyCounts::*count;
    QString one;
    QString many;
};

std::array<Counted, 5> allCounted() {
    using store::CopyCounts;
    return {{{&CopyCounts::surveyDays, QObject::tr("survey day"), QObject::tr("survey days")},
             {&CopyCounts::soundings, QObject::tr("sounding"), QObject::tr("soundings")},
             {&CopyCounts::stays, QObject::tr("stay"), QObject::tr("stays")},
             {&CopyCounts::fish, QObject::tr("fish or run"), QObject::tr("fish and runs")},
             {&CopyCounts::notes, QObject::tr("note or mark"), QObject::tr("notes and marks")}}};
}

QString counted(std::size_t count, const Counted& what) {
    return QStringLiteral("%1 %2").arg(
        QLocale(QLocale::English).toString(static_cast<qulonglong>(count)),
        count == 1 ? what.one : what.many);
}

QString holdings(const store::CopyCounts& copy) {
    QStringList parts;
    for (const Counted& what : allCounted()) {
        if (const std::size_t count = copy.*what.count; count > 0) {
            parts << counted(count, what);
        }
    }
    return parts.isEmpty() ? QObject::tr("nothing yet") : parts.join(QStringLiteral(", "));
}

} // namespace

QString takenWords(const store::Copy& copy) {
    const auto taken =
        QDateTime::fromMSecsSinceEpoch(copy.taken.time_since_epoch().count()).toLocalTime();
    return QLocale(QLocale::English).toString(taken, QStringLiteral("ddd d MMM yyyy, HH:mm"));
}

QString differenceWords(const std::optional<store::CopyCounts>& copy,
                        const std::optional<store::CopyCounts>& now) {
    if (!copy) {
        return QObject::tr("it cannot be read");
    }
    if (!now) {
        return holdings(*copy);
    }
    QStringList parts;
    for (const Counted& what : allCounted()) {
        const std::size_t then = (*copy).*what.count;
        const std::size_t today = (*now).*what.count;
        if (then < today) {
            parts << QObject::tr("%1 fewer").arg(counted(today - then, what));
        } else if (then > today) {
            parts << QObject::tr("%1 more").arg(counted(then - today, what));
        }
    }
    return parts.isEmpty() ? QObject::tr("as many of everything as now")
                           : QObject::tr("%1 than now").arg(parts.join(QStringLiteral(", ")));
}

} // namespace wording
