// SPDX-License-Identifier: GPL-3.0-or-later
// expects: could not convert '3\.5e\+0' from 'double' to 'units::Depth'
#include "core/units/depth.h"

units::Depth shelf() {
#ifdef MEREMARK_BREACH
    return 3.5;
#else
    return units::Depth::metres(3.5);
#endif
}
