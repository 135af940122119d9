// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/hour_rates.h"
#include "core/water/questions/fished_light.h"

#include <QString>

namespace days::looking_back {

/// "Sunrise 07:10 to 08:02, sunset 16:20 to 17:45 on the days fished."
[[nodiscard]] QString lightWords(const water::FishedLight& light);

/// Hour, rod-hours, rate, low, high: comma-separated after RFC 4180, empty where nothing was
/// fished.
[[nodiscard]] QString hoursTable(const rates::HourRates& hours);

} // namespace days::looking_back
