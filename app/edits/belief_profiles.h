// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

#include <string>

namespace edits {

/// Saves what matters to the user now under a name, in the place of what that name held.
void saveProfile(open_water::OpenWater& open, const std::string& name);
/// Lets what is saved under the name matter.
void takeProfile(open_water::OpenWater& open, const std::string& name);
void nameProfile(open_water::OpenWater& open, const std::string& name, const std::string& newName);
void removeProfile(open_water::OpenWater& open, const std::string& name);

} // namespace edits
