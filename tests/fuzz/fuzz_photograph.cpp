// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/photograph.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    const auto read = gdal::readPhotograph(file.path(), units::Clock());
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::promise(!read->place || geo::isOnEarth(*read->place), "a place is on the Earth");
    return 0;
}
