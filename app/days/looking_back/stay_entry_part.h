// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "app/days/looking_back/stay_entry.h"

namespace widgets {
class EntryForm;
}

namespace days::looking_back {

/// A stay as it is typed, from its place to its bait. Nothing of it is in the log until it is
/// written down.
class StayEntryPart : public DayStep {
    Q_OBJECT
public:
    explicit StayEntryPart(DayContext context);

    DayStepLine refresh() override;
    /// Begins a stay of that day, at a place that is to be said.
    void begin(units::Day day);
    /// Begins one at a mark of the day's plan, whose times and rods are offered.
    void beginPlanned(const KnownPlace& mark, const logbook::Stay& planned,
                      const StayOffered& offered);
    [[nodiscard]] bool isUnderWay() const;
    void leave();

signals:
    /// It is in the log.
    void written(logbook::StayId stay);
    void left();

private:
    void lay();
    void askPlace();
    void stopAskingPlace();
    void takePoint(geo::WaterPoint at);
    void offer(const StayOffered& offered);
    [[nodiscard]] StayRead read() const;
    void showRead();
    void write();

    widgets::EntryForm* form_ = nullptr;
    std::vector<KnownPlace> places_;
    std::optional<KnownPlace> pointed_;
    units::Day offeredFor_{};
};

} // namespace days::looking_back
