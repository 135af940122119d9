// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/hypsography_view.h"
#include "app/days/survey_day/view_input.h"

#include <array>

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Draw the water".
struct DrawingView {
    QString state;
    QString cell;                       ///< As set; empty where it is chosen from the soundings.
    QString level;                      ///< Today's, from chart level.
    std::vector<QStringList> form;      ///< Area, volume, depths: what, at chart level, today.
    bool hasToday = false;              ///< Today's level is another than that of the chart.
    HypsographyView hypsography;        ///< Area and volume by depth.
    QString chosen;                     ///< Which cell and smoothing, and from what they come.
    std::vector<QStringList> how;       ///< How it was drawn: what, value.
    std::array<double, 3> trustShare{}; ///< Of the water: sounded, inferred, guess; 0 to 1.
    QString trust;                      ///< The same in words.
    QString doubts; ///< What is to be seen to before drawing: days that differ, levels not known.
    std::vector<QString> notes; ///< What was assumed.
    bool isStale = true;
    bool canDraw = false; ///< There is something to draw from.
};

[[nodiscard]] DrawingView drawingViewOf(const ViewInput& input);

} // namespace days::survey_day
