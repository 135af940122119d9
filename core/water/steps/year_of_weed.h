// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include <chrono>
#include <optional>

namespace water {

/// The year of which weed is mapped: that of the day to be planned, or of the newest note where
/// that is later. Nothing where no note says when it was made: then no note is older than another.
[[nodiscard]] std::optional<std::chrono::year> yearOfWeed(const Water& water);

} // namespace water
