// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sections/section_change.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

namespace water {

/// Whether the change can be made on the sections as they are now: at the desk it is better refused
/// at once than found among the notes. \param derived made up to Step::sections. \return why it
/// cannot, and what to do.
[[nodiscard]] base::Result<void> checkSectionChange(const Water& water, const Derived& derived,
                                                    const sections::SectionChange& change);

} // namespace water
