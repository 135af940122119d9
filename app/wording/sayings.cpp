// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sayings.h"

#include "app/wording/by_kind.h"

#include <QStringList>

#include <cmath>

namespace wording {

namespace {

/// "2.1 fish per 10 rod-hours (1.2 to 3.4)".
QString rateInWords(const rates::Rate& rate) {
    return QStringLiteral("%1 fish per 10 rod-hours (%2 to %3)")
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
    return whole == 1 ? QStringLiteral("1 rod-hour") : QStringLiteral("%1 rod-hours").arg(whole);
}

QString listed(const std::vector<std::string>& names) {
    constexpr std::size_t most = 4;
    QStringList shown;
    for (std::size_t i = 0; i < names.size() && i < most; ++i) {
        shown += QString::fromStdString(names[i]);
    }
    const QString text = shown.join(QStringLiteral(", "));
    return names.size() > most ? QStringLiteral("%1 and %2 more").arg(text).arg(names.size() - most)
                               : text;
}

/// What was never fished, and what too little, each with its names.
QString saidOfLittle(const rates::TooLittleTried& little) {
    QStringList said;
    if (!little.untried.empty()) {
        said += QStringLiteral("Never fished: %1 of %2 (%3).")
                    .arg(little.untried.size())
                    .arg(little.rows)
                    .arg(listed(little.untried));
    }
    if (!little.names.empty()) {
        said += QStringLiteral("Too little was tried to tell of %1 of %2, with %3 of the effort: "
                               "%4.")
                    .arg(little.names.size())
                    .arg(little.rows)
                    .arg(Words::share(little.shareOfEffort), listed(little.names));
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
    const QString head =
        QStringLiteral("Most is to be expected %1: %2, %3 times the whole water's.")
            .arg(rowInSentence(most.name, by), rateInWords(most.expected),
                 Words::rate(most.timesWhole));
    return head + (most.isBeyondChance
                       ? QStringLiteral(" That is more than chance would make it.")
                       : QStringLiteral(" Chance alone could make such a difference."));
}

QString saidOfHours(const rates::HoursSay& hours) {
    const QString trips =
        hours.trips == 1 ? QStringLiteral("1 trip") : QStringLiteral("%1 trips").arg(hours.trips);
    if (hours.best.from == hours.best.to) {
        return QStringLiteral("No hour of the day stands out, by %1.").arg(trips);
    }
    return QStringLiteral("The hours from %1 to %2 were best, at their height %3, by %4.")
        .arg(clockTime(hours.best.from), clockTime(hours.best.to), rateInWords(hours.atBest),
             trips);
}

QString saidOfNext(const rates::TryNext& next, water::ReviewBy by) {
    const QString so = next.rodHours > 0.0
                           ? QStringLiteral("%1 so far").arg(wholeHours(next.rodHours))
                           : QStringLiteral("not fished yet");
    return QStringLiteral("Worth trying next %1 (%2): %3 is what it may bring; if it is no better "
                          "than the rest, %4 there bring one fish.")
        .arg(rowInSentence(next.name, by), so, rateInWords(next.expected),
             wholeHours(next.rodHoursToTell));
}

} // namespace

QString rowInSentence(const std::string& name, water::ReviewBy by) {
    QString row = QString::fromStdString(name);
    switch (by) {
    case water::ReviewBy::section:
    case water::ReviewBy::mark:
        return QStringLiteral("at %1").arg(row);
    case water::ReviewBy::zone:
        return QStringLiteral("at the kind of bottom “%1”").arg(row);
    case water::ReviewBy::band:
    case water::ReviewBy::month:
        return QStringLiteral("in %1").arg(row);
    case water::ReviewBy::hour:
        return QStringLiteral("at %1 o’clock").arg(row);
    case water::ReviewBy::bait:
        return QStringLiteral("with %1").arg(row);
    case water::ReviewBy::wind:
        return row == QStringLiteral("calm") ? QStringLiteral("in a calm")
                                             : QStringLiteral("with wind from %1").arg(row);
    case water::ReviewBy::temperature:
        return QStringLiteral("in water of %1").arg(row);
    case water::ReviewBy::daysSince:
        return QStringLiteral("at places last fished %1").arg(row);
    }
    return row;
}

QString said(const rates::Saying& saying, water::ReviewBy by) {
    return std::visit(
        ByKind{[](const rates::NothingCounted&) {
                   return QStringLiteral("Nothing that counts was logged in this time.");
               },
               [](const rates::NoFishYet& none) {
                   return QStringLiteral("No fish in %1: up to %2 per 10 rod-hours may still be "
                                         "there.")
                       .arg(wholeHours(none.rodHours), Words::rate(none.high));
               },
               [](const rates::WholeRate& whole) {
                   return QStringLiteral("Over all: %1, in %2.")
                       .arg(rateInWords(whole.rate), wholeHours(whole.rodHours));
               },
               [by](const rates::MostExpected& most) { return saidOfMost(most, by); },
               [](const rates::TooLittleTried& little) { return saidOfLittle(little); },
               [](const rates::HoursSay& hours) { return saidOfHours(hours); },
               [by](const rates::TryNext& next) { return saidOfNext(next, by); },
               [](const rates::FewDays& few) {
                   return few.days == 1
                              ? QStringLiteral("All of it was one day: a good one makes a rate.")
                              : QStringLiteral("All of it was %1 days: one good day makes a rate.")
                                    .arg(few.days);
               },
               [](const rates::EffortUnknown& unknown) {
                   return unknown.stays == 1
                              ? QStringLiteral("1 stay counts in no rate: its rods or its length "
                                               "are not known.")
                              : QStringLiteral("%1 stays count in no rate: their rods or their "
                                               "length are not known.")
                                    .arg(unknown.stays);
               }},
        saying);
}

QString said(const rates::RowComparison& comparison) {
    const QString first = QString::fromStdString(comparison.first);
    const QString second = QString::fromStdString(comparison.second);
    const QString range = comparison.high
                              ? QStringLiteral("%1 to %2")
                                    .arg(Words::rate(comparison.low), Words::rate(*comparison.high))
                              : QStringLiteral("%1 or more").arg(Words::rate(comparison.low));
    const QString head =
        comparison.ratio
            ? QStringLiteral("%1 brought %2 times as much for its effort as %3 (%4).")
                  .arg(capital(first), Words::rate(*comparison.ratio), second, range)
            : QStringLiteral("%1 brought no fish; %2 brought at least %3 times as much for its "
                             "effort, if anything.")
                  .arg(capital(second), first, Words::rate(comparison.low));
    return head + (comparison.isBeyondChance()
                       ? QStringLiteral(" That is more than chance would make it (%1 in 100).")
                             .arg(std::max(1L, std::lround(100.0 * comparison.p)))
                       : QStringLiteral(" Chance alone makes as large a difference %1 times in "
                                        "100.")
                             .arg(std::lround(100.0 * comparison.p)));
}

} // namespace wording
