// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_view.h"

#include <algorithm>
#include <cmath>
#include <ranges>

namespace days::looking_back {

using wording::Words;

namespace {

QString clockTime(units::Moment moment, const units::Clock& clock) {
    return QString::fromStdString(units::timeOfDayText(moment, clock));
}

/// "3 Oct 2026, 08:10–10:00": as much as the column shows at once.
QString rowTitle(const logbook::Stay& stay, const units::Clock& clock) {
    const QString day = Words::day(clock.dayOf(stay.start));
    return QStringLiteral("%1, %2–%3")
        .arg(day.mid(day.indexOf(' ') + 1), clockTime(stay.start, clock),
             clockTime(stay.end, clock));
}

LogRow stayRow(const logbook::Stay& stay, const units::Clock& clock) {
    QString how = stay.rods ? counted(static_cast<std::size_t>(*stay.rods), QStringLiteral("rod"),
                                      QStringLiteral("rods"))
                            : QStringLiteral("rods not known");
    if (!stay.bait.empty()) {
        how += QStringLiteral(", ") + QString::fromStdString(stay.bait);
    }
    const int fish = stay.fishCount();
    return {{rowTitle(stay, clock), how,
             fish == 0 ? QStringLiteral("blank") : QStringLiteral("%1 fish").arg(fish)},
            stay.id,
            {}};
}

LogRow runRow(const logbook::Stay& stay, const logbook::Fish& run, const units::Clock& clock,
              const Words& words) {
    const QString what = run.landed ? (run.species.empty() ? QStringLiteral("fish")
                                                           : QString::fromStdString(run.species))
                                    : QStringLiteral("lost run");
    return {{QStringLiteral("      %1  %2")
                 .arg(run.time ? clockTime(*run.time, clock) : QStringLiteral("–"), what),
             QString::fromStdString(run.bait.empty() ? stay.bait : run.bait),
             run.weight ? words.weight(*run.weight) : QString()},
            stay.id,
            run.id};
}

} // namespace

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

LogRows::LogRows(logbook::KeptLog log, units::Clock clock, const Words& words)
    : log_(std::move(log)), clock_(std::move(clock)), words_(words) {
    for (const auto& chunk : log_.chunks() | std::views::reverse) {
        before_.push_back(size_);
        size_ += logbook::rowsOf(*chunk);
    }
}

LogRow LogRows::operator[](std::size_t row) const {
    const auto above = std::ranges::upper_bound(before_, row) - 1;
    const auto& chunk = log_.chunks().rbegin()[above - before_.begin()];
    std::size_t left = row - *above;
    for (const logbook::Stay& stay : chunk->items() | std::views::reverse) {
        if (left == 0) {
            return stayRow(stay, clock_);
        }
        if (left <= stay.runs.size()) {
            return runRow(stay, stay.runs[left - 1], clock_, words_);
        }
        left -= 1 + stay.runs.size();
    }
    return {};
}

std::optional<std::size_t> LogRows::rowOf(logbook::StayId stay, logbook::FishId run) const {
    const auto position = logbook::positionOf(log_, stay);
    if (!position) {
        return std::nullopt;
    }
    const auto [chunk, item] = log_.placeOf(*position);
    const auto stays = log_.chunks()[chunk]->items();
    std::size_t row = before_[before_.size() - 1 - chunk];
    for (const logbook::Stay& later : stays.subspan(item + 1)) {
        row += 1 + later.runs.size();
    }
    if (!run.isGiven()) {
        return row;
    }
    const auto& runs = stays[item].runs;
    const auto found = std::ranges::find(runs, run, &logbook::Fish::id);
    return found == runs.end()
               ? std::nullopt
               : std::optional(row + 1 + static_cast<std::size_t>(found - runs.begin()));
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

logbook::Stay newStay(const water::Water& water, units::Moment now) {
    /// Long enough to be meant, short enough to be looked at and mended.
    constexpr auto usual = std::chrono::hours(2);
    constexpr auto shortest = std::chrono::minutes(5);
    const units::Moment justNow = std::chrono::floor<std::chrono::minutes>(now);
    const units::Day today = water.clock.dayOf(now);
    logbook::Stay stay;
    for (const logbook::Stay& before : water.log | std::views::reverse) {
        const units::Day its = water.clock.dayOf(before.start);
        if (its < today) {
            break;
        }
        if (its > today) {
            continue;
        }
        if (stay.start == units::Moment()) {
            const auto& limit = water.houseRules.rodLimit;
            stay.rods = before.rods && limit ? std::min(*before.rods, *limit) : before.rods;
            stay.bait = before.bait;
        }
        stay.start = std::max(stay.start, before.end);
    }
    if (stay.start == units::Moment()) {
        stay.start = std::max(justNow - usual, water.clock.at(today, std::chrono::seconds(0)));
    }
    stay.end = std::max(stay.start + shortest, std::min(stay.start + usual, justNow));
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
