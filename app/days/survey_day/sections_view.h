// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Sections".
struct SectionsView {
    QString state;
    QString wanted;                ///< Size of a section.
    std::vector<QStringList> rows; ///< Name, area, mean and greatest depth, weed.
    std::vector<QString> details;  ///< What a row has no room for: bank, drop-off, trust, way.
};

[[nodiscard]] SectionsView sectionsViewOf(const ViewInput& input);

} // namespace days::survey_day
