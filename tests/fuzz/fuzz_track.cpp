// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_track.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

#include <algorithm>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    base::Progress progress;
    const auto read = readers::readTrack(file.path(), progress);
    if (!read) {
        fuzz::checkRefusal(read.error());
        return 0;
    }
    fuzz::promise(!read->empty(), "a track has points");
    fuzz::promise(std::ranges::is_sorted(*read, {}, &readers::TrackPoint::time), "by time");
    for (const readers::TrackPoint& point : *read) {
        fuzz::promise(geo::isOnEarth(point.place), "a place is on the Earth");
    }
    return 0;
}
