// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/document/water.h"
#include "core/water/steps/bring_in_partner.h"

namespace acts {

/// Adds what a partner's water holds and this one does not: survey days, soundings by hand, notes
/// of weed, stays. What is doubtful is left out. \param sharing as it was brought in with.
[[nodiscard]] base::Result<water::Water> addPartner(const water::Water& water,
                                                    const water::PartnerBroughtIn& brought,
                                                    water::Sharing sharing);

} // namespace acts
