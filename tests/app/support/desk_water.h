// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include <cstddef>

namespace support {

/// A made-up water as a club may have it after years: a survey of so many soundings, about four
/// cells of the map to each of them, and a log of so many stays, forty to a day.
[[nodiscard]] water::Water deskWater(std::size_t soundings, int stays);

} // namespace support
