// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "app/days/looking_back/log_rows.h"
#include "app/days/looking_back/stay_entry.h"

class QComboBox;
class QPushButton;

namespace widgets {
class PlainTable;
}

namespace days::looking_back {

class FishEntryPart;
class StayEntryPart;
class StayForm;
class WriteUpPart;

/// All stays and fish of the log, and whatever is typed of them.
class StaysStep : public DayStep {
    Q_OBJECT
public:
    explicit StaysStep(DayContext context);

    DayStepLine refresh() override;
    /// Begins to write down a stay of today, or of the trip that is shown.
    void addStay();
    /// Begins to write down a fish, or a lost run, of the chosen stay.
    void addRun(bool isLanded);
    /// Begins to go through the stops of the day's plan.
    void writeUp();

private:
    void layEntries();
    void layList();
    void layButtons();
    void showTrips();
    void showList(bool isShown);
    void showChosen();
    void chooseRow(int row);
    void takeChartsChoice();
    void take(logbook::StayId stay, logbook::FishId run);
    void choose(logbook::StayId stay, logbook::FishId run);
    void goBack();
    /// What is chosen of what is in the log; nothing given where nothing is.
    [[nodiscard]] LogRow chosen() const;
    void remove();
    void askPlace();
    void askFile();

    std::shared_ptr<const LogRows> rows_ = std::make_shared<const LogRows>();
    std::vector<units::Day> trips_;
    std::optional<units::Day> trip_; ///< The one that is shown; nothing: all.
    /// What was chosen last. It may be gone from the log, and be back after an undo.
    logbook::StayId stay_;
    logbook::FishId run_;
    logbook::StayId before_; ///< Chosen before it.
    bool isOfStop_ = false;  ///< The stay that is typed is that of a stop.
    QLabel* empty_ = nullptr;
    QComboBox* tripBox_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    std::vector<QPushButton*> ofStay_; ///< Buttons that need one.
    std::vector<QPushButton*> ofList_; ///< Buttons that belong to the list.
    StayEntryPart* stayEntry_ = nullptr;
    FishEntryPart* fishEntry_ = nullptr;
    WriteUpPart* writeUp_ = nullptr;
    StayForm* form_ = nullptr;
};

} // namespace days::looking_back
