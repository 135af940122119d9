// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/derived.h"

namespace water {

std::string_view nameOf(Step step) {
    switch (step) {
    case Step::reduce:
        return "reduce";
    case Step::draw:
        return "draw";
    case Step::level:
        return "level";
    case Step::bands:
        return "bands";
    case Step::structure:
        return "structure";
    case Step::weed:
        return "weed";
    case Step::sections:
        return "sections";
    }
    return "";
}

bool Derived::isCurrent(Step step, Stamp wanted) const {
    const auto held = stamps.find(step);
    return held != stamps.end() && held->second == wanted;
}

} // namespace water
