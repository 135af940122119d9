// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/questions/propose_section_names.h"

#include <QString>

#include <string>

namespace wording {

/// "Gannick Bar", or "Gannick Bar north-west".
[[nodiscard]] QString sectionName(const water::SectionNameProposal& proposal);

/// What a section or a mark is called: by the name that the user gave, which is nobody else's to
/// translate, or by its number, as core has it: "Section 4", "mark 2".
[[nodiscard]] QString nameCalled(const std::string& name);

} // namespace wording
