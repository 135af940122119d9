// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/sections/section.h"

namespace edits {

/// Gives a section a name that stays with its place when the water is divided anew; an empty one
/// takes the given name away.
void nameSection(open_water::OpenWater& open, sections::SectionNumber section, const QString& name);

} // namespace edits
