// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"

#include <QString>

#include <optional>

namespace wording {

/// A place as it is read off a receiver, latitude first: "55.1950 N 3.1041 E", "55.195, 3.1041",
/// "N55° 11.70' E3° 6.25'". Nothing where the text is no such place.
[[nodiscard]] std::optional<geo::LonLat> placeTyped(const QString& text);

} // namespace wording
