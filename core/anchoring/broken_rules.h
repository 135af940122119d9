// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/anchor_set.h"

namespace anchoring {

/// True for what the program itself would never lay: ashore, in closed water, on too little rope,
/// too steep, too far off the wind, or for a wind that is another by now. The other cautions are of
/// lies that hold.
[[nodiscard]] bool breaksARule(const Caution& caution);

/// Whether anything of this lie breaks a rule.
[[nodiscard]] bool breaksARule(const AnchorSet& set);

} // namespace anchoring
