// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/moment.h"

namespace open_water {

/// The machine's time.
[[nodiscard]] inline units::Moment now() {
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

} // namespace open_water
