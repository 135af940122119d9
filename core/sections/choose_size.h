// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/area.h"

namespace sections {

/// The size of section that suits so much fishable water: 4 ha (10 acres), what one outing can
/// cover, where that makes five to sixty of them; else a round size that makes about as few or as
/// many as that: a hundred names on each other help nobody, and neither does one name for a pond.
/// \param inAcres round in acres. \return 0.1 to 1000 ha.
[[nodiscard]] units::Area chooseSectionSize(units::Area fishable, bool inAcres);

} // namespace sections
