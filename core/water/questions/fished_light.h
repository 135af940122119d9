// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rates/hour_rates.h"
#include "core/water/questions/review_log.h"

#include <optional>

namespace water {

/// When the sun rose and set on the days that were fished: from the earliest to the latest, in
/// hours by the water's clock.
struct FishedLight {
    rates::HourSpan sunrise;
    rates::HourSpan sunset;
    friend bool operator==(const FishedLight&, const FishedLight&) = default;
};

/// Of the days that are asked about. Nothing where none was fished, or where the sun did not rise
/// or set on any of them.
[[nodiscard]] std::optional<FishedLight> fishedLight(const Water& water,
                                                     const ReviewQuestion& question);

} // namespace water
