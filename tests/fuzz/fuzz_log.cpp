// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_log.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    base::Progress progress;
    const auto read = readers::readLog(file.path(), units::Clock(), progress);
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::checkReport(read->report);
    std::size_t used = 0;
    for (const logbook::Stay& stay : read->log) {
        used += 1 + stay.runs.size();
        fuzz::promise(geo::isOnEarth(stay.place), "a place is on the Earth");
        fuzz::promise(stay.start <= stay.end, "a stay ends after it began");
        fuzz::promise(!stay.rods || (*stay.rods >= 1 && *stay.rods <= 100), "rods can be");
        for (const logbook::Fish& fish : stay.runs) {
            fuzz::promise(!fish.weight || fish.weight->inKilograms() >= 0.0, "a fish has weight");
        }
    }
    for (const readers::LooseRun& loose : read->loose) {
        fuzz::promise(loose.run.time.has_value(), "a run of no stay of the file has a time");
    }
    used += read->loose.size();
    fuzz::promise(used == read->report.used, "used rows are in the log or belong to another's");
    return 0;
}
