// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/review_log.h"

#include "core/base/number_text.h"
#include "core/rates/count_hour_rates.h"
#include "core/rates/count_rates.h"
#include "core/water/document/chosen_scale.h"
#include "core/water/document/grouped_log.h"
#include "core/water/questions/log_groups.h"

#include <map>

namespace water {

using base::Result;
using Stays = std::span<const logbook::Stay>;

namespace {

/// What one way of sorting needs: the stays in their groups, and the order in which the rows come.
struct Sorting {
    std::vector<rates::GroupedStay> stays;
    std::vector<std::string> order;
    bool listUntried = false;
};

std::vector<std::string> sectionNames(const sections::SectionMap& map) {
    std::vector<std::string> names;
    for (const sections::Section& section : map.sections) {
        names.push_back(section.name);
    }
    return names;
}

std::vector<std::string> bandNames(const contours::Bands& bands) {
    std::vector<std::string> names;
    for (std::size_t band = 0; band < bands.count(); ++band) {
        names.push_back(bandName(bands, band));
    }
    return names;
}

Sorting sortingOf(const Water& water, const Derived& derived, ReviewBy by) {
    switch (by) {
    case ReviewBy::section:
        return {bySection(water, derived), sectionNames(*derived.sections), true};
    case ReviewBy::zone:
        return {byZone(water, derived), {}, false};
    case ReviewBy::band:
        return {byBand(water, derived), bandNames(bandsOf(water, derived)), true};
    case ReviewBy::hour:
        return {groupsOf(water.log, [&](Stays stays) { return rates::byHour(stays, water.clock); }),
                {},
                false};
    case ReviewBy::bait:
        return {groupsOf(water.log, rates::byBait), {}, false};
    case ReviewBy::wind:
        return {groupsOf(water.log, rates::byWind), rates::windOrder(), false};
    case ReviewBy::month:
        return {
            groupsOf(water.log, [&](Stays stays) { return rates::byMonth(stays, water.clock); }),
            rates::monthOrder(), false};
    case ReviewBy::mark:
        return {byMark(water), {}, false};
    case ReviewBy::temperature:
        return {groupsOf(water.log, rates::byTemperature), rates::temperatureOrder(), false};
    case ReviewBy::daysSince:
        return {byDaysSince(water), daysSinceOrder(), false};
    }
    return {};
}

bool needsPlaces(ReviewBy by) {
    return by == ReviewBy::section || by == ReviewBy::zone || by == ReviewBy::band;
}

/// Where each mark is.
void placeMarks(const Water& water, rates::RateTable& table) {
    const std::vector<geo::LonLat> places = placesOfMarks(water);
    std::map<std::string, geo::LonLat> named;
    for (std::size_t i = 0; i < places.size(); ++i) {
        named.emplace("mark " + std::to_string(i + 1), places[i]);
    }
    for (rates::RateRow& row : table.rows) {
        if (const auto found = named.find(row.name); found != named.end()) {
            row.place = found->second;
        }
    }
}

} // namespace

std::string_view nameOf(ReviewBy by) {
    static constexpr std::array<std::string_view, allReviewBy.size()> names{
        "section", "zone",  "band", "hour",        "bait",
        "wind",    "month", "mark", "temperature", "days_since"};
    return names[static_cast<std::size_t>(by)];
}

std::optional<ReviewBy> reviewByNamed(std::string_view name) {
    for (const ReviewBy by : allReviewBy) {
        if (nameOf(by) == name) {
            return by;
        }
    }
    return std::nullopt;
}

bool isAskedAbout(const logbook::Stay& stay, const ReviewQuestion& question,
                  const units::Clock& clock) {
    const units::Day day = clock.dayOf(stay.start);
    if ((question.from && day < *question.from) || (question.to && day > *question.to) ||
        (question.season && !question.season->holds(day))) {
        return false;
    }
    return question.bait.empty() || fishedBait(stay, question.bait);
}

bool counts(const logbook::Fish& run, const ReviewQuestion& question) {
    return run.landed &&
           (question.species.empty() ||
            base::lowerCase(run.species) == base::lowerCase(question.species)) &&
           (!question.leastWeight || (run.weight && *run.weight >= *question.leastWeight));
}

Result<rates::RateTable> reviewLog(const Water& water, const Derived& derived,
                                   const ReviewQuestion& question, base::Progress& progress) {
    if (needsPlaces(question.by) &&
        !(derived.drawn && derived.structure && derived.weed && derived.sections)) {
        return base::fail(base::ErrorKind::wrongUse,
                          "the log cannot be sorted by place before the water is drawn", "",
                          "draw the water first, or sort by hour, bait, wind, month or mark");
    }
    Sorting sorting = sortingOf(water, derived, question.by);
    // Only now: that a place was fished, and which mark it is, does not depend on what is asked.
    std::erase_if(sorting.stays, [&](const rates::GroupedStay& grouped) {
        return !isAskedAbout(*grouped.stay, question, water.clock);
    });
    rates::RateSettings settings;
    settings.species = question.species;
    settings.leastWeight = question.leastWeight;
    settings.from = question.from;
    settings.to = question.to;
    settings.clock = water.clock;
    settings.order = std::move(sorting.order);
    settings.listUntried = sorting.listUntried;
    settings.rowWord =
        question.by == ReviewBy::daysSince ? "time since" : std::string(nameOf(question.by));
    auto table = rates::countRates(sorting.stays, settings, progress);
    if (table && question.by == ReviewBy::mark) {
        placeMarks(water, *table);
    }
    return table;
}

Result<rates::HourRates> reviewHours(const Water& water, const ReviewQuestion& question,
                                     base::Progress& progress) {
    rates::HourSettings settings;
    settings.species = question.species;
    logbook::Log asked;
    for (const logbook::Stay& stay : water.log) {
        if (isAskedAbout(stay, question, water.clock)) {
            asked.push_back(stay);
        }
    }
    return rates::countHourRates(asked, water.clock, settings, progress);
}

} // namespace water
