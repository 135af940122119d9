// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <QString>
#include <QStringList>

#include <vector>

// What the user himself has put into the list of marks and taken out of it, worked out without any
// widget.
namespace days::tomorrow {

/// What is known of a place that the user typed, before it becomes a mark.
struct TypedPlace {
    bool isOnWater = false; ///< Within the outline, whatever the level of the day.
    QString words;          ///< "Gannick Bar, 120 m NE, 5.4 m deep", or where else it lies.
};

/// \param derived where nothing is drawn yet, nothing is refused.
[[nodiscard]] TypedPlace lookedUp(const water::Water& water, const water::Derived& derived,
                                  geo::LonLat place, const wording::Words& words);

/// An own mark a row: what it is called, and how deep it lies at the planned day's level.
[[nodiscard]] std::vector<QStringList>
ownMarkRows(const water::Water& water, const water::Derived& derived, const wording::Words& words);

/// A banned piece of water a row: what it is called, and its area.
[[nodiscard]] std::vector<QStringList> bannedRows(const water::Water& water,
                                                  const wording::Words& words);

} // namespace days::tomorrow
