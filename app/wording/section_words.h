// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/questions/propose_section_names.h"

#include <QString>

namespace wording {

/// "Gannick Bar", or "Gannick Bar north-west".
[[nodiscard]] QString sectionName(const water::SectionNameProposal& proposal);

} // namespace wording
