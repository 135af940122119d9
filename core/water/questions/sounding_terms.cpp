// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/questions/sounding_terms.h"

#include "core/water/steps/derive_steps.h"

namespace water {

reduction::ReductionTerms soundingTerms(const Water& water, std::size_t day, std::size_t sounding) {
    return reduction::termsOf(water.days, day, sounding, reductionOf(water));
}

} // namespace water
