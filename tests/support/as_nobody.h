// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace support {

/// What `claim` says in a process of its own that has no rights beyond a user's: to whoever builds
/// as root no folder is closed.
[[nodiscard]] bool holdsAsNobody(const std::function<bool()>& claim);

} // namespace support
