// SPDX-License-Identifier: GPL-3.0-or-later
// expects: could not convert 'rope' from 'units::Length' to 'units::Depth'
#include "core/units/depth.h"
#include "core/units/length.h"

units::Depth depthFrom([[maybe_unused]] units::Length rope, [[maybe_unused]] units::Depth depth) {
#ifdef MEREMARK_BREACH
    return rope;
#else
    return depth;
#endif
}
