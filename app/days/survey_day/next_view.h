// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/geo/water_frame.h"
#include "core/surface/survey_line.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace days::survey_day {

/// The step "Where to sound next".
struct NextView {
    QString state;
    QString trip;                  ///< How long, how far, what it brings.
    QString line;                  ///< Where the chosen line begins and ends.
    std::vector<QStringList> rows; ///< Line, length, heading, minutes, share of the gain.
};

/// \param trip null before it has been asked for. \param chosen position of a line; -1 for none.
[[nodiscard]] NextView nextViewOf(const surface::SurveyTrip* trip,
                                  const std::optional<geo::WaterFrame>& frame,
                                  const wording::Words& words, int chosen = -1);

} // namespace days::survey_day
