// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "app/days/refresher.h"

#include <vector>

namespace days {
class StepPanel;
}

namespace days::looking_back {

/// Looking back: from the day's track to what the water gave, where and when.
class LookingBackDay : public QWidget {
    Q_OBJECT
public:
    explicit LookingBackDay(DayContext context, QWidget* parent = nullptr);

    [[nodiscard]] StepPanel& steps() { return *panel_; }

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void refresh();

    DayContext context_;
    StepPanel* panel_;
    std::vector<DayStep*> steps_;
    Refresher* refresher_;
};

} // namespace days::looking_back
