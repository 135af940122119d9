// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/zone.h"

#include "core/structure/zone_kinds.h"

namespace structure {

std::string_view nameOf(ZoneKind kind) {
    return factsOf(kind).name;
}

} // namespace structure
