// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "core/logbook/stay.h"

class QLabel;

namespace days::looking_back {

/// The fields of one stay, or of one of its runs. What is typed becomes an edit at once.
class StayForm : public QWidget {
    Q_OBJECT
public:
    explicit StayForm(DayContext context);

    /// Shows a run where one is given, else the stay; nothing where there is no such stay.
    void show(logbook::StayId stay, logbook::FishId run);
    /// The hand goes on in the first field of what is shown.
    void focusFirst();

private:
    void showDoubts();
    /// \param stay as it is, or as it would be with what is being typed.
    void sayDoubts(const logbook::Stay& stay);

    DayContext context_;
    QLabel* doubts_; ///< What can hardly be as it was noted.
    DayStep* stayFields_;
    DayStep* runFields_;
    logbook::StayId stay_;
    logbook::FishId run_;
};

} // namespace days::looking_back
