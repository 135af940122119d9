// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/paper/mark_block.h"
#include "app/paper/sheet_writer.h"

#include <vector>

namespace paper {

/// The marks in the order of the day, with what the day says of each; by rank without a day.
[[nodiscard]] std::vector<MarkOfDay> marksOfDay(const water::PlannedDay& planned);

/// What the sheet says of the whole day, in the user's units, each once.
struct DayWords {
    QString ashore; ///< To stay there, or that the wind is not known; empty where neither is so.
    QStringList cautions;
    QStringList atEveryMark; ///< Cautions that all marks share.
    QString moves; ///< How far the boat goes, and which marks it does not; empty without a day.
    QStringList ofThisPlan;
    QStringList rules;
    QStringList forTheFish;
    QString smallPrint;
};
[[nodiscard]] DayWords wordsOf(const chart::ChartContent& content,
                               const std::vector<MarkOfDay>& ordered);

/// "07:55" at the water, "-" where it is not known.
[[nodiscard]] QString timeOf(const chart::ChartContent& content,
                             const std::optional<units::Moment>& moment);

/// What nobody must overlook: white on black, across the page, before anything else.
void writeAshore(SheetWriter& sheet, const QString& caution);
[[nodiscard]] double ashoreHeight(const SheetWriter& sheet, const QString& caution);

/// The water's name, the day, its conditions and light, and the wind as an arrow.
inline constexpr double headHeight = 92.0;
void writeHead(SheetWriter& sheet, const chart::ChartContent& content);

/// The whole water with its marks and the way of the boat. \param height of the box, in units.
void writeChart(SheetWriter& sheet, const chart::ChartContent& content, double height);
/// What a chart of `height` takes on the page.
[[nodiscard]] constexpr double chartTakes(double height) {
    return height + 8.0;
}

/// Lines for a pencil: mark, rods, runs, fish. \param rows at least one.
void writeCatchTable(SheetWriter& sheet, int rows);
/// How many of its rows fit into `height`, heading included.
[[nodiscard]] int catchRowsIn(double height);

} // namespace paper
