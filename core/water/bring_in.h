// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/rates/track.h"
#include "core/readers/reading_report.h"
#include "core/readers/soundings_file.h"
#include "core/water/water.h"

#include <filesystem>
#include <vector>

namespace water {

/// A survey day made from a file, not yet part of the water.
struct DayBroughtIn {
    soundings::SurveyDay day;
    readers::ReadingReport report;
    readers::SoundingFileKind kind = readers::SoundingFileKind::table;
    std::string depthSource;
    std::vector<readers::DepthSource> depthSources;
    readers::DepthReference reference = readers::DepthReference::unknown;
};

/// Reads a file of soundings into a survey day with the file's own day, water temperature and depth
/// reference. Its id is not given yet. \return what readers::readSoundings() returns; also
/// unusableInput where the soundings lie nowhere near the water, and where the depths cannot be
/// (feet taken for metres: said).
[[nodiscard]] base::Result<DayBroughtIn> bringInDay(const Water& water,
                                                    const std::filesystem::path& path,
                                                    readers::SoundingFileSettings settings,
                                                    base::Progress& progress);

/// A shoreline from a file. \return what readers::readShoreline() returns, and the error of
/// Outline::make() where it crosses itself; unusableInput where it lies nowhere near the soundings
/// already there.
[[nodiscard]] base::Result<std::vector<geo::LonLatPiece>>
bringInShoreline(const Water& water, const std::filesystem::path& path, std::optional<int> epsg,
                 base::Progress& progress);

/// What was true on a survey day, as a table of days gives it.
struct DayFacts {
    std::string day;  ///< Its name.
    std::string file; ///< File name of its soundings.
    std::optional<units::WaterLevel> level;
    std::optional<units::Temperature> waterTemperature;
    std::optional<units::Depth> draft;
    std::optional<units::Speed> assumedSoundSpeed;
    std::optional<readers::DepthUnit> unit;
};

/// A table with the columns day, file, water_level_m, water_temperature_c, draft_m,
/// assumed_sound_speed_m_s, depth_unit; all but file may be empty or missing. \return unusableInput
/// where there is no column file or a number is none (row and column said).
[[nodiscard]] base::Result<std::vector<DayFacts>>
bringInDayFacts(const std::filesystem::path& path);

/// Puts what is known of the day into it; what is absent leaves it as it is.
void applyFacts(const DayFacts& facts, soundings::SurveyDay& day);

/// Name, clock, chart level, Secchi depth, launch and places from a small JSON file: "name",
/// "time_zone", "chart_level_m", "secchi_depth_m", "launch" {"lon", "lat"}, "places" [{"name",
/// "lon", "lat"}]; all may be missing. \return unusableInput where it is no such JSON or a value
/// makes no sense.
[[nodiscard]] base::Result<void> bringInFacts(Water& water, const std::filesystem::path& path);

/// Stays, runs and fish from a LOG.csv, with fresh ids.
struct LogBroughtIn {
    logbook::Log stays;    ///< Only those that the water's log does not hold yet.
    std::size_t known = 0; ///< Stays in the file that the log holds already, just so.
    readers::ReadingReport report;
};
[[nodiscard]] base::Result<LogBroughtIn>
bringInLog(const Water& water, const std::filesystem::path& path, base::Progress& progress);

/// Blank stays found in a day's track; the user fills in the fish.
[[nodiscard]] base::Result<logbook::Log> bringInTrackStays(const Water& water,
                                                           const std::filesystem::path& path,
                                                           int rods, base::Progress& progress);

} // namespace water
