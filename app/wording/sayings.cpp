// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sayings.h"

#include "app/wording/by_kind.h"
#include "app/wording/counted_words.h"
#include "app/wording/section_words.h"
#include "app/wording/tongue.h"
#include "core/rates/grouping.h"

#include <QStringList>

#include <cmath>

namespace wording {

namespace {

/// "2.1 fish per 10 rod-hours (1.2 to 3.4)".
QString rateInWords(const rates::Rate& rate) {
    return Tongue::tr("%1 fish per 10 rod-hours (%2 to %3)")
        .arg(Words::rate(rate.per10RodHours), Words::rate(rate.low), Words::rate(rate.high));
}

QString clockTime(double hour) {
    const int minutes = static_cast<int>(std::lround(hour * 60.0)) % (24 * 60);
    return QStringLiteral("%1:%2")
        .arg(minutes / 60, 2, 10, QLatin1Char('0'))
        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString wholeHours(double rodHours) {
    const auto whole = std::max(1L, std::lround(rodHours));
    return Tongue::counted("%n rod-hours", "%n rod-hour", whole);
}

QString listed(const std::vector<std::string>& names, water::ReviewBy by) {
    constexpr std::size_t most = 4;
    QStringList shown;
    for (std::size_t i = 0; i < names.size() && i < most; ++i) {
        shown += rowCalled(names[i], by);
    }
    const QString text = shown.join(QStringLiteral(", "));
    return names.size() > most ? Tongue::tr("%1 and %2 more").arg(text).arg(names.size() - most)
                               : text;
}

/// What was never fished, and what too little, each with its names.
QString saidOfLittle(const rates::TooLittleTried& little, water::ReviewBy by) {
    QStringList said;
    if (!little.untried.empty()) {
        said += Tongue::tr("Never fished: %1 of %2 (%3).")
                    .arg(little.untried.size())
                    .arg(little.rows)
                    .arg(listed(little.untried, by));
    }
    if (!little.names.empty()) {
        said += Tongue::tr("Too little was tried to tell of %1 of %2, with %3 of the effort: "
                           "%4.")
                    .arg(little.names.size())
                    .arg(little.rows)
                    .arg(Words::share(little.shareOfEffort), listed(little.names, by));
    }
    return said.join(' ');
}

QString capital(QString text) {
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

QString saidOfMost(const rates::MostExpected& most, water::ReviewBy by) {
    const QString head = Tongue::tr("Most is to be expected %1: %2, %3 times the whole water's.")
                             .arg(rowInSentence(most.name, by), rateInWords(most.expected),
                                  Words::rate(most.timesWhole));
    return head + (most.isBeyondChance ? Tongue::tr(" That is more than chance would make it.")
                                       : Tongue::tr(" Chance alone could make such a difference."));
}

QString saidOfHours(const rates::HoursSay& hours) {
    const QString trips = tripsCounted(hours.trips);
    if (hours.best.from == hours.best.to) {
        return Tongue::tr("No hour of the day stands out, by %1.").arg(trips);
    }
    return Tongue::tr("The hours from %1 to %2 were best, at their height %3, by %4.")
        .arg(clockTime(hours.best.from), clockTime(hours.best.to), rateInWords(hours.atBest),
             trips);
}

QString saidOfNext(const rates::TryNext& next, water::ReviewBy by) {
    const QString so = next.rodHours > 0.0 ? Tongue::tr("%1 so far").arg(wholeHours(next.rodHours))
                                           : Tongue::tr("not fished yet");
    return Tongue::tr("Worth trying next %1 (%2): %3 is what it may bring; if it is no better "
                      "than the rest, %4 there bring one fish.")
        .arg(rowInSentence(next.name, by), so, rateInWords(next.expected),
             wholeHours(next.rodHoursToTell));
}

} // namespace

QString rowCalled(const std::string& name, water::ReviewBy by) {
    const bool isByUser = by == water::ReviewBy::section || by == water::ReviewBy::mark ||
                          by == water::ReviewBy::bait;
    return isByUser && name != rates::notNoted ? nameCalled(name) : Tongue::ofCore(name);
}

QString rowInSentence(const std::string& name, water::ReviewBy by) {
    QString row = rowCalled(name, by);
    switch (by) {
    case water::ReviewBy::section:
    case water::ReviewBy::mark:
        return Tongue::tr("at %1").arg(row);
    case water::ReviewBy::zone:
        return Tongue::tr("at the kind of bottom “%1”").arg(row);
    case water::ReviewBy::band:
    case water::ReviewBy::month:
        return Tongue::tr("in %1").arg(row);
    case water::ReviewBy::hour:
        return Tongue::tr("at %1 o’clock").arg(row);
    case water::ReviewBy::bait:
        return Tongue::tr("with %1").arg(row);
    case water::ReviewBy::wind:
        return name == "calm" ? Tongue::tr("in a calm") : Tongue::tr("with wind from %1").arg(row);
    case water::ReviewBy::temperature:
        return Tongue::tr("in water of %1").arg(row);
    case water::ReviewBy::daysSince:
        return Tongue::tr("at places last fished %1").arg(row);
    }
    return row;
}

QString said(const rates::Saying& saying, water::ReviewBy by) {
    return std::visit(
        ByKind{[](const rates::NothingCounted&) {
                   return Tongue::tr("Nothing that counts was logged in this time.");
               },
               [](const rates::NoFishYet& none) {
                   return Tongue::tr("No fish in %1: up to %2 per 10 rod-hours may still be "
                                     "there.")
                       .arg(wholeHours(none.rodHours), Words::rate(none.high));
               },
               [](const rates::WholeRate& whole) {
                   return Tongue::tr("Over all: %1, in %2.")
                       .arg(rateInWords(whole.rate), wholeHours(whole.rodHours));
               },
               [by](const rates::MostExpected& most) { return saidOfMost(most, by); },
               [by](const rates::TooLittleTried& little) { return saidOfLittle(little, by); },
               [](const rates::HoursSay& hours) { return saidOfHours(hours); },
               [by](const rates::TryNext& next) { return saidOfNext(next, by); },
               [](const rates::FewDays& few) {
                   return Tongue::counted("All of it was %n days: one good day makes a rate.",
                                          "All of it was one day: a good one makes a rate.",
                                          few.days);
               },
               [](const rates::EffortUnknown& unknown) {
                   return Tongue::counted("%n stays count in no rate: their rods or their "
                                          "length are not known.",
                                          "%n stay counts in no rate: its rods or its length "
                                          "are not known.",
                                          unknown.stays);
               }},
        saying);
}

QString said(const rates::RowComparison& comparison) {
    const QString first = QString::fromStdString(comparison.first);
    const QString second = QString::fromStdString(comparison.second);
    const QString range =
        comparison.high
            ? Tongue::tr("%1 to %2").arg(Words::rate(comparison.low), Words::rate(*comparison.high))
            : Tongue::tr("%1 or more").arg(Words::rate(comparison.low));
    const QString head =
        comparison.ratio
            ? Tongue::tr("%1 brought %2 times as much for its effort as %3 (%4).")
                  .arg(capital(first), Words::rate(*comparison.ratio), second, range)
            : Tongue::tr("%1 brought no fish; %2 brought at least %3 times as much for its "
                         "effort, if anything.")
                  .arg(capital(second), first, Words::rate(comparison.low));
    return head + (comparison.isBeyondChance()
                       ? Tongue::tr(" That is more than chance would make it (%1 in 100).")
                             .arg(std::max(1L, std::lround(100.0 * comparison.p)))
                       : Tongue::tr(" Chance alone makes as large a difference %1 times in "
                                    "100.")
                             .arg(std::lround(100.0 * comparison.p)));
}

} // namespace wording
