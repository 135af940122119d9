// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_shoreline.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

#include <algorithm>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    base::Progress progress;
    const auto read = readers::readShoreline(file.path(), std::nullopt, progress);
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::promise(!read->empty(), "a shore has pieces");
    std::ranges::for_each(*read, fuzz::checkPiece);
    return 0;
}
