// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/paper/hours_picture.h"
#include "core/base/result.h"

#include <QPagedPaintDevice>
#include <QStringList>

#include <filesystem>
#include <optional>
#include <vector>

namespace paper {

/// What the season came to, as it is to be read on a winter's evening. A value.
struct SeasonPage {
    QString span;                ///< "3 Sep to 28 Nov 2026: 33 trips, 134 stays, 95 fish"
    QStringList said;            ///< What it says, in sentences; stands first.
    chart::ChartContent content; ///< Its rates, where they are to be shaded, with it.
    std::vector<QStringList>
        places;      ///< Where, steadied rate and range, fish, rod-hours, stays, blank.
    QString untried; ///< Of the places that are not listed.
    std::optional<HoursShown> hours;
    std::vector<QStringList> months; ///< Month, trips, stays, blanks, fish.
    QStringList notes;               ///< What the counts can bear.
};

/// One page of A4 for a season as long as most; more where it takes more. \return how many pages;
/// wrongUse where there is no water to draw.
[[nodiscard]] base::Result<int> paintSeasonPage(QPagedPaintDevice& device, const SeasonPage& page);
/// The same as a PDF, whole or not at all.
[[nodiscard]] base::Result<int> saveSeasonPage(const std::filesystem::path& path,
                                               const SeasonPage& page);

} // namespace paper
