// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_track.h"

#include "core/readers/gpx_file.h"
#include "core/readers/line_reader.h"
#include "core/readers/nmea_fix.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace readers {

namespace {

using Track = std::vector<TrackPoint>;

base::Result<Track> readGpxTrack(const std::filesystem::path& path, base::Progress& progress) {
    Track track;
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
    return track;
}

/// Dates the positions of a log: a clock that falls back by half a day has passed midnight, and a
/// sentence with a date says which day it is, of what came before too.
class DatedFixes {
public:
    void hear(const NmeaFix& fix) {
        if (!fix.timeOfDay_s) {
            return; // nobody knows when
        }
        constexpr double halfADay_s = 43'200.0;
        if (last_s_ && *fix.timeOfDay_s < *last_s_ - halfADay_s) {
            ++day_;
        }
        last_s_ = *fix.timeOfDay_s;
        if (fix.date) {
            if (!firstDate_) {
                firstDate_ = *fix.date - day_;
            }
            day_ = *fix.date - *firstDate_;
        }
        const bool isPlaced = fix.isValid && fix.place && geo::isOnEarth(*fix.place);
        if (!fix.isClockOnly && isPlaced) {
            constexpr std::int64_t dayInMs = 86'400'000;
            const std::int64_t time_ms = day_ * dayInMs + std::llround(*fix.timeOfDay_s * 1000.0);
            if (fixes_.empty() || fixes_.back().second != time_ms) {
                fixes_.emplace_back(*fix.place, time_ms);
            }
        }
    }
    [[nodiscard]] bool hasFixes() const { return !fixes_.empty(); }
    /// Empty where no sentence had a date.
    [[nodiscard]] Track track() const {
        Track track;
        for (const auto& [place, time_ms] : fixes_) {
            if (firstDate_) {
                track.push_back({place, units::Moment(std::chrono::days(*firstDate_)) +
                                            std::chrono::milliseconds(time_ms)});
            }
        }
        return track;
    }

private:
    std::vector<std::pair<geo::LonLat, std::int64_t>> fixes_;
    std::optional<double> last_s_;
    std::int64_t day_ = 0;
    std::optional<std::int64_t> firstDate_;
};

base::Result<Track> readNmeaTrack(LineReader lines, const std::filesystem::path& path,
                                  base::Progress& progress) {
    DatedFixes fixes;
    NmeaSentence sentence;
    std::string_view line;
    while (lines.next(line)) {
        if (!lines.tell(progress)) {
            return std::unexpected(base::cancelled());
        }
        for (auto text = nextSentence(line); !text.empty(); text = nextSentence(line)) {
            if (!takeApart(text, sentence) || sentence.sum == NmeaSentence::Sum::wrong) {
                continue;
            }
            if (const auto fix = nmeaFixIn(sentence)) {
                fixes.hear(*fix);
            }
        }
    }
    Track track = fixes.track();
    if (track.empty() && fixes.hasFixes()) {
        return base::fail(base::ErrorKind::unusableInput, "its positions have no date",
                          path.string(), "record RMC or ZDA sentences too, which carry the date");
    }
    return track;
}

/// A document of XML begins with an angle bracket.
bool isXml(const std::string& head) {
    const std::size_t first = head.find_first_not_of(" \t\r\n");
    return first != std::string::npos && head[first] == '<';
}

} // namespace

base::Result<Track> readTrack(const std::filesystem::path& path, base::Progress& progress) {
    auto lines = LineReader::open(path);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    progress.begin("reading the track");
    std::string head;
    std::string_view line;
    constexpr int linesOfHead = 5;
    for (int i = 0; i < linesOfHead && !isXml(head) && lines->next(line); ++i) {
        head += line;
    }
    auto again = LineReader::open(path);
    auto track = isXml(head) || !again ? readGpxTrack(path, progress)
                                       : readNmeaTrack(std::move(*again), path, progress);
    if (!track) {
        return std::unexpected(track.error());
    }
    if (track->empty()) {
        return base::fail(base::ErrorKind::unusableInput, "it has no track point with a time",
                          path.string(), "export the track itself, with its times");
    }
    std::ranges::stable_sort(*track, {}, &TrackPoint::time);
    return track;
}

} // namespace readers
