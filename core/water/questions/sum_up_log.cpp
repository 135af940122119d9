// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/sum_up_log.h"

#include "core/base/number_text.h"
#include "core/rates/compare_rates.h"
#include "core/rates/day_scatter.h"
#include "core/rates/grouping.h"
#include "core/water/questions/log_groups.h"

#include <algorithm>

namespace water {

namespace {

using rates::RateRow;
using rates::RateTable;

constexpr double rarelyByChance = 0.05;
/// With fewer fish to be expected a blank says next to nothing: it comes by chance once in e^-1.
constexpr double fishToTell = 1.0;
/// Of fewer days nobody knows how much days differ. Our choice (no source).
constexpr std::size_t fewDays = 5;
/// What an uncertain row may bring weighs as in the choice of marks, half-way between fishing what
/// is known and trying new water.
constexpr double worthOfTheUnknown = 1.0;

/// What can be gone to, or done.
bool canBeChosen(const RateRow& row) {
    return row.name != rates::notNoted && row.name != elsewhere && row.shrunk.has_value();
}

double fishExpected(const RateTable& table, const RateRow& row) {
    return table.overall.rate ? table.overall.rate->per10RodHours / 10.0 * row.rodHours : 0.0;
}

const RateRow* mostExpectedOf(const RateTable& table) {
    const RateRow* best = nullptr;
    for (const RateRow& row : table.rows) {
        const bool isTried = canBeChosen(row) && row.rodHours > 0.0;
        if (isTried &&
            (best == nullptr || row.shrunk->per10RodHours > best->shrunk->per10RodHours)) {
            best = &row;
        }
    }
    return best;
}

std::optional<rates::TooLittleTried> littleTriedOf(const RateTable& table) {
    rates::TooLittleTried little;
    for (const RateRow& row : table.rows) {
        little.rows += canBeChosen(row) ? 1 : 0;
        if (canBeChosen(row) && fishExpected(table, row) < fishToTell) {
            (row.rodHours > 0.0 ? little.names : little.untried).push_back(row.name);
            little.shareOfEffort += row.shareOfEffort;
        }
    }
    const bool isNone = little.names.empty() && little.untried.empty();
    return isNone ? std::nullopt : std::optional(little);
}

std::optional<rates::TryNext> tryNextOf(const RateTable& table, const RateRow& most) {
    const auto worth = [](const RateRow& row) {
        return row.shrunk->per10RodHours * (1.0 + worthOfTheUnknown * row.shrunkWidth);
    };
    const RateRow* best = nullptr;
    for (const RateRow& row : table.rows) {
        const bool isOpen =
            canBeChosen(row) && &row != &most && fishExpected(table, row) < 3.0 * fishToTell;
        if (isOpen && (best == nullptr || worth(row) > worth(*best))) {
            best = &row;
        }
    }
    if (best == nullptr) {
        return std::nullopt;
    }
    return rates::TryNext{best->name, *best->shrunk, best->rodHours,
                          10.0 * fishToTell / table.overall.rate->per10RodHours};
}

std::optional<rates::HoursSay> hoursOf(const std::optional<rates::HourRates>& hours) {
    const auto best = hours ? rates::bestHours(*hours) : std::nullopt;
    if (!best) {
        return std::nullopt;
    }
    rates::HoursSay out{*best, {}, hours->trips};
    for (const rates::HourRate& point : hours->points) {
        if (point.rate && point.rate->per10RodHours >= out.atBest.per10RodHours) {
            out.atBest = *point.rate;
        }
    }
    return out;
}

} // namespace

std::vector<rates::Saying> sumUpLog(const RateTable& table,
                                    const std::optional<rates::HourRates>& hours) {
    std::vector<rates::Saying> says;
    const auto take = [&says](const auto& saying) {
        if (saying) {
            says.emplace_back(*saying);
        }
    };
    if (!(table.overall.rodHours > 0.0) || !table.overall.rate) {
        says.emplace_back(rates::NothingCounted{});
    } else if (table.overall.fish == 0) {
        says.emplace_back(rates::NoFishYet{table.overall.rodHours, table.overall.rate->high});
    } else {
        if (const RateRow* most = table.rows.size() > 1 ? mostExpectedOf(table) : nullptr) {
            says.emplace_back(
                rates::MostExpected{most->name, *most->shrunk,
                                    most->shrunk->per10RodHours / table.overall.rate->per10RodHours,
                                    most->pAgainstTheRest.value_or(1.0) < rarelyByChance});
            take(littleTriedOf(table));
            take(hoursOf(hours));
            take(tryNextOf(table, *most));
        } else {
            says.emplace_back(rates::WholeRate{*table.overall.rate, table.overall.rodHours});
            take(hoursOf(hours));
        }
        if (table.days < fewDays) {
            says.emplace_back(rates::FewDays{table.days});
        }
    }
    if (table.effortUnknown > 0) {
        says.emplace_back(rates::EffortUnknown{table.effortUnknown});
    }
    return says;
}

base::Result<rates::RowComparison> compareRows(const RateTable& table, std::string_view first,
                                               std::string_view second) {
    const auto rowNamed = [&table](std::string_view name) {
        return std::ranges::find_if(table.rows, [name](const RateRow& row) {
            return base::lowerCase(row.name) == base::lowerCase(base::trimmed(name));
        });
    };
    const auto a = rowNamed(first);
    const auto b = rowNamed(second);
    for (const auto& [row, name] : {std::pair(a, first), std::pair(b, second)}) {
        if (row == table.rows.end()) {
            return base::fail(base::ErrorKind::wrongUse,
                              "no row is called '" + std::string(name) + "'", "",
                              "name two rows as the page names them");
        }
    }
    if (a == b) {
        return base::fail(base::ErrorKind::wrongUse, "a row was to be compared with itself", "",
                          "name two rows");
    }
    const auto compared = rates::compareRates(rates::worthOf(a->tally(), a->dispersion),
                                              rates::worthOf(b->tally(), b->dispersion));
    if (!compared) {
        return std::unexpected(compared.error());
    }
    return rates::RowComparison{a->name,       b->name,        compared->ratio,
                                compared->low, compared->high, compared->p};
}

} // namespace water
