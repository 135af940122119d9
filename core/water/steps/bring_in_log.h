// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rates/track.h"
#include "core/water/steps/sort_stays.h"

#include <filesystem>
#include <optional>

namespace water {

/// Stays, runs and fish from a table, told by what the log holds already.
/// \param sharing what stays of another angler at a place and time of the log's are;
/// acts::addStays() is to be told the same.
[[nodiscard]] base::Result<LogBroughtIn> bringInLog(const Water& water,
                                                    const std::filesystem::path& path,
                                                    base::Progress& progress, Sharing sharing = {});

/// The track of a fishing day in the water's frame. \return what readers::readTrack() returns;
/// wrongUse for a water without a frame.
[[nodiscard]] base::Result<rates::Track>
bringInTrack(const Water& water, const std::filesystem::path& path, base::Progress& progress);

/// Blank stays found in a day's track; the user fills in the fish. Known are those that overlap one
/// of the log in time and lay within a cast of it. \param rods that were out; nothing where nobody
/// says.
[[nodiscard]] base::Result<LogBroughtIn> bringInTrackStays(const Water& water,
                                                           const std::filesystem::path& path,
                                                           std::optional<int> rods,
                                                           base::Progress& progress);

} // namespace water
