// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/open_water/basis.h"

namespace open_water {

Basis::Basis(water::Stamp madeFrom, const water::Derived& derived)
    : madeFrom_(madeFrom), drawn_(derived.drawn), structure_(derived.structure),
      weed_(derived.weed), sections_(derived.sections) {}

} // namespace open_water
