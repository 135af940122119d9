// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/summary_view.h"

#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/produced_view.h"

#include <algorithm>

namespace days::looking_back {

namespace {

/// A page that says more is not read.
constexpr std::size_t notesSaid = 2;

QString mostWords(const std::vector<ProducedRow>& rows, const rates::RateTable& table) {
    if (table.overall.fish == 0 || !table.overall.rate) {
        return QStringLiteral("No fish that counts yet, in %1 rod-hours.")
            .arg(table.overall.rodHours, 0, 'f', 0);
    }
    if (rows.empty() || !rows.front().isTried() || !rows.front().counted.shrunk) {
        return QStringLiteral("Over the whole water %1 fish per 10 rod-hours.")
            .arg(rateWords(table.overall.rate));
    }
    return QStringLiteral("Most is to be expected of %1: %2 fish per 10 rod-hours, steadied; of "
                          "the whole water %3.")
        .arg(rows.front().name, rateWords(rows.front().counted.shrunk),
             rateWords(table.overall.rate));
}

} // namespace

base::Result<QStringList> inShort(const water::Water& water, const water::Derived& derived,
                                  const water::ReviewQuestion& question,
                                  const wording::Words& words, base::Progress& progress) {
    water::ReviewQuestion asked = question;
    asked.by = derived.sections ? water::ReviewBy::section : water::ReviewBy::mark;
    const auto table = water::reviewLog(water, derived, asked, progress);
    if (!table) {
        return std::unexpected(table.error());
    }
    const auto hours = water::reviewHours(water, asked, progress);
    if (!hours) {
        return std::unexpected(hours.error());
    }
    const auto rows = rowsThatMatter(*table, asked.by, water, words);
    QStringList sentences{mostWords(rows, *table)};
    for (std::size_t i = 0; i < std::min(notesSaid, table->notes.size()); ++i) {
        sentences += QString::fromStdString(table->notes[i]);
    }
    const auto untried = static_cast<std::size_t>(
        std::ranges::count_if(rows, [](const ProducedRow& row) { return !row.isTried(); }));
    if (untried > 0) {
        sentences += untriedWords(untried, *table);
    }
    const QString best = bestHoursWords(*hours);
    sentences += QStringLiteral("Hours: %1.").arg(best);
    return sentences;
}

QString askedWords(const water::ReviewQuestion& question, const wording::Words& words) {
    QStringList parts;
    if (!question.species.empty()) {
        parts += QString::fromStdString(question.species);
    }
    if (question.leastWeight) {
        parts += QStringLiteral("from %1").arg(words.weight(*question.leastWeight));
    }
    if (!question.bait.empty()) {
        parts += QStringLiteral("with %1").arg(QString::fromStdString(question.bait));
    }
    if (question.season) {
        const auto month = [](std::chrono::month_day day) {
            return QString::fromStdString(
                units::isoText(units::Day(std::chrono::year(2024), day.month(), day.day()))
                    .substr(5));
        };
        parts += QStringLiteral("from %1 to %2 of each year")
                     .arg(month(question.season->first), month(question.season->last));
    }
    if (question.from) {
        parts += QStringLiteral("since %1").arg(wording::Words::day(*question.from));
    }
    if (question.to) {
        parts += QStringLiteral("until %1").arg(wording::Words::day(*question.to));
    }
    return parts.isEmpty() ? QString()
                           : QStringLiteral("Only what was asked for: %1.")
                                 .arg(parts.join(QStringLiteral(", ")));
}

} // namespace days::looking_back
