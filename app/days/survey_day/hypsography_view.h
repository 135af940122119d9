// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QPointF>
#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// Area and volume below each depth, as a curve and as a table in the user's units.
struct HypsographyView {
    /// Amount and depth, from the surface down.
    using Curve = std::vector<QPointF>;

    QStringList columns;           ///< In full; two more where today's level is another.
    QStringList heads;             ///< The same for a narrow table.
    std::vector<QStringList> rows; ///< Bare numbers.
    Curve area;                    ///< At today's level.
    Curve volume;
    Curve chartArea; ///< At chart level; empty where that is today's.
    Curve chartVolume;
    double depthTick = 1.0; ///< Between the lines of the depth scale.
    QString depthTitle;     ///< "depth, m"
    QString areaTitle;
    QString volumeTitle;
    QString about; ///< What curve and table refer to.

    /// Head and rows for a spreadsheet: columns apart by tabs, a row a line.
    [[nodiscard]] QString asText() const;

    friend bool operator==(const HypsographyView&, const HypsographyView&) = default;
};

/// Without rows where there is no drawing yet.
[[nodiscard]] HypsographyView hypsographyViewOf(const ViewInput& input);

} // namespace days::survey_day
