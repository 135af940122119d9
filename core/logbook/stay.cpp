// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/stay.h"

#include <algorithm>

namespace logbook {

int Stay::fishCount() const {
    return static_cast<int>(
        std::count_if(runs.begin(), runs.end(), [](const Fish& fish) { return fish.landed; }));
}

} // namespace logbook
