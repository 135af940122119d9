// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/document/water.h"

#include <string>
#include <vector>

namespace water {

/// Whether a survey day can belong to this water: near its shore and its other days, depths that a
/// stillwater can have, and not in another unit than the soundings already there. \param where the
/// file, for the error. \return unusableInput with what is wrong and what to do.
[[nodiscard]] base::Result<void> checkPlausible(const Water& water, const soundings::SurveyDay& day,
                                                const std::string& where);

/// Whether that error says that depths are feet and were taken for metres.
[[nodiscard]] bool areFeet(const base::Error& error);

/// Whether a shoreline can belong to this water: crosses itself nowhere and lies where the
/// soundings are. \return unusableInput.
[[nodiscard]] base::Result<void> checkShorePlausible(const Water& water,
                                                     const std::vector<geo::LonLatPiece>& pieces,
                                                     const std::string& where);

} // namespace water
