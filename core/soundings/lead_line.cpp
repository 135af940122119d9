// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/soundings/lead_line.h"

namespace soundings {

std::string_view nameOf(Bottom bottom) {
    switch (bottom) {
    case Bottom::soft:
        return "soft";
    case Bottom::gravel:
        return "gravel";
    case Bottom::rock:
        return "rock";
    case Bottom::weed:
        return "weed";
    }
    return "";
}

std::optional<Bottom> bottomNamed(std::string_view name) {
    for (const Bottom bottom : {Bottom::soft, Bottom::gravel, Bottom::rock, Bottom::weed}) {
        if (nameOf(bottom) == name) {
            return bottom;
        }
    }
    return std::nullopt;
}

} // namespace soundings
