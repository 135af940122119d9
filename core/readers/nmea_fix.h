// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/readers/nmea_sentence.h"

#include <cstdint>
#include <optional>

namespace readers {

/// What a sentence says of when and where the receiver was.
struct NmeaFix {
    std::optional<double> timeOfDay_s;
    std::optional<std::int64_t> date; ///< Days since 1970.
    bool isClockOnly = false;         ///< ZDA: it says nothing of a place.
    bool isValid = false;             ///< The receiver says that it knows where it is.
    std::optional<geo::LonLat> place; ///< Nothing where it cannot be read.
};

/// Of GGA, GLL, RMC and ZDA; nothing of other sentences.
[[nodiscard]] std::optional<NmeaFix> nmeaFixIn(const NmeaSentence& sentence);

} // namespace readers
