// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/planned_words.h"

#include "app/wording/by_kind.h"
#include "app/wording/cautions.h"
#include "app/wording/survey_words.h"
#include "app/wording/tongue.h"

#include <algorithm>

namespace wording {

namespace {

QString spoken(marks::Exclusion exclusion) {
    switch (exclusion) {
    case marks::Exclusion::closed:
        return Tongue::tr("closed");
    case marks::Exclusion::tooShallow:
        return Tongue::tr("too shallow");
    case marks::Exclusion::tooDeep:
        return Tongue::tr("deeper than the limit");
    case marks::Exclusion::noRoom:
        return Tongue::tr("too near the bank to swing");
    case marks::Exclusion::ropesTooShort:
        return Tongue::tr("too deep for the ropes");
    case marks::Exclusion::tooRough:
        return Tongue::tr("too rough for an open boat at anchor");
    case marks::Exclusion::banned:
        return Tongue::tr("that you banned");
    case marks::Exclusion::tooSteep:
        return Tongue::tr("too steep for an anchor");
    case marks::Exclusion::noAnchors:
        return Tongue::tr("without room or rope for the anchors");
    }
    return {};
}

QString said(const water::WaterLeftOut& left, const Words& words) {
    QStringList parts;
    for (const auto& [why, area] : left.parts) {
        parts += words.areaTo(area, 1) + ' ' + spoken(why);
    }
    return Tongue::tr("%1 of %2 marks found. Left out: %3.")
        .arg(left.found)
        .arg(left.wanted)
        .arg(parts.join(QStringLiteral(", ")));
}

QString said(const water::PlanNote& note, const Words& words) {
    return std::visit(
        ByKind{[](water::NothingCaught) {
                   return Tongue::tr("Nothing caught yet: by your beliefs alone.");
               },
               [](const water::NoStayCounts& n) {
                   return Tongue::tr(
                              "None of the %1 stays of the log counts: by your beliefs alone.")
                       .arg(n.stays);
               },
               [](const water::StaysElsewhere& n) {
                   return Tongue::tr("%1 of %2 stays of the log lie on no water of this chart "
                                     "today and say nothing of it.")
                       .arg(n.elsewhere)
                       .arg(n.stays);
               },
               [](const water::StaysWithoutEffort& n) {
                   return Tongue::tr("%1 of %2 stays of the log count in no rate: nobody "
                                     "noted their rods, or they lasted no time, or longer "
                                     "than any can.")
                       .arg(n.withoutEffort)
                       .arg(n.stays);
               },
               [&](const water::WaterLeftOut& n) { return said(n, words); },
               [&](const water::TooRoughWater& n) {
                   return Tongue::tr("%1 of water left out: waves of more than %2 there, too "
                                     "rough for an open boat at anchor.")
                       .arg(words.areaTo(n.area, 1), words.lengthTo(n.roughest, 2));
               },
               [&](const water::DaysDiffer& n) { return daysDiffer(n.by, words); },
               [](const water::DaysWithoutLevel& n) { return daysWithoutLevel(n.days); },
               [](water::WavesNotCounted) {
                   return Tongue::tr(
                       "Strength of the wind: not said; waves and shelter are not counted.");
               }},
        note);
}

bool isOfTheWind(const water::PlanNote& note) {
    return std::holds_alternative<water::WavesNotCounted>(note);
}

std::vector<int> ranksWithStays(const marks::DayPlan& day) {
    std::vector<int> ranks;
    for (const marks::DayStop& stop : day.stops) {
        if (stop.isStayByHand) {
            ranks.push_back(stop.rank);
        }
    }
    return ranks;
}

/// "mark 3", "marks 1, 2".
QString marksWords(const std::vector<int>& ranks) {
    QStringList numbers;
    for (const int rank : ranks) {
        numbers += QString::number(rank);
    }
    return Tongue::counted("marks %1", "mark %1", ranks.size())
        .arg(numbers.join(QStringLiteral(", ")));
}

/// Those that there is no time or no way for; empty where there are none.
QString leftOutWords(const marks::DayPlan& day) {
    std::vector<int> ranks = day.leftOut;
    std::erase_if(ranks, [&](int rank) { return std::ranges::count(day.tooRough, rank) > 0; });
    if (ranks.empty()) {
        return {};
    }
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(day.leastStay).count();
    return Tongue::tr("There is no time or no way for %1 with stays of %2 minutes.")
        .arg(marksWords(ranks))
        .arg(minutes);
}

} // namespace

QString windsOf(const marks::ExpectedDay& day, const Words& words) {
    return day.windLater ? Tongue::tr("%1, from %2 %3")
                               .arg(words.wind(day.wind), Words::timeOfDay(day.windLater->at),
                                    words.wind(day.windLater->wind))
                         : words.wind(day.wind);
}

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

QStringList windsOfStops(const water::PlannedDay& day, const Words& words) {
    QStringList lines;
    if (!day.plan.day.windLater) {
        return lines;
    }
    QStringList ranks;
    for (std::size_t k = 0; k < day.day.stops.size(); ++k) {
        const marks::DayStop& stop = day.day.stops[k];
        ranks += QString::number(stop.rank);
        const bool isLast = k + 1 == day.day.stops.size();
        if (isLast || !(day.day.stops[k + 1].wind == stop.wind)) {
            lines += Tongue::counted("Anchors of marks %1 are laid for wind %2.",
                                     "Anchors of mark %1 are laid for wind %2.", ranks.size())
                         .arg(ranks.join(QStringLiteral(", ")), words.wind(stop.wind));
            ranks.clear();
        }
    }
    return lines;
}

QString windNotSaid(const water::PlannedDay& day, const Words& words) {
    const auto note = std::ranges::find_if(day.basis, isOfTheWind);
    return note == day.basis.end()
               ? QString()
               : said(*note, words) + ' ' + said(water::DayCaution(water::WindNotSaid{}), words);
}

QStringList toMindFirst(const water::PlannedDay& day, const Words& words) {
    QStringList lines;
    if (const QString wind = windNotSaid(day, words); !wind.isEmpty()) {
        lines += wind;
    }
    for (const water::PlanNote& note : day.basis) {
        if (std::holds_alternative<water::DaysDiffer>(note)) {
            lines += said(note, words);
        }
    }
    return lines;
}

QStringList notesOf(const water::PlannedDay& day) {
    QStringList lines;
    if (day.day.isOrderByHand) {
        lines += Tongue::tr("The order of the day is yours.");
    } else if (day.isOrderOfOtherMarks) {
        lines += Tongue::tr("The order that you gave is for other marks: this is the "
                            "program's.");
    }
    if (const std::vector<int> ranks = ranksWithStays(day.day); !ranks.empty()) {
        lines += Tongue::tr("Stays that you set: on %1.").arg(marksWords(ranks));
    }
    for (const water::RefusedMark& mark : day.refused) {
        const QString called = mark.name.empty() ? Tongue::tr("at %1").arg(Words::place(mark.place))
                                                 : QString::fromStdString(mark.name);
        lines += Tongue::tr("your mark %1 cannot be anchored on: %2")
                     .arg(called, Tongue::ofCore(mark.why.what));
    }
    lines += leftOutWords(day.day);
    if (!day.day.tooRough.empty()) {
        lines += Tongue::tr("In the hours that the day has for %1 the water there is too rough "
                            "for an open boat at anchor.")
                     .arg(marksWords(day.day.tooRough));
    }
    lines.removeAll(QString());
    lines.removeDuplicates();
    return lines;
}

} // namespace wording
