// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/rate.h"

#include <optional>
#include <span>
#include <string_view>
#include <utility>

namespace rates {

/// What the log holds of one place at one time of day.
struct Record {
    Rate rate;                  ///< Expected, per 10 rod-hours, 95 %.
    double relativeWidth = 0.0; ///< Standard deviation over mean: large where little was tried.
};

/// The log's verdict on places, from the tables of several groupings of the same stays.
///
/// The whole water's rate is multiplied by what each grouping says of the place's group (its
/// section, its kind of zone, the hour block), each shrunk by how little it was tried; the
/// groupings are taken for independent, which a log that always fishes one section at one hour
/// cannot tell apart.
class RecordBook {
public:
    RecordBook() = default;
    /// \param tables by any groupings, one without effort says nothing.
    explicit RecordBook(std::span<const RateTable> tables);

    /// True where no stay has been counted: then nothing can be said of any place.
    [[nodiscard]] bool isEmpty() const { return !whole().has_value(); }
    /// The record of a place that belongs to `groups[k]` by the k-th table. Where a group is absent
    /// the k-th table is not asked; a group that it does not name was never tried. Nothing for an
    /// empty book.
    [[nodiscard]] std::optional<Record>
    of(std::span<const std::optional<std::string_view>> groups) const;
    /// Of the whole water.
    [[nodiscard]] std::optional<Rate> whole() const;

private:
    std::vector<RateTable> tables_;
};

} // namespace rates
