// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_nmea.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    if (size == 0) {
        return 0;
    }
    const fuzz::InputFile file(bytes + 1, size - 1);
    base::Progress progress;
    fuzz::checkSoundings(readers::readNmea(file.path(), fuzz::settingsFor(bytes[0]), progress));
    return 0;
}
