// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"

#include <string_view>

namespace wording {

/// A sentence from the core, whose lengths are in metres and speeds in metres a second, in the
/// user's units: "58 m of drop-off, 4 to 9 m" becomes "190 ft of drop-off, 13 to 30 ft". As many
/// decimals as the sentence had; unchanged where the user counts in metres.
[[nodiscard]] QString reworded(std::string_view sentence, const Words& words);

} // namespace wording
