// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"

#include <string_view>

namespace batch {

/// What meremark-batch returns to the shell for a failure: 2 wrong usage, 3 an input cannot be
/// used, 4 an output cannot be written, 5 a water file is damaged, 6 cancelled.
[[nodiscard]] int exitCodeOf(base::ErrorKind kind);

/// The kind of a failure as scripts read it: "unusable_input".
[[nodiscard]] std::string_view keyOf(base::ErrorKind kind);

} // namespace batch
