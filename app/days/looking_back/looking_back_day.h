// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "app/days/looking_back/log_question.h"
#include "app/days/refresher.h"

#include <vector>

namespace days {
class StepPanel;
}

namespace days::looking_back {

class StaysStep;
class TrackTaker;

/// Looking back: from the day's track to what the water gave, where and when.
class LookingBackDay : public QWidget {
    Q_OBJECT
public:
    explicit LookingBackDay(DayContext context, QWidget* parent = nullptr);

    [[nodiscard]] StepPanel& steps() { return *panel_; }
    /// Opens the step of the day's track, and offers the stays of this one.
    void takeTrack(const QString& path);

signals:
    /// What the log says of each belief is to be seen, under Tomorrow.
    void beliefsAsked();

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void layKeys();
    void refresh();

    DayContext context_;
    StepPanel* panel_;
    std::vector<DayStep*> steps_;
    LogQuestion question_;
    StaysStep* stays_;
    TrackTaker* track_;
    Refresher* refresher_;
};

} // namespace days::looking_back
