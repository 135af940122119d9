// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/count_rates.h"

namespace rates {

/// What was met in counting besides the rows.
struct CountingReport {
    int withoutWeight = 0;     ///< Fish left out because a least weight was asked for.
    int mostInOneStay = 0;     ///< Counted fish of the best stay.
    int fishWithoutEffort = 0; ///< Landed in stays whose rods are not known.
};

/// What the table can bear, in whole sentences.
[[nodiscard]] std::vector<std::string> notesOn(const RateTable& table, const CountingReport& report,
                                               const RateSettings& settings);

} // namespace rates
