// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/bring_in_log.h"

#include "core/base/number_text.h"
#include "core/logbook/stays_about.h"
#include "core/rates/find_stays.h"
#include "core/readers/read_log.h"
#include "core/readers/read_track.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>

namespace water {

using base::Progress;
using base::Result;

namespace {

constexpr std::size_t tellEvery = 1024;

/// A run that names no stay is of the one in the log that it was taken in.
void takeLoose(const Water& water, const readers::LooseRun& loose, StaySorter& sorter,
               LogBroughtIn& brought) {
    const units::Moment time = loose.run.time.value_or(units::Moment());
    for (const std::size_t at : logbook::staysAbout(water.log, time, time)) {
        const logbook::Stay& stay = water.log[at];
        if (stay.start <= time && time <= stay.end) {
            logbook::Stay more = *sorter.known().find(stay.id);
            more.runs = {loose.run};
            sorter.take(std::move(more), loose.line, brought);
            return;
        }
    }
    brought.report.refuse("no_such_stay", loose.line, loose.row);
    --brought.report.used;
}

/// A species that the log has not had may be a new one, or an old one misspelt.
void noteNewSpecies(const logbook::KeptLog& log, const readers::ReadLog& read,
                    readers::ReadingReport& report) {
    std::set<std::string> known;
    for (const logbook::Stay& stay : log) {
        for (const logbook::Fish& run : stay.runs) {
            known.insert(base::lowerCase(run.species));
        }
    }
    if (known.empty()) {
        return;
    }
    std::map<std::string, std::size_t> fresh;
    for (const logbook::Stay& stay : read.log) {
        for (const logbook::Fish& run : stay.runs) {
            if (!run.species.empty() && !known.contains(base::lowerCase(run.species))) {
                ++fresh[run.species];
            }
        }
    }
    std::string names;
    for (const auto& [species, count] : fresh) {
        names += fmt::format("{}{} ({})", names.empty() ? "" : ", ", species, count);
    }
    if (!names.empty()) {
        report.notes.push_back("Species that the log has not had before: " + names + ".");
    }
}

} // namespace

Result<LogBroughtIn> bringInLog(const Water& water, const std::filesystem::path& path,
                                Progress& progress, Sharing sharing) {
    auto read = readers::readLog(path, water.clock, progress);
    if (!read) {
        return std::unexpected(read.error());
    }
    LogBroughtIn brought;
    brought.report = std::move(read->report);
    noteNewSpecies(water.log, *read, brought.report);
    std::int64_t next = 1;
    for (const logbook::Stay& stay : read->log) {
        next = std::max(next, stay.id.number() + 1);
    }
    progress.begin("sorting the stays");
    StaySorter sorter(water, StaySorter::From::log, sharing, next);
    std::size_t done = 0;
    for (logbook::Stay& stay : read->log) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        if (++done % tellEvery == 0) {
            progress.tell(static_cast<double>(done) / static_cast<double>(read->log.size()));
        }
        const auto line = read->lines.find(stay.id);
        sorter.take(std::move(stay), line == read->lines.end() ? 0 : line->second, brought);
    }
    for (const readers::LooseRun& loose : read->loose) {
        takeLoose(water, loose, sorter, brought);
    }
    return brought;
}

Result<rates::Track> bringInTrack(const Water& water, const std::filesystem::path& path,
                                  Progress& progress) {
    const auto points = readers::readTrack(path, progress);
    if (!points) {
        return std::unexpected(points.error());
    }
    if (!water.frame) {
        return base::fail(base::ErrorKind::wrongUse, "a track needs a water to lie on",
                          path.string(), "bring in soundings or a shoreline first");
    }
    rates::Track track;
    for (const readers::TrackPoint& point : *points) {
        track.push_back({water.frame->toWater(point.place), point.time});
    }
    return track;
}

Result<LogBroughtIn> bringInTrackStays(const Water& water, const std::filesystem::path& path,
                                       std::optional<int> rods, Progress& progress) {
    const auto track = bringInTrack(water, path, progress);
    if (!track) {
        return std::unexpected(track.error());
    }
    const auto found = rates::findStays(*track, {}, progress);
    if (!found) {
        base::Error error = found.error();
        error.where = path.string();
        return std::unexpected(std::move(error));
    }
    LogBroughtIn brought;
    StaySorter sorter(water, StaySorter::From::track, {}, 0);
    for (const rates::TrackStay& seen : *found) {
        logbook::Stay stay;
        stay.start = seen.start;
        stay.end = seen.end;
        stay.place = water.frame->toEarth(seen.place);
        stay.rods = rods;
        sorter.take(std::move(stay), 0, brought);
    }
    return brought;
}

} // namespace water
