// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Shoreline".
struct ShorelineView {
    QString state;
    QString facts;      ///< Area, islands, length of bank; or what is assumed without a shore.
    QString chartLevel; ///< On the gauge.
    QString launch;     ///< Its position; empty where it is not known.
    bool hasShore = false;
    bool hasIslands = false;
    bool canTrace = false; ///< There is a chart to trace on.
};

[[nodiscard]] ShorelineView shorelineViewOf(const ViewInput& input);

} // namespace days::survey_day
