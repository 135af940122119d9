// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/surface/survey_line.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Where to sound next".
struct NextView {
    QString state;
    QString trip;                  ///< How long, how far, what it brings.
    std::vector<QStringList> rows; ///< Line, length, heading, share of the gain.
};

/// \param trip null before it has been asked for.
[[nodiscard]] NextView nextViewOf(const surface::SurveyTrip* trip, const wording::Words& words);

} // namespace days::survey_day
