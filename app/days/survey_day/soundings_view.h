// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Bring in soundings".
struct SoundingsView {
    QString state;                 ///< "3 days, 41,208 soundings".
    std::vector<QStringList> rows; ///< Day, soundings, level, water; one for each survey day.
    QString others;                ///< Lead line soundings; empty where there are none.
};

[[nodiscard]] SoundingsView soundingsViewOf(const ViewInput& input);

} // namespace days::survey_day
