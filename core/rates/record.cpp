// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/record.h"

#include "core/rates/gamma_prior.h"

#include <algorithm>

namespace rates {

namespace {

/// What one grouping says of a group: its rate over that of the whole, and how unsure that is
/// besides what the whole is unsure by (1 + squared relative width).
struct Ratio {
    double mean = 1.0;
    double squareOverMean = 1.0;
};

double squareOf(double relativeWidth) {
    return 1.0 + relativeWidth * relativeWidth;
}

Ratio ratioIn(const RateTable& table, std::string_view group) {
    const std::optional<Rate>& untried = table.untried;
    const std::optional<Rate>& whole = table.overall.shrunk;
    if (!untried || !whole) {
        return {};
    }
    double rate = untried->per10RodHours;
    double width = table.untriedWidth;
    const auto row = std::ranges::find(table.rows, group, &RateRow::name);
    if (row != table.rows.end()) {
        const std::optional<Rate>& shrunk = row->shrunk;
        rate = shrunk ? shrunk->per10RodHours : rate;
        width = shrunk ? row->shrunkWidth : width;
    }
    return {rate / whole->per10RodHours,
            std::max(1.0, squareOf(width) / squareOf(table.overall.shrunkWidth))};
}

} // namespace

RecordBook::RecordBook(std::span<const RateTable> tables) : tables_(tables.begin(), tables.end()) {}

std::optional<Rate> RecordBook::whole() const {
    for (const RateTable& table : tables_) {
        if (table.overall.shrunk) {
            return table.overall.shrunk;
        }
    }
    return std::nullopt;
}

std::optional<Record>
RecordBook::of(std::span<const std::optional<std::string_view>> groups) const {
    const std::optional<Rate> rate = whole();
    if (!rate) {
        return std::nullopt;
    }
    const auto first = std::ranges::find_if(
        tables_, [](const RateTable& table) { return table.overall.shrunk.has_value(); });
    double mean = rate->per10RodHours / 10.0;
    double squareOverMean = squareOf(first->overall.shrunkWidth);
    for (std::size_t k = 0; k < std::min(groups.size(), tables_.size()); ++k) {
        const std::optional<std::string_view>& group = groups[k];
        if (group) {
            const Ratio ratio = ratioIn(tables_[k], *group);
            mean *= ratio.mean;
            squareOverMean *= ratio.squareOverMean;
        }
    }
    const Belief belief{mean, mean * mean * (squareOverMean - 1.0)};
    return Record{belief.rate(), belief.relativeWidth()};
}

} // namespace rates
