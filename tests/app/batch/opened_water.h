// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/batch/water_file.h"

namespace batch_tests {

/// The water as its file holds it.
inline water::Water loadedWater(const std::string& path) {
    base::Progress quiet;
    return store::open(path).value()->load(quiet).value();
}

/// The same with all that follows from it.
inline batch::OpenedWater drawnWater(const std::string& path) {
    base::Progress quiet;
    return batch::openDrawnWater(path, quiet).value();
}

} // namespace batch_tests
