// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/summary_view.h"

#include "app/days/looking_back/produced_view.h"
#include "app/wording/sayings.h"
#include "app/wording/tongue.h"
#include "core/water/document/chosen_scale.h"
#include "core/water/questions/sum_up_log.h"

namespace days::looking_back {

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
    const auto called = calledByTheUser(
        rowsThatMatter(*table, asked.by, water, water::bandsOf(water, derived), words), *table);
    QStringList sentences;
    for (const rates::Saying& saying : water::sumUpLog(called, *hours)) {
        sentences += wording::said(saying, asked.by);
    }
    return sentences;
}

QString askedWords(const water::ReviewQuestion& question, const wording::Words& words) {
    QStringList parts;
    if (!question.species.empty()) {
        parts += QString::fromStdString(question.species);
    }
    if (question.leastWeight) {
        parts += wording::Tongue::tr("from %1").arg(words.weight(*question.leastWeight));
    }
    if (!question.bait.empty()) {
        parts += wording::Tongue::tr("with %1").arg(QString::fromStdString(question.bait));
    }
    if (question.season) {
        const auto month = [](std::chrono::month_day day) {
            return QString::fromStdString(
                units::isoText(units::Day(std::chrono::year(2024), day.month(), day.day()))
                    .substr(5));
        };
        parts += wording::Tongue::tr("from %1 to %2 of each year")
                     .arg(month(question.season->first), month(question.season->last));
    }
    if (question.from) {
        parts += wording::Tongue::tr("since %1").arg(wording::Words::day(*question.from));
    }
    if (question.to) {
        parts += wording::Tongue::tr("until %1").arg(wording::Words::day(*question.to));
    }
    return parts.isEmpty() ? QString()
                           : wording::Tongue::tr("Only what was asked for: %1.")
                                 .arg(parts.join(QStringLiteral(", ")));
}

} // namespace days::looking_back
