// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/choose_size.h"

#include <algorithm>
#include <array>

namespace sections {

namespace {

// Numbers of sections on a whole water (ours).
constexpr double fewest = 5.0;
constexpr double most = 60.0;

constexpr std::array hectares{0.1,  0.2,  0.3,   0.4,   0.5,   0.6,   0.8,   1.0,
                              1.5,  2.0,  2.5,   3.0,   4.0,   5.0,   6.0,   8.0,
                              10.0, 12.0, 15.0,  20.0,  25.0,  30.0,  40.0,  50.0,
                              60.0, 80.0, 100.0, 150.0, 200.0, 300.0, 500.0, 1000.0};
constexpr std::array acres{0.25, 0.5,   0.75,  1.0,   1.5,   2.0,   3.0,    4.0,   5.0,  6.0,
                           8.0,  10.0,  12.0,  15.0,  20.0,  25.0,  30.0,   40.0,  50.0, 60.0,
                           80.0, 100.0, 150.0, 200.0, 300.0, 500.0, 1000.0, 2000.0};

} // namespace

units::Area chooseSectionSize(units::Area fishable, bool inAcres) {
    const double usual = inAcres ? 10.0 : 4.0;
    const double whole = inAcres ? fishable.inAcres() : fishable.inHectares();
    const auto take = [&](const auto& sizes) {
        // Down to a size that makes five, up to one that makes no more than sixty.
        const double largest = std::min(usual, whole / fewest);
        const double smallest = std::max(largest, whole / most);
        if (smallest > usual) {
            const auto up = std::ranges::lower_bound(sizes, smallest);
            return up == sizes.end() ? sizes.back() : *up;
        }
        const auto above = std::ranges::upper_bound(sizes, largest);
        return above == sizes.begin() ? sizes.front() : *(above - 1);
    };
    return inAcres ? units::Area::acres(take(acres)) : units::Area::hectares(take(hectares));
}

} // namespace sections
