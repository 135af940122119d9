// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/weed_note.h"

namespace weed {

std::string_view nameOf(Growth growth) {
    switch (growth) {
    case Growth::none:
        return "none";
    case Growth::thin:
        return "thin";
    case Growth::thick:
        return "thick";
    }
    return "";
}

std::optional<Growth> growthNamed(std::string_view name) {
    for (const Growth growth : {Growth::none, Growth::thin, Growth::thick}) {
        if (nameOf(growth) == name) {
            return growth;
        }
    }
    return std::nullopt;
}

} // namespace weed
