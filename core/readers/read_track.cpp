// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_track.h"

#include "core/readers/gpx_file.h"

#include <algorithm>

namespace readers {

base::Result<std::vector<TrackPoint>> readTrack(const std::filesystem::path& path,
                                                base::Progress& progress) {
    std::vector<TrackPoint> track;
    const auto end = walkGpx(
        path,
        [&](const GpxPoint& point) {
            const auto time = units::momentFrom(point.time, units::Clock());
            if (point.kind == GpxKind::trackPoint && point.hasFix && point.place &&
                geo::isOnEarth(*point.place) && time) {
                track.push_back({*point.place, *time});
            }
        },
        progress);
    if (!end) {
        return std::unexpected(end.error());
    }
    if (track.empty()) {
        return base::fail(base::ErrorKind::unusableInput, "it has no track point with a time",
                          path.string(), "export the track itself, with its times");
    }
    std::ranges::stable_sort(track, {}, &TrackPoint::time);
    return track;
}

} // namespace readers
