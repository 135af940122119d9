// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "app/days/refresher.h"
#include "app/days/tomorrow/lie_hand.h"

#include <QTimer>

#include <vector>

namespace days {
class StepPanel;
}

namespace days::tomorrow {

/// Planning: from the conditions expected to the sheet for the boat.
class TomorrowDay : public QWidget {
    Q_OBJECT
public:
    explicit TomorrowDay(DayContext context, QWidget* parent = nullptr);

    /// Opens the step with the weights and what the log says of them.
    void openBeliefs();
    [[nodiscard]] StepPanel& steps() { return *panel_; }

    /// The chart's hand on boat, anchors and baits of a mark.
    [[nodiscard]] LieHand& hand() { return hand_; }

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void refresh();
    void planSoon();
    void planNow();
    /// True where ground, log and ropes of the last plan still hold: a plan made anew is one of a
    /// moment.
    [[nodiscard]] bool isRankingEnough() const;

    DayContext context_;
    StepPanel* panel_;
    std::vector<DayStep*> steps_;
    Refresher* refresher_;
    QTimer planTimer_{this};
    LieHand hand_;
};

} // namespace days::tomorrow
