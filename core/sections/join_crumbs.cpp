// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/join_crumbs.h"

#include <cmath>
#include <queue>
#include <set>

namespace sections {

using grid::Cell;

namespace {

/// The nearest large piece over water; nothing where none can be reached.
std::optional<std::int32_t> nearestOf(const grid::PieceGrid& pieces, const grid::Mask& mask,
                                      const std::vector<std::size_t>& crumb,
                                      const std::vector<std::uint8_t>& isLarge) {
    struct Front {
        double distance_cells;
        std::size_t at;
        bool operator>(const Front& other) const {
            return distance_cells != other.distance_cells ? distance_cells > other.distance_cells
                                                          : at > other.at;
        }
    };
    const grid::GridFrame& f = pieces.frame();
    std::priority_queue<Front, std::vector<Front>, std::greater<>> front;
    std::set<std::size_t> done;
    for (const std::size_t i : crumb) {
        front.push({0.0, i});
    }
    while (!front.empty()) {
        const Front here = front.top();
        front.pop();
        if (!done.insert(here.at).second) {
            continue;
        }
        if (pieces[here.at] >= 0 && isLarge[static_cast<std::size_t>(pieces[here.at])] != 0) {
            return pieces[here.at];
        }
        const Cell c = f.cellAt(here.at);
        for (int dr = -1; dr <= 1; ++dr) {
            for (int dc = -1; dc <= 1; ++dc) {
                // Across a corner only where both ways round it are water.
                if (mask.isActive(Cell{c.col + dc, c.row + dr}) &&
                    mask.isActive(Cell{c.col + dc, c.row}) &&
                    mask.isActive(Cell{c.col, c.row + dr})) {
                    front.push({here.distance_cells + std::hypot(dc, dr),
                                f.index({c.col + dc, c.row + dr})});
                }
            }
        }
    }
    return std::nullopt;
}

} // namespace

std::size_t joinCrumbs(grid::PieceGrid& pieces, std::size_t count, const grid::Mask& mask,
                       double least_m2) {
    const double cell_m2 = pieces.frame().cellArea_m2();
    std::vector<double> area_m2(count, 0.0);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i] >= 0) {
            area_m2[static_cast<std::size_t>(pieces[i])] +=
                static_cast<double>(mask.share(i)) * cell_m2;
        }
    }
    std::vector<std::uint8_t> isLarge(count, 0);
    std::vector<std::vector<std::size_t>> crumbs(count);
    for (std::size_t p = 0; p < count; ++p) {
        isLarge[p] = area_m2[p] >= least_m2 ? 1 : 0;
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i] >= 0 && isLarge[static_cast<std::size_t>(pieces[i])] == 0) {
            crumbs[static_cast<std::size_t>(pieces[i])].push_back(i);
        }
    }
    std::vector<std::int32_t> number(count, -1);
    std::int32_t next = 0;
    for (std::size_t p = 0; p < count; ++p) {
        if (crumbs[p].empty() && area_m2[p] > 0.0) {
            number[p] = next++;
        }
    }
    for (std::size_t p = 0; p < count; ++p) {
        if (!crumbs[p].empty()) {
            const auto nearest = nearestOf(pieces, mask, crumbs[p], isLarge);
            number[p] = nearest ? number[static_cast<std::size_t>(*nearest)] : next++;
        }
    }
    for (std::int32_t& piece : pieces.values()) {
        piece = piece < 0 ? -1 : number[static_cast<std::size_t>(piece)];
    }
    return static_cast<std::size_t>(next);
}

} // namespace sections
