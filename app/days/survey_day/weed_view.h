// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Weed".
struct WeedView {
    QString state;
    QString secchi;
    double weedLeft = 1.0;
    QString growth; ///< How deep weed grows, by the water's clarity.
    std::vector<QStringList>
        notes; ///< Growth, height, seen, where; in the order of the water's notes.
};

[[nodiscard]] WeedView weedViewOf(const ViewInput& input);

} // namespace days::survey_day
