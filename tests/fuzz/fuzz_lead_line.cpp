// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_lead_line.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    base::Progress progress;
    const auto read = readers::readLeadLine(file.path(), progress);
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::checkReport(read->report);
    fuzz::promise(read->report.used == read->soundings.size(), "used soundings are given");
    for (const soundings::LeadLineSounding& sounding : read->soundings) {
        fuzz::promise(geo::isOnEarth(sounding.place), "a place is on the Earth");
        fuzz::promise(sounding.depth.inMetres() >= 0.0 && sounding.depth.inMetres() <= 11000.0,
                      "a depth is one of the Earth");
    }
    return 0;
}
