// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/water/document/settings.h"

#include <functional>

namespace edits {

/// Changes how the water is drawn and divided.
/// \return wrongUse where a setting would be out of its range; the water is then as it was.
[[nodiscard]] base::Result<void>
changeSettings(open_water::OpenWater& open, const QString& name,
               const std::function<void(water::Settings&)>& changeThem);

} // namespace edits
