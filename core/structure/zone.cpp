// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/zone.h"

namespace structure {

std::string_view nameOf(ZoneKind kind) {
    switch (kind) {
    case ZoneKind::dropOff:
        return "drop-off";
    case ZoneKind::shelf:
        return "shelf";
    case ZoneKind::plateau:
        return "plateau";
    case ZoneKind::hump:
        return "hump";
    case ZoneKind::hole:
        return "hole";
    case ZoneKind::trough:
        return "trough";
    case ZoneKind::spur:
        return "spur";
    case ZoneKind::saddle:
        return "saddle";
    case ZoneKind::flat:
        return "flat";
    case ZoneKind::weedBed:
        return "weed bed";
    case ZoneKind::weedEdge:
        return "weed edge";
    }
    return "";
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
