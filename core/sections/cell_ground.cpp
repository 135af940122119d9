// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/cell_ground.h"

#include <array>

namespace sections {

bool CellGround::hangsTogetherWithout(std::size_t v) const {
    static constexpr std::array<std::array<int, 2>, 8> round{
        {{0, -1}, {1, -1}, {1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}}};
    const grid::Cell c = part_.frame().cellAt(v);
    std::array<bool, 8> isOwn{};
    for (std::size_t k = 0; k < round.size(); ++k) {
        const std::int64_t at = fishableAt(c.col + round[k][0], c.row + round[k][1]);
        isOwn[k] = at >= 0 && part_[static_cast<std::size_t>(at)] == part_[v];
    }
    // Runs of own cells round the ring that hold a side neighbour; corners alone hold nothing
    // together.
    int runs = 0;
    for (std::size_t k = 0; k < round.size(); k += 2) {
        const bool goesOn = isOwn[k + 1] && isOwn[(k + 2) % round.size()];
        runs += isOwn[k] && !goesOn ? 1 : 0;
    }
    const bool isWholeRing = isOwn[0] && isOwn[2] && isOwn[4] && isOwn[6] && runs == 0;
    return runs == 1 || isWholeRing;
}

} // namespace sections
