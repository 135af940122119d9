// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_water_facts.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    const auto read = readers::readSurveyDayFacts(file.path());
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::promise(!read->empty(), "there are days");
    for (const readers::SurveyDayFacts& day : *read) {
        fuzz::promise(!day.file.empty(), "a day names its file");
        fuzz::promise(!day.draft || day.draft->inMetres() >= 0.0, "a draft is not negative");
        fuzz::promise(!day.assumedSoundSpeed || day.assumedSoundSpeed->inMetresPerSecond() > 0.0,
                      "sound has a speed");
    }
    return 0;
}
