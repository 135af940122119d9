// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

namespace edits {

/// Adds stays with their runs to the log, each with a fresh id. \param name "Add stay".
/// \return the id of the first of them; not given where there was none.
logbook::StayId addStays(open_water::OpenWater& open, const QString& name, logbook::Log stays);

} // namespace edits
