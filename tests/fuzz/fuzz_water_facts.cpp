// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_water_facts.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

#include <cmath>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    const auto read = readers::readWaterFacts(file.path());
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::promise(!read->launch || geo::isOnEarth(*read->launch), "the launch is on the Earth");
    for (const readers::PlaceFact& place : read->places) {
        fuzz::promise(geo::isOnEarth(place.place), "a place is on the Earth");
    }
    fuzz::promise(!read->chartLevel || std::isfinite(read->chartLevel->inMetresOnGauge()), "level");
    fuzz::promise(!read->secchi || read->secchi->inMetres() >= 0.0, "sight is not negative");
    return 0;
}
