// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/rates/rate.h"

#include <filesystem>

namespace outputs {

/// The rows and the overall row as a text table after RFC 4180: name, rod_hours, stays, blanks,
/// runs, fish, best_kg, rate_per_10_rod_hours, rate_low, rate_high, shrunk_rate, share_of_effort,
/// steadied_rate;
/// empty where there is no figure. \return unwritableOutput.
[[nodiscard]] base::Result<void> writeRatesTable(const std::filesystem::path& path,
                                                 const rates::RateTable& table);

} // namespace outputs
