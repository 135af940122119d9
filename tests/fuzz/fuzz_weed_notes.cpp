// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_weed_notes.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    base::Progress progress;
    const auto read = readers::readWeedNotes(file.path(), progress);
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::checkReport(read->report);
    fuzz::promise(read->report.used == read->notes.size(), "used notes are given");
    for (const weed::WeedNote& note : read->notes) {
        fuzz::promise(geo::isOnEarth(note.place), "a place is on the Earth");
        fuzz::promise(!note.height ||
                          (note.height->inMetres() >= 0.0 && note.height->inMetres() <= 100.0),
                      "weed is no higher than a tree");
    }
    return 0;
}
