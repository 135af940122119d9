// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/soundings/verdict.h"

#include <QString>

namespace wording {

/// Why a sounding is set aside, as it stands on the screen: "no echo", "position jumped".
[[nodiscard]] QString spoken(soundings::Verdict verdict);

} // namespace wording
