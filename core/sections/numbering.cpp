// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/numbering.h"

namespace sections {

std::vector<std::vector<geo::LonLatPiece>> partsOf(const Numbering& numbering) {
    std::vector<std::vector<geo::LonLatPiece>> parts = numbering.parts;
    if (parts.empty()) {
        for (const NumberedWater& water : numbering.waters) {
            if (water.isOnMap) {
                parts.push_back(water.pieces);
            }
        }
    }
    return parts;
}

} // namespace sections
