// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/planned_words.h"

#include "app/wording/by_kind.h"
#include "app/wording/cautions.h"

#include <algorithm>

namespace wording {

namespace {

QString spoken(marks::Exclusion exclusion) {
    switch (exclusion) {
    case marks::Exclusion::closed:
        return QStringLiteral("closed");
    case marks::Exclusion::tooShallow:
        return QStringLiteral("too shallow");
    case marks::Exclusion::tooDeep:
        return QStringLiteral("deeper than the limit");
    case marks::Exclusion::noRoom:
        return QStringLiteral("too near the bank to swing");
    case marks::Exclusion::ropesTooShort:
        return QStringLiteral("too deep for the ropes");
    case marks::Exclusion::tooRough:
        return QStringLiteral("too rough for an open boat at anchor");
    case marks::Exclusion::banned:
        return QStringLiteral("that you banned");
    }
    return {};
}

QString said(const water::WaterLeftOut& left, const Words& words) {
    QStringList parts;
    for (const auto& [why, area] : left.parts) {
        parts += words.areaTo(area, 1) + ' ' + spoken(why);
    }
    return QStringLiteral("%1 of %2 marks found. Left out: %3.")
        .arg(left.found)
        .arg(left.wanted)
        .arg(parts.join(QStringLiteral(", ")));
}

QString said(const water::PlanNote& note, const Words& words) {
    return std::visit(
        ByKind{[](water::NothingCaught) {
                   return QStringLiteral("Nothing caught yet: by your beliefs alone.");
               },
               [](const water::NoStayCounts& n) {
                   return QStringLiteral(
                              "None of the %1 stays of the log counts: by your beliefs alone.")
                       .arg(n.stays);
               },
               [](const water::StaysElsewhere& n) {
                   return QStringLiteral("%1 of %2 stays of the log lie on no water of this chart "
                                         "today and say nothing of it.")
                       .arg(n.elsewhere)
                       .arg(n.stays);
               },
               [](const water::StaysWithoutEffort& n) {
                   return QStringLiteral("%1 of %2 stays of the log count in no rate: nobody "
                                         "noted their rods, or they lasted no time, or longer "
                                         "than any can.")
                       .arg(n.withoutEffort)
                       .arg(n.stays);
               },
               [&](const water::WaterLeftOut& n) { return said(n, words); },
               [](water::WavesNotCounted) {
                   return QStringLiteral("Wind: not said; waves and shelter are not counted.");
               }},
        note);
}

bool isOfTheWind(const water::PlanNote& note) {
    return std::holds_alternative<water::WavesNotCounted>(note);
}

QStringList ranksWithStays(const marks::DayPlan& day) {
    QStringList ranks;
    for (const marks::DayStop& stop : day.stops) {
        if (stop.isStayByHand) {
            ranks += QString::number(stop.rank);
        }
    }
    return ranks;
}

QString leftOutWords(const marks::DayPlan& day) {
    QStringList ranks;
    for (const int rank : day.leftOut) {
        ranks += QString::number(rank);
    }
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(day.leastStay).count();
    return QStringLiteral("There is no time or no way for %1 %2 with stays of %3 minutes.")
        .arg(ranks.size() == 1 ? QStringLiteral("mark") : QStringLiteral("marks"),
             ranks.join(QStringLiteral(", ")))
        .arg(minutes);
}

} // namespace

QStringList cautionsOf(const water::PlannedDay& day, const Words& words) {
    QStringList lines;
    for (const water::DayCaution& caution : day.cautions) {
        lines += said(caution, words);
    }
    lines.removeDuplicates();
    return lines;
}

QStringList rulesOf(const water::PlannedDay& day) {
    QStringList lines;
    for (const water::DayRule& rule : day.rules) {
        lines += said(rule);
    }
    return lines;
}

QStringList fishCareOf(const water::PlannedDay& day, const Words& words) {
    QStringList lines;
    for (const water::FishCare care : day.fishCare) {
        lines += said(care, words);
    }
    return lines;
}

QStringList basisOf(const water::PlannedDay& day, const Words& words) {
    QStringList lines;
    for (const water::PlanNote& note : day.basis) {
        lines += said(note, words);
    }
    return lines;
}

QString windNotSaid(const water::PlannedDay& day, const Words& words) {
    const auto note = std::ranges::find_if(day.basis, isOfTheWind);
    return note == day.basis.end()
               ? QString()
               : said(*note, words) + ' ' + said(water::DayCaution(water::WindNotSaid{}), words);
}

QStringList notesOf(const water::PlannedDay& day) {
    QStringList lines;
    if (day.day.isOrderByHand) {
        lines += QStringLiteral("The order of the day is yours.");
    } else if (day.isOrderOfOtherMarks) {
        lines += QStringLiteral("The order that you gave is for other marks: this is the "
                                "program's.");
    }
    if (const QStringList ranks = ranksWithStays(day.day); !ranks.isEmpty()) {
        lines += QStringLiteral("Stays that you set: on %1 %2.")
                     .arg(ranks.size() == 1 ? QStringLiteral("mark") : QStringLiteral("marks"),
                          ranks.join(QStringLiteral(", ")));
    }
    for (const water::RefusedMark& mark : day.refused) {
        const QString called =
            mark.name.empty() ? QStringLiteral("at ") + Words::place(mark.place)
                              : QString::fromStdString(mark.name);
        lines += QStringLiteral("your mark %1 cannot be anchored on: %2")
                     .arg(called, QString::fromStdString(mark.why.what));
    }
    if (!day.day.leftOut.empty()) {
        lines += leftOutWords(day.day);
    }
    lines.removeDuplicates();
    return lines;
}

} // namespace wording
