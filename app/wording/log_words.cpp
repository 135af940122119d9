// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/log_words.h"

#include "app/wording/doubts.h"

namespace wording {

namespace {

QString counted(std::size_t count, const char* one, const char* many) {
    return QStringLiteral("%1 %2").arg(Words::count(count),
                                       QString::fromLatin1(count == 1 ? one : many));
}

} // namespace

QString broughtIn(const water::LogBroughtIn& log) {
    QStringList parts{QStringLiteral("%1 brought in")
                          .arg(counted(log.stays.size() - log.updates, "stay", "stays"))};
    if (log.updates > 0) {
        parts += QStringLiteral("%1 updated").arg(Words::count(log.updates));
    }
    if (log.known > 0) {
        parts += QStringLiteral("%1 known already").arg(Words::count(log.known));
    }
    return parts.join(QStringLiteral(", ")) + '.';
}

QString leftOutOf(const water::LogBroughtIn& log, const water::Water& water) {
    QStringList said;
    if (const std::size_t rows = log.report.refusedCount(); rows > 0) {
        said += QStringLiteral("%1 not used: %2.")
                    .arg(counted(rows, "row", "rows"),
                         QString::fromStdString(log.report.refusedText()));
    }
    if (const auto& fields = log.report.badFields; !fields.empty()) {
        said += QStringLiteral("%1 left empty (first: %2 '%3' in row %4).")
                    .arg(counted(fields.size(), "field", "fields"),
                         QString::fromStdString(fields[0].column),
                         QString::fromStdString(fields[0].text))
                    .arg(fields[0].line);
    }
    if (!log.doubtful.empty()) {
        const auto& first = log.doubtful.front();
        said += QStringLiteral("%1 not brought in. %2")
                    .arg(counted(log.doubtful.size(), "stay", "stays"),
                         saidOfDoubtful(first.stay, first.meets, water));
    }
    return said.join(' ');
}

QStringList notesOn(const water::PartnerBroughtIn& partner) {
    QStringList notes;
    for (const std::string& day : partner.mixedDays) {
        notes += QStringLiteral("The survey day %1 was left out: some of its soundings are here "
                                "already, and would count twice.")
                     .arg(QString::fromStdString(day));
    }
    if (partner.chartLevelAbove.inMetres() != 0.0) {
        notes +=
            QStringLiteral("The other water counts its depths from another level on the gauge: "
                           "soundings by hand were put right by the difference.");
    }
    return notes;
}

} // namespace wording
