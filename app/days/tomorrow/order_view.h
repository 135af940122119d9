// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/base/result.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"

#include <QStringList>

#include <chrono>
#include <optional>
#include <vector>

// The order of the day as the user handles it, worked out without any widget.
namespace days::tomorrow {

/// One stop as it stands in the list.
struct OrderRow {
    int rank = 0;
    geo::LonLat place;
    std::chrono::seconds stay{}; ///< As the user wants it, else as it was planned.
    QStringList cells;           ///< Mark, arrive, leave, stay, move.
    friend bool operator==(const OrderRow&, const OrderRow&) = default;
};

/// The stops of the day as the user wants them now. Where that is not yet planned so, there are no
/// times: none of before stands beside an order of now.
[[nodiscard]] std::vector<OrderRow>
orderRows(const water::Water& water, const water::PlannedDay& planned, const wording::Words& words);

/// The places of all marks with the stop of row `from` in the place of row `to`; marks that the day
/// has no time for come last, as they were.
[[nodiscard]] std::vector<geo::LonLat>
orderMoved(const water::PlannedDay& planned, const std::vector<OrderRow>& rows, int from, int to);

/// The stay as typed: nothing for an empty text, which gives it back; an error for what is no time.
[[nodiscard]] base::Result<std::optional<std::chrono::seconds>> stayTyped(const QString& text);

/// A quarter of an hour more or less, on the quarter, from 5 minutes to 12 hours.
[[nodiscard]] std::chrono::seconds stayStepped(std::chrono::seconds stay, int quarters);

} // namespace days::tomorrow
