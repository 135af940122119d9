// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/looking_back/known_places.h"
#include "app/widgets/plain_rows.h"
#include "core/logbook/stay.h"

#include <QStringList>

#include <memory>
#include <vector>

namespace days::looking_back {

/// The day as it was planned, beside what of it is in the log: the sheet that was in the boat, to
/// be gone through in the evening or whenever there is time. A plan is no record: what nobody has
/// said stays pale.
class WriteUp {
public:
    WriteUp() = default;
    /// The stops as the sheet has them, whatever is planned later.
    explicit WriteUp(const water::BoatSheet& sheet);

    [[nodiscard]] std::size_t size() const { return stops_.size(); }
    [[nodiscard]] units::Day day() const { return day_; }
    [[nodiscard]] const KnownPlace& markOf(std::size_t stop) const { return stops_[stop].mark; }
    /// A blank at the times that were planned: the place and the times, and nothing else.
    [[nodiscard]] logbook::Stay plannedStay(std::size_t stop) const;
    /// The stay of the log that this stop became; nothing while nobody has said it.
    [[nodiscard]] std::optional<logbook::StayId> stayOf(std::size_t stop,
                                                        const water::Water& water) const;
    /// From now on the stop is this stay.
    void take(std::size_t stop, logbook::StayId stay) { stops_[stop].written = stay; }
    /// The boat never lay there; again: it did after all.
    void strike(std::size_t stop) { stops_[stop].isStruck = !stops_[stop].isStruck; }
    [[nodiscard]] bool isStruck(std::size_t stop) const { return stops_[stop].isStruck; }

    /// Mark, times, what came of it.
    [[nodiscard]] QStringList cells(std::size_t stop, const water::Water& water) const;
    [[nodiscard]] widgets::RowLook look(std::size_t stop, const water::Water& water) const;
    /// "2 of 4 stops written down"
    [[nodiscard]] QString line(const water::Water& water) const;

private:
    struct Stop {
        KnownPlace mark;
        units::Moment from; ///< Once the ropes are tight.
        units::Moment to;
        bool isStruck = false;
        logbook::StayId written;
    };
    units::Day day_{};
    std::vector<Stop> stops_;
};

} // namespace days::looking_back
