// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/sounding_terms.h"

namespace water {

reduction::ReductionTerms soundingTerms(const Water& water, std::size_t day, std::size_t sounding) {
    reduction::ReductionSettings settings;
    settings.chartLevel = water.chartLevel;
    settings.dayOffsets.resize(day + 1);
    settings.dayOffsets[day] = water.days[day].agreedOffset.value_or(units::Length());
    return reduction::termsOf(water.days, day, sounding, settings);
}

} // namespace water
