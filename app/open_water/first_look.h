// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <memory>

namespace open_water {

/// What can be shown of a water file before all of it is read. Whether the drawing is of now nobody
/// knows yet.
struct FirstLook {
    std::shared_ptr<const water::Water> water; ///< Facts and shoreline only.
    water::Derived kept;                       ///< The shore and the drawing kept, if any.
};

} // namespace open_water
