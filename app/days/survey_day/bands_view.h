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
    QString edges; ///< "2, 4, 6, 9.1, 14".
    QString limit;
    std::vector<QStringList> bands; ///< Range, area, share, volume.
    std::vector<QStringList> zones; ///< Name, depths, area; in the order of the structure.
};

[[nodiscard]] BandsView bandsViewOf(const ViewInput& input);

} // namespace days::survey_day
