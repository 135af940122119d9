// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/zone.h"

#include "core/structure/zone_kinds.h"

namespace structure {

std::string_view nameOf(ZoneKind kind) {
    return factsOf(kind).name;
}

std::optional<ZoneKind> zoneKindNamed(std::string_view name) {
    for (const ZoneKind kind : allZoneKinds) {
        if (nameOf(kind) == name) {
            return kind;
        }
    }
    return std::nullopt;
}

} // namespace structure
