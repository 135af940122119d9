// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/marks/mark_input.h"
#include "core/units/length.h"

#include <cstdint>

namespace marks {

/// Which cells lie so far from every bank, or from all closed water, that no place in them can be
/// nearer than the room a boat needs: there nobody has to measure. Cost linear in cells.
class Clearance {
public:
    [[nodiscard]] static Clearance of(const MarkInput& input, units::Length room);

    /// Wherever in the cell the boat lies, it swings over water. False: to be measured.
    [[nodiscard]] bool isFarFromBanks(grid::Cell c) const { return nearBank_[c] == 0; }
    /// Wherever in the cell the boat lies, no closed cell is within its room. False: to be
    /// measured.
    [[nodiscard]] bool isFarFromClosed(grid::Cell c) const { return nearClosed_[c] == 0; }

private:
    grid::Grid<std::uint8_t> nearBank_;
    grid::Grid<std::uint8_t> nearClosed_;
};

} // namespace marks
