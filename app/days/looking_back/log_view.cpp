// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_view.h"

#include <cmath>

namespace days::looking_back {

using wording::Words;

QString counted(std::size_t count, const QString& one, const QString& many) {
    return QStringLiteral("%1 %2").arg(Words::count(count), count == 1 ? one : many);
}

QString logLine(const logbook::LogSum& sum) {
    const logbook::LogSum::Month whole = sum.whole();
    return QStringLiteral("%1, %2, %3 fish")
        .arg(counted(whole.trips, QStringLiteral("trip"), QStringLiteral("trips")),
             counted(whole.stays, QStringLiteral("stay"), QStringLiteral("stays")),
             Words::count(whole.fish));
}

QString rateWords(const std::optional<rates::Rate>& rate) {
    return rate ? QStringLiteral("%1 (%2 to %3)")
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
        return QStringLiteral("too little fished to say");
    }
    const QString trips = counted(static_cast<std::size_t>(hours.trips), QStringLiteral("trip"),
                                  QStringLiteral("trips"));
    if (best->from == best->to) {
        return QStringLiteral("no hour stands out, by %1").arg(trips);
    }
    const auto clock = [](double hour) {
        const int minutes = static_cast<int>(std::lround(hour * 60.0));
        return QStringLiteral("%1:%2")
            .arg(minutes / 60, 2, 10, QLatin1Char('0'))
            .arg(minutes % 60, 2, 10, QLatin1Char('0'));
    };
    return QStringLiteral("best between %1 and %2, by %3")
        .arg(clock(best->from), clock(best->to), trips);
}

} // namespace days::looking_back
