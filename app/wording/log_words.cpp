// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/log_words.h"

#include "app/wording/counted_words.h"
#include "app/wording/doubts.h"
#include "app/wording/refused_words.h"
#include "app/wording/tongue.h"

namespace wording {

QString broughtIn(const water::LogBroughtIn& log) {
    QStringList parts{Tongue::tr("%1 brought in")
                          .arg(staysCounted(static_cast<qint64>(log.stays.size() - log.updates)))};
    if (log.updates > 0) {
        parts += Tongue::tr("%1 updated").arg(Words::count(log.updates));
    }
    if (log.known > 0) {
        parts += Tongue::tr("%1 known already").arg(Words::count(log.known));
    }
    return parts.join(QStringLiteral(", ")) + '.';
}

QString leftOutOf(const water::LogBroughtIn& log, const water::Water& water) {
    QStringList said;
    if (const QString rows = notUsed(log.report); !rows.isEmpty()) {
        said += rows;
    }
    if (!log.doubtful.empty()) {
        const auto& first = log.doubtful.front();
        said += Tongue::tr("%1 not brought in. %2")
                    .arg(staysCounted(static_cast<qint64>(log.doubtful.size())),
                         saidOfDoubtful(first.stay, first.meets, water));
    }
    return said.join(' ');
}

QStringList notesOn(const water::PartnerBroughtIn& partner) {
    QStringList notes;
    for (const std::string& day : partner.mixedDays) {
        notes += Tongue::tr("The survey day %1 was left out: some of its soundings are here "
                            "already, and would count twice.")
                     .arg(QString::fromStdString(day));
    }
    if (partner.chartLevelAbove.inMetres() != 0.0) {
        notes += Tongue::tr("The other water counts its depths from another level on the gauge: "
                            "soundings by hand were put right by the difference.");
    }
    return notes;
}

} // namespace wording
