// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/soundings/verdict.h"

namespace soundings {

std::string_view nameOf(Verdict verdict) {
    switch (verdict) {
    case Verdict::kept:
        return "";
    case Verdict::dropOut:
        return "drop_out";
    case Verdict::spike:
        return "spike";
    case Verdict::doubleEcho:
        return "double_echo";
    case Verdict::stuckDepth:
        return "stuck_depth";
    case Verdict::positionJump:
        return "position_jump";
    case Verdict::stuckPosition:
        return "stuck_position";
    case Verdict::outsideShore:
        return "outside_shore";
    case Verdict::disagrees:
        return "disagrees";
    case Verdict::byHand:
        return "by_hand";
    }
    return "";
}

} // namespace soundings
