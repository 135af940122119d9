// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Bands and structure".
struct BandsView {
    QString state;
    QString edges; ///< "2, 4, 6, 9.1, 14": those in force.
    QString limit;
    bool areEdgesChosen = false; ///< By the program, from the depths.
    bool isLimitChosen = false;
    std::vector<QStringList> bands; ///< Range, area, share, volume; at today's level.
    QString worthFishing;           ///< How much water is no deeper than the limit, and when.
};

[[nodiscard]] BandsView bandsViewOf(const ViewInput& input);

} // namespace days::survey_day
