// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/document/water.h"

namespace acts {

/// Keeps what stands on a sheet made for the boat, in the place of an earlier sheet of its day; of
/// sixty days at most, the newest. \return wrongUse for a sheet without a stop.
[[nodiscard]] base::Result<water::Water> takeSheet(const water::Water& water,
                                                   const water::BoatSheet& sheet);

} // namespace acts
