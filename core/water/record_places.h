// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/rates/record.h"
#include "core/water/derived.h"
#include "core/water/water.h"

#include <optional>

namespace water {

/// What the log says of places, by their section and their kind of zone. Refers to the water and to
/// what is derived, which must outlive it.
class PlaceRecords {
public:
    PlaceRecords(const Water& water, const Derived& derived, rates::RecordBook book)
        : water_(water), derived_(derived), book_(std::move(book)) {}

    [[nodiscard]] std::optional<rates::Record> of(geo::WaterPoint place) const;
    [[nodiscard]] std::optional<rates::Rate> whole() const { return book_.whole(); }

private:
    const Water& water_;
    const Derived& derived_;
    rates::RecordBook book_;
};

/// Counts the log by section and by kind of zone. \param derived made up to Step::sections.
[[nodiscard]] PlaceRecords recordsOf(const Water& water, const Derived& derived,
                                     base::Progress& progress);

} // namespace water
