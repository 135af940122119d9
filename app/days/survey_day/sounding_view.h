// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/sounding_pick.h"
#include "app/days/survey_day/view_input.h"
#include "core/soundings/verdict.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace days::survey_day {

/// One sounding that is looked at: whence it is, and how its depth came about.
struct SoundingView {
    QString title;                  ///< "2026-09-05, 10:42:17".
    QString place;                  ///< "55.20341 N  3.11272 E".
    std::vector<QStringList> terms; ///< Term, amount; the last row is the sum of those above it.
    QString verdict;                ///< "kept", "set aside: spike".
    soundings::Verdict held = soundings::Verdict::kept;
};

/// Nothing where there is no such sounding.
[[nodiscard]] std::optional<SoundingView> soundingViewOf(const ViewInput& input,
                                                         chart::SoundingPick pick);

} // namespace days::survey_day
