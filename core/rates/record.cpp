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
    if (!table.untried || !table.overall.shrunk) {
        return {};
    }
    double rate = table.untried->per10RodHours;
    double width = table.untriedWidth;
    const auto row = std::ranges::find(table.rows, group, &RateRow::name);
    if (row != table.rows.end() && row->shrunk) {
        rate = row->shrunk->per10RodHours;
        width = row->shrunkWidth;
    }
    return {rate / table.overall.shrunk->per10RodHours,
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
    const auto first = std::ranges::find_if(
        tables_, [](const RateTable& table) { return table.overall.shrunk.has_value(); });
    if (first == tables_.end()) {
        return std::nullopt;
    }
    double mean = first->overall.shrunk->per10RodHours / 10.0;
    double squareOverMean = squareOf(first->overall.shrunkWidth);
    for (std::size_t k = 0; k < std::min(groups.size(), tables_.size()); ++k) {
        if (groups[k]) {
            const Ratio ratio = ratioIn(tables_[k], *groups[k]);
            mean *= ratio.mean;
            squareOverMean *= ratio.squareOverMean;
        }
    }
    const Belief belief{mean, mean * mean * (squareOverMean - 1.0)};
    return Record{belief.rate(), belief.relativeWidth()};
}

} // namespace rates
