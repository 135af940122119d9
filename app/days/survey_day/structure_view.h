// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QString>

namespace days::survey_day {

/// The thresholds that structure is found by: what the user chose, empty where the water leads;
/// and what was used.
struct StructureView {
    QString dropOff;
    QString highGround;
    QString leastSize;
    QString fineScale;
    QString broadScale;
    QString used; ///< In sentences; empty before structure was found.
};

[[nodiscard]] StructureView structureViewOf(const ViewInput& input);

} // namespace days::survey_day
