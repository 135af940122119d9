// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/contours/band.h"
#include "core/rates/rate.h"
#include "core/water/questions/review_log.h"

#include <QString>
#include <QStringList>

#include <vector>

// What produced, as the step shows it, worked out without any widget.
namespace days::looking_back {

/// "section", "kind of place", "days since last fished": what the rows are, to choose from.
[[nodiscard]] QString titleOf(water::ReviewBy by);

/// One row, as it is shown: its name as the user calls it, and what it stands for.
struct ProducedRow {
    QString name;
    rates::RateRow counted;
    [[nodiscard]] bool isTried() const { return counted.rate.has_value(); }
};

/// The rows in the order in which they matter: of places and baits those first of which most is to
/// be expected; of what has an order of its own, in that order. Untried ones last. Marks are called
/// by what lies near them, depths and temperatures by the user's units.
[[nodiscard]] std::vector<ProducedRow> rowsThatMatter(const rates::RateTable& table,
                                                      water::ReviewBy by, const water::Water& water,
                                                      const contours::Bands& bands,
                                                      const wording::Words& words);

/// The table with these rows, called as the user calls them.
[[nodiscard]] rates::RateTable calledByTheUser(const std::vector<ProducedRow>& rows,
                                               rates::RateTable table);

/// Name, rod-hours, blanks of all stays, fish, steadied rate.
[[nodiscard]] QStringList producedCells(const rates::RateRow& row, const QString& name);

/// "12 more were never tried: 1.2 (0.3 to 3.1) is to be expected of each."
[[nodiscard]] QString untriedWords(std::size_t untried, const rates::RateTable& table);

/// Two rows beside one another, and whether chance alone makes such a difference.
[[nodiscard]] QString comparedWords(const ProducedRow& chosen, const ProducedRow& other);

/// The rows as a table for a spreadsheet, as they are shown: comma-separated after RFC 4180.
[[nodiscard]] QString producedTable(const std::vector<ProducedRow>& rows,
                                    const wording::Words& words);

} // namespace days::looking_back
