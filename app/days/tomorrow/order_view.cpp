// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/order_view.h"

#include "app/days/tomorrow/tomorrow_view.h"
#include "core/units/written_time.h"
#include "core/water/document/known_marks.h"

#include <algorithm>
#include <cmath>

namespace days::tomorrow {

using wording::Words;

namespace {

double hoursOf(std::chrono::seconds span) {
    return std::chrono::duration<double, std::ratio<3600>>(span).count();
}

/// The stops as they were planned, with the stays that are wanted now. \return whether any is
/// wanted otherwise than it was planned.
bool takeStays(const water::Water& water, const water::PlannedDay& planned,
               std::vector<OrderRow>& rows) {
    bool isOther = false;
    for (std::size_t k = 0; k < rows.size(); ++k) {
        const marks::DayStop& stop = planned.day.stops[k];
        const auto wanted = water::stayWantedAt(water.dayByHand, rows[k].place);
        isOther =
            isOther || wanted.has_value() != stop.isStayByHand || (wanted && *wanted != stop.stay);
        rows[k].stay = wanted.value_or(stop.stay);
        rows[k].cells[3] = Words::hours(hoursOf(rows[k].stay));
    }
    return isOther;
}

} // namespace

std::vector<OrderRow> orderRows(const water::Water& water, const water::PlannedDay& planned,
                                const Words& words) {
    std::vector<OrderRow> rows;
    const std::vector<QStringList> cells = dayRows(planned, water.clock, words);
    for (std::size_t k = 0; k < cells.size(); ++k) {
        const int rank = planned.day.stops[k].rank;
        const auto mark = std::ranges::find(planned.marks, rank, &marks::Mark::rank);
        const geo::LonLat place = mark == planned.marks.end() ? geo::LonLat() : mark->lonLat;
        rows.push_back({rank, place, {}, cells[k]});
    }
    bool isOther = takeStays(water, planned, rows);
    const water::DayByHand& hand = water.dayByHand;
    const std::vector<OrderRow> before = rows;
    if (water::isOrderOf(hand, planned.marks)) {
        std::ranges::stable_sort(
            rows, {}, [&hand](const OrderRow& row) { return water::turnOf(hand, row.place); });
    }
    isOther = isOther || rows != before || (hand.order.empty() && planned.day.isOrderByHand);
    if (isOther) {
        for (OrderRow& row : rows) {
            row.cells[1] = row.cells[2] = row.cells[4] = QStringLiteral("…");
        }
    }
    return rows;
}

std::vector<geo::LonLat> orderMoved(const water::PlannedDay& planned,
                                    const std::vector<OrderRow>& rows, int from, int to) {
    water::DayByHand hand;
    std::vector<geo::LonLat>& order = hand.order;
    for (const OrderRow& row : rows) {
        order.push_back(row.place);
    }
    const geo::LonLat moved = order.at(static_cast<std::size_t>(from));
    order.erase(order.begin() + from);
    order.insert(order.begin() + to, moved);
    for (const marks::Mark& mark : planned.marks) {
        if (!water::turnOf(hand, mark.lonLat)) {
            order.push_back(mark.lonLat);
        }
    }
    return order;
}

base::Result<std::optional<std::chrono::seconds>> stayTyped(const QString& text) {
    const QString trimmed = text.trimmed();
    if (trimmed.isEmpty()) {
        return std::nullopt;
    }
    const auto span = units::spanWritten(trimmed.toStdString());
    if (!span) {
        return base::fail(base::ErrorKind::wrongUse, "'" + trimmed.toStdString() + "' is no stay",
                          "the day", "give a time such as 1 h 30 or 90 min");
    }
    return std::optional(*span);
}

std::chrono::seconds stayStepped(std::chrono::seconds stay, int quarters) {
    constexpr double quarter_s = 900.0;
    const double now = static_cast<double>(stay.count()) / quarter_s;
    // From between two quarters to the next one that way.
    const double next =
        quarters > 0 ? std::floor(now + 1e-9) + quarters : std::ceil(now - 1e-9) + quarters;
    return std::chrono::seconds(std::llround(std::clamp(next * quarter_s, 300.0, 12.0 * 3600.0)));
}

} // namespace days::tomorrow
