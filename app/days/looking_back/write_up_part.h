// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "app/days/looking_back/stay_entry.h"
#include "app/days/looking_back/write_up.h"

class QComboBox;

namespace widgets {
class EntryLine;
class PlainTable;
} // namespace widgets

namespace days::looking_back {

/// Writing up the day from the sheet that was in the boat: its stops are offered, pale, and become
/// stays one by one, each by a key.
class WriteUpPart : public DayStep {
    Q_OBJECT
public:
    explicit WriteUpPart(DayContext context);

    DayStepLine refresh() override;
    /// With the last sheet that was made for a day not to come, else with the plan as it is now.
    void begin();
    void leave();
    [[nodiscard]] bool isUnderWay() const { return isVisibleTo(parentWidget()); }
    /// The hand goes back to the stop it was at.
    void focusRows();
    /// The chosen stop is that stay.
    void take(logbook::StayId stay);
    /// Nothing where the chosen stop is not in the log, or none is chosen.
    [[nodiscard]] std::optional<logbook::StayId> chosenStay() const;

signals:
    /// Another stop was chosen, or came to be written down.
    void chosen();
    /// A stop is to be written down with other times.
    void entryAsked(const days::looking_back::KnownPlace& mark, const logbook::Stay& planned,
                    const days::looking_back::StayOffered& offered);
    /// The stay of the chosen stop is to be changed.
    void changeAsked();
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void layDayLines();
    void showMark();
    void done();
    void offerDays();
    [[nodiscard]] QString planWords() const;
    /// The day chosen: its sheet, or the plan, which is made anew first where it is old.
    void takeDay();
    void takePlan(const base::Result<void>& plan);
    void takeSheet(const water::BoatSheet& sheet);
    void tick(std::size_t stop);
    void open(std::size_t stop);
    void strike(std::size_t stop);
    [[nodiscard]] std::optional<std::size_t> chosenStop() const;
    [[nodiscard]] StayOffered saidOfDay() const;

    WriteUp writeUp_;
    bool isAwaited_ = false;
    /// By the rows of the box: the day of a sheet, or nothing for the plan as it is now.
    std::vector<std::optional<units::Day>> days_;
    QComboBox* which_ = nullptr;
    QLabel* about_ = nullptr;
    QLabel* toCome_ = nullptr;
    QLabel* wrong_ = nullptr;
    widgets::EntryLine* rods_ = nullptr;
    widgets::EntryLine* bait_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
};

} // namespace days::looking_back
