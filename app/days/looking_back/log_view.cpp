// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_view.h"

#include "app/wording/counted_words.h"
#include "app/wording/tongue.h"

#include <cmath>

namespace days::looking_back {

using wording::Words;

QString logLine(const logbook::LogSum& sum) {
    const logbook::LogSum::Month whole = sum.whole();
    return wording::Tongue::tr("%1, %2, %3")
        .arg(wording::tripsCounted(static_cast<qint64>(whole.trips)),
             wording::staysCounted(static_cast<qint64>(whole.stays)),
             wording::fishCounted(static_cast<qint64>(whole.fish)));
}

QString rateWords(const std::optional<rates::Rate>& rate) {
    return rate ? wording::Tongue::tr("%1 (%2 to %3)")
                      .arg(Words::rate(rate->per10RodHours), Words::rate(rate->low),
                           Words::rate(rate->high))
                : QString();
}

std::vector<QStringList> seasonRows(const logbook::LogSum& sum) {
    std::vector<QStringList> rows;
    for (const auto& [when, month] : sum.months) {
        const std::string iso = units::isoText(units::Day(when / std::chrono::day(1)));
        rows.push_back({QString::fromStdString(iso.substr(0, 7)), QString::number(month.trips),
                        QString::number(month.stays), QString::number(month.blanks),
                        QString::number(month.fish)});
    }
    return rows;
}

QStringList speciesIn(const logbook::LogSum& sum) {
    QStringList species;
    for (const std::string& one : sum.species) {
        species += QString::fromStdString(one);
    }
    species.sort();
    return species;
}

QString bestHoursWords(const rates::HourRates& hours) {
    const auto best = rates::bestHours(hours);
    if (!best) {
        return wording::Tongue::tr("too little fished to say");
    }
    const QString trips = wording::tripsCounted(hours.trips);
    if (best->from == best->to) {
        return wording::Tongue::tr("no hour stands out, by %1").arg(trips);
    }
    const auto clock = [](double hour) {
        const int minutes = static_cast<int>(std::lround(hour * 60.0));
        return QStringLiteral("%1:%2")
            .arg(minutes / 60, 2, 10, QLatin1Char('0'))
            .arg(minutes % 60, 2, 10, QLatin1Char('0'));
    };
    return wording::Tongue::tr("best between %1 and %2, by %3")
        .arg(clock(best->from), clock(best->to), trips);
}

} // namespace days::looking_back
