// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reduction/reduced_survey.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace store {

/// What the row of a sounding tells of its reduction; both absent where it was not reduced.
struct ReductionRow {
    std::optional<double> depth_m;
    std::optional<std::string_view> setAside; ///< The reason; absent where it is kept.
};

[[nodiscard]] inline ReductionRow reductionRowOf(const reduction::ReducedDay& day, std::size_t i) {
    ReductionRow row;
    if (std::isfinite(day.depth_m[i])) {
        row.depth_m = day.depth_m[i];
    }
    if (day.verdicts[i] != soundings::Verdict::kept) {
        row.setAside = soundings::nameOf(day.verdicts[i]);
    }
    return row;
}

/// Changes whenever a reduced depth or a verdict of the day does.
[[nodiscard]] std::int64_t reductionStampOf(const reduction::ReducedDay& day);

} // namespace store
