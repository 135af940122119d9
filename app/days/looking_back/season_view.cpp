// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/season_view.h"

#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/produced_view.h"
#include "app/days/looking_back/summary_view.h"
#include "app/wording/tongue.h"
#include "core/water/document/chosen_scale.h"

#include <algorithm>

namespace days::looking_back {

namespace {

/// A page holds no more beside its chart.
constexpr std::size_t placesListed = 10;

void addPlaces(paper::SeasonPage& page, const rates::RateTable& table,
               const chart::ChartContent& content) {
    const auto rows =
        rowsThatMatter(table, water::ReviewBy::section, *content.water,
                       water::bandsOf(*content.water, content.derived), content.words);
    const auto tried = static_cast<std::size_t>(std::ranges::count_if(rows, &ProducedRow::isTried));
    for (std::size_t i = 0; i < std::min(tried, placesListed); ++i) {
        const rates::RateRow& its = rows[i].counted;
        page.places.push_back({rows[i].name, rateWords(its.shrunk), QString::number(its.fish),
                               wording::Tongue::number(its.rodHours, 0), QString::number(its.stays),
                               QString::number(its.blanks)});
    }
    QStringList left;
    if (tried > placesListed) {
        left += wording::Tongue::tr("%1 more that were fished are not listed.")
                    .arg(wording::Words::count(tried - placesListed));
    }
    if (const QString untried = untriedWords(rows.size() - tried, table); !untried.isEmpty()) {
        left += untried;
    }
    page.untried = left.join(' ');
    for (const std::string& note : table.notes) {
        page.notes += wording::Tongue::ofCore(note);
    }
}

} // namespace

QString spanLine(const logbook::LogSum& sum) {
    if (sum.months.empty()) {
        return wording::Tongue::tr("nothing logged yet");
    }
    return wording::Tongue::tr("%1 to %2: %3")
        .arg(wording::Words::day(sum.first), wording::Words::day(sum.last), logLine(sum));
}

base::Result<paper::SeasonPage> seasonPage(const chart::ChartContent& content,
                                           const logbook::LogSum& sum, base::Progress& progress) {
    if (!content.water || content.water->log.empty()) {
        return base::fail(base::ErrorKind::wrongUse, "nothing is logged yet", "season page",
                          "add stays first");
    }
    const water::Water& water = *content.water;
    paper::SeasonPage page;
    page.span = spanLine(sum);
    page.content = content;
    page.content.logAsked.reset();
    page.content.rates.reset();
    page.months = seasonRows(sum);
    if (content.derived.sections) {
        auto table = water::reviewLog(water, content.derived, {}, progress);
        if (!table) {
            return std::unexpected(table.error());
        }
        addPlaces(page, *table, content);
        page.content.rates = std::make_shared<const chart::ShownRates>(
            chart::ShownRates{water::ReviewBy::section, std::move(*table)});
    }
    auto said = inShort(water, content.derived, {}, content.words, progress);
    if (!said) {
        return std::unexpected(said.error());
    }
    page.said = std::move(*said);
    auto hours = water::reviewHours(water, {}, progress);
    if (!hours) {
        return std::unexpected(hours.error());
    }
    page.hours = paper::HoursShown{std::move(*hours), water::fishedLight(water, {}),
                                   wording::Tongue::tr("When: the whole log")};
    return page;
}

} // namespace days::looking_back
