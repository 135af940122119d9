// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_view.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <ranges>

namespace days::looking_back {

using wording::Words;

namespace {

QString clockTime(units::Moment moment, const units::Clock& clock) {
    return QString::fromStdString(units::timeOfDayText(moment, clock));
}

LogRow runRow(const logbook::Stay& stay, const logbook::Fish& run, const units::Clock& clock,
              const Words& words) {
    const QString what = run.landed ? (run.species.empty() ? QStringLiteral("fish")
                                                           : QString::fromStdString(run.species))
                                    : QStringLiteral("lost run");
    return {{QStringLiteral("      %1  %2").arg(clockTime(run.time, clock), what),
             QString::fromStdString(run.bait.empty() ? stay.bait : run.bait),
             run.weight ? words.weight(*run.weight) : QString()},
            stay.id,
            run.id};
}

} // namespace

QString counted(std::size_t count, const QString& one, const QString& many) {
    return QStringLiteral("%1 %2").arg(Words::count(count), count == 1 ? one : many);
}

QString logLine(const logbook::Log& log, const units::Clock& clock) {
    const int fish =
        std::accumulate(log.begin(), log.end(), 0,
                        [](int sum, const logbook::Stay& stay) { return sum + stay.fishCount(); });
    return QStringLiteral("%1, %2, %3 fish")
        .arg(counted(logbook::tripsOf(log, clock).size(), QStringLiteral("trip"),
                     QStringLiteral("trips")),
             counted(log.size(), QStringLiteral("stay"), QStringLiteral("stays")),
             Words::count(static_cast<std::size_t>(fish)));
}

QString stayTitle(const logbook::Stay& stay, const units::Clock& clock) {
    return QStringLiteral("%1, %2 to %3")
        .arg(Words::day(clock.dayOf(stay.start)), clockTime(stay.start, clock),
             clockTime(stay.end, clock));
}

std::vector<LogRow> logRows(const logbook::Log& log, const units::Clock& clock,
                            const Words& words) {
    std::vector<LogRow> rows;
    for (const logbook::Stay& stay : log | std::views::reverse) {
        QString how = counted(static_cast<std::size_t>(stay.rods), QStringLiteral("rod"),
                              QStringLiteral("rods"));
        if (!stay.bait.empty()) {
            how += QStringLiteral(", ") + QString::fromStdString(stay.bait);
        }
        const int fish = stay.fishCount();
        rows.push_back({{stayTitle(stay, clock), how,
                         fish == 0 ? QStringLiteral("blank") : QStringLiteral("%1 fish").arg(fish)},
                        stay.id,
                        {}});
        for (const logbook::Fish& run : stay.runs) {
            rows.push_back(runRow(stay, run, clock, words));
        }
    }
    return rows;
}

QString rateWords(const std::optional<rates::Rate>& rate) {
    return rate ? QStringLiteral("%1 (%2 to %3)")
                      .arg(Words::rate(rate->per10RodHours), Words::rate(rate->low),
                           Words::rate(rate->high))
                : QString();
}

std::vector<QStringList> producedRows(const rates::RateTable& table, const Words& words) {
    std::vector<QStringList> rows;
    const auto add = [&](const rates::RateRow& row, const QString& name) {
        rows.push_back({name, QString::number(row.rodHours, 'f', 0), QString::number(row.stays),
                        QString::number(row.blanks), QString::number(row.runs),
                        QString::number(row.fish), row.best ? words.weight(*row.best) : QString(),
                        row.shrunk ? Words::rate(row.shrunk->per10RodHours) : QString()});
    };
    for (const rates::RateRow& row : table.rows) {
        add(row, QString::fromStdString(row.name));
    }
    add(table.overall, QStringLiteral("all"));
    return rows;
}

std::vector<QStringList> seasonRows(const logbook::Log& log, const units::Clock& clock) {
    struct Month {
        std::size_t trips = 0;
        int stays = 0;
        int blanks = 0;
        int fish = 0;
    };
    std::map<std::chrono::year_month, Month> months;
    for (const logbook::Trip& trip : logbook::tripsOf(log, clock)) {
        Month& month = months[trip.day.year() / trip.day.month()];
        ++month.trips;
        for (const logbook::Stay* stay : trip.stays) {
            ++month.stays;
            month.blanks += stay->isBlank() ? 1 : 0;
            month.fish += stay->fishCount();
        }
    }
    std::vector<QStringList> rows;
    for (const auto& [when, month] : months) {
        const std::string iso = units::isoText(units::Day(when / std::chrono::day(1)));
        rows.push_back({QString::fromStdString(iso.substr(0, 7)), QString::number(month.trips),
                        QString::number(month.stays), QString::number(month.blanks),
                        QString::number(month.fish)});
    }
    return rows;
}

QStringList speciesIn(const logbook::Log& log) {
    QStringList species;
    for (const logbook::Stay& stay : log) {
        for (const logbook::Fish& run : stay.runs) {
            if (run.landed && !run.species.empty()) {
                species += QString::fromStdString(run.species);
            }
        }
    }
    species.removeDuplicates();
    species.sort();
    return species;
}

logbook::Stay newStay(const logbook::Log& log, const units::Clock& clock, units::Day day,
                      std::chrono::seconds start) {
    /// Long enough to be meant, short enough to be looked at and mended.
    constexpr auto length = std::chrono::hours(2);
    logbook::Stay stay;
    stay.start = clock.at(day, start);
    for (const logbook::Stay& before : log) {
        if (clock.dayOf(before.start) == day) {
            stay.start = std::max(stay.start, before.end);
            stay.rods = before.rods;
            stay.bait = before.bait;
        }
    }
    stay.end = stay.start + length;
    return stay;
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
