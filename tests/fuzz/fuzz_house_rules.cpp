// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_house_rules.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

#include <algorithm>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    const auto read = readers::readHouseRules(file.path());
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::promise(!read->rodLimit || (*read->rodLimit >= 1 && *read->rodLimit <= 100), "rods");
    for (const logbook::ClosedWater& closed : read->closed) {
        std::ranges::for_each(closed.pieces, fuzz::checkPiece);
    }
    return 0;
}
