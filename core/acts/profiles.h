// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/water/document/water.h"

#include <string>

namespace acts {

/// Saves what the plan's weights are now under a name; what was saved under that name before is
/// replaced. \return wrongUse for a name that is empty.
[[nodiscard]] base::Result<water::Water> saveProfile(const water::Water& water,
                                                     const std::string& name);

/// Gives the plan the weights of that profile. \return wrongUse where there is none of that name
/// (whatToDo names those that there are).
[[nodiscard]] base::Result<water::Water> takeProfile(const water::Water& water,
                                                     const std::string& name);

/// Calls a profile otherwise. \return wrongUse where there is none of that name, where the new one
/// is empty, or where another profile has it.
[[nodiscard]] base::Result<water::Water>
nameProfile(const water::Water& water, const std::string& name, const std::string& newName);

/// \return wrongUse where there is none of that name.
[[nodiscard]] base::Result<water::Water> removeProfile(const water::Water& water,
                                                       const std::string& name);

} // namespace acts
