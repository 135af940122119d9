// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace outputs {

/// What goes with every depth and every mark that is given away.
inline constexpr std::string_view notForNavigation =
    "Drawn from an angler's own soundings: not for navigation. Local rules go first.";

} // namespace outputs
