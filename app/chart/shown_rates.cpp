// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/shown_rates.h"

#include <algorithm>

namespace chart {

namespace {

const rates::RateRow* rowOf(const rates::RateTable& table, const std::string& name) {
    const auto row = std::ranges::find(table.rows, name, &rates::RateRow::name);
    return row == table.rows.end() ? nullptr : &*row;
}

} // namespace

std::optional<rates::Rate> ShownRates::of(const std::string& name) const {
    const rates::RateRow* row = rowOf(table, name);
    return row != nullptr ? row->shrunk : table.untried;
}

bool ShownRates::isTried(const std::string& name) const {
    const rates::RateRow* row = rowOf(table, name);
    return row != nullptr && row->rate.has_value();
}

double ShownRates::most() const {
    double most = 0.0;
    for (const rates::RateRow& row : table.rows) {
        most = std::max(most, row.shrunk ? row.shrunk->per10RodHours : 0.0);
    }
    return most;
}

std::vector<const logbook::Fish*> runsSeen(const logbook::Stay& stay,
                                           const std::optional<water::ReviewQuestion>& asked) {
    const bool isKindAsked = asked && (!asked->species.empty() || asked->leastWeight);
    std::vector<const logbook::Fish*> seen;
    for (const logbook::Fish& run : stay.runs) {
        if (!isKindAsked || water::counts(run, *asked)) {
            seen.push_back(&run);
        }
    }
    return seen;
}

Sureness surenessOf(const rates::Rate& rate) {
    const double half = 0.5 * (rate.high - rate.low);
    if (half <= 0.5 * rate.per10RodHours) {
        return Sureness::sure;
    }
    return half <= rate.per10RodHours ? Sureness::rough : Sureness::hardly;
}

} // namespace chart
