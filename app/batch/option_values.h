// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/contours/band.h"
#include "core/geo/lon_lat.h"
#include "core/marks/factor.h"
#include "core/readers/soundings_file.h"
#include "core/units/moment.h"
#include "core/water/document/water.h"

#include <optional>
#include <string>

namespace batch {

// Texts of options to values; each error names the option and what it takes.

/// "x=COL,y=COL,depth=COL,time=COL", any of them.
[[nodiscard]] base::Result<readers::ColumnChoice> columnsFrom(const std::string& text);
/// "EPSG:25833" or "25833".
[[nodiscard]] base::Result<int> epsgFrom(const std::string& text);
/// "m", "ft", "fathom".
[[nodiscard]] base::Result<readers::DepthUnit> unitFrom(const std::string& text);
/// Sets bands and limit: "2,4,6" in metres, and the deepest depth worth fishing. What is not given
/// stays as it is; bands that the user never set are chosen for the limit.
[[nodiscard]] base::Result<void> takeBands(const std::string& edges, std::optional<double> limit_m,
                                           water::Settings& settings);
/// "LON,LAT" in degrees.
[[nodiscard]] base::Result<geo::LonLat> placeFrom(const std::string& option,
                                                  const std::string& text);
/// "LON,LAT" or "LON,LAT,NAME"; the name may hold commas.
[[nodiscard]] base::Result<water::PinnedMark> keptMarkFrom(const std::string& option,
                                                           const std::string& text);
/// "LON,LAT" or "LON,LAT,RADIUS_M".
struct BanAsked {
    geo::LonLat place;
    std::optional<units::Length> radius;
};
[[nodiscard]] base::Result<BanAsked> banFrom(const std::string& option, const std::string& text);
/// "2026-11-27".
[[nodiscard]] base::Result<units::Day> dayFrom(const std::string& option, const std::string& text);
/// "07:40".
[[nodiscard]] base::Result<std::chrono::seconds> timeOfDayFrom(const std::string& option,
                                                               const std::string& text);
/// The same into `time`, which stays as it is where the option is not given.
[[nodiscard]] base::Result<void> takeTime(const std::string& option, const std::string& text,
                                          std::chrono::seconds& time);
/// "depth=1,drop_off=0.5" on top of `before`.
[[nodiscard]] base::Result<marks::Weights> weightsFrom(const std::string& text,
                                                       marks::Weights before);

} // namespace batch
