// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "core/logbook/stay.h"

namespace widgets {
class EntryForm;
}

namespace days::looking_back {

/// A fish, or a run that was lost, as it is typed: nothing of it is in the log until it is written
/// down.
class FishEntryPart : public DayStep {
    Q_OBJECT
public:
    explicit FishEntryPart(DayContext context);

    DayStepLine refresh() override;
    void begin(logbook::StayId stay, bool isLanded);
    [[nodiscard]] bool isUnderWay() const;
    void leave();

signals:
    void written(logbook::StayId stay, logbook::FishId run);
    void left();

private:
    [[nodiscard]] std::optional<logbook::Fish> read();
    void write();

    widgets::EntryForm* form_ = nullptr;
    logbook::StayId stay_;
    bool isLanded_ = true;
};

} // namespace days::looking_back
