// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/readers/reading_report.h"
#include "core/readers/soundings_file.h"
#include "core/readers/table_preview.h"
#include "core/readers/water_facts.h"
#include "core/water/document/water.h"

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

/// What a delimited text looks like, before it is brought in.
/// \return what readers::readTablePreview() returns; nothing where the file is no delimited text.
[[nodiscard]] base::Result<std::optional<readers::TablePreview>>
previewOf(const std::filesystem::path& path, const readers::SoundingFileSettings& settings);

/// A shoreline from a file. \return what readers::readShoreline() returns, and the error of
/// Outline::make() where it crosses itself; unusableInput where it lies nowhere near the soundings
/// already there.
[[nodiscard]] base::Result<std::vector<geo::LonLatPiece>>
bringInShoreline(const Water& water, const std::filesystem::path& path, std::optional<int> epsg,
                 base::Progress& progress);

/// What was true on each survey day, from a table of days.
/// \return what readers::readSurveyDayFacts() returns.
[[nodiscard]] base::Result<std::vector<readers::SurveyDayFacts>>
bringInDayFacts(const std::filesystem::path& path);

/// Puts what is known of the day into it; what is absent leaves it as it is.
void applyFacts(const readers::SurveyDayFacts& facts, soundings::SurveyDay& day);

/// Puts name, clock, chart level, Secchi depth, launch and places from a small JSON file into the
/// water. \return what readers::readWaterFacts() returns.
[[nodiscard]] base::Result<void> bringInFacts(Water& water, const std::filesystem::path& path);

/// Notes of a file, not yet part of the water, and which of its rows could not be used.
struct WeedNotesBroughtIn {
    std::vector<weed::WeedNote> notes;
    readers::ReadingReport report;
};

/// Weed notes from a table lon, lat, kind, height_m, with fresh ids.
/// \return unusableInput where a column is missing or no row is usable.
[[nodiscard]] base::Result<WeedNotesBroughtIn>
bringInWeedNotes(const Water& water, const std::filesystem::path& path, base::Progress& progress);

/// Soundings by hand of a file, not yet part of the water, and which of its rows could not be used.
struct LeadLineBroughtIn {
    std::vector<soundings::LeadLineSounding> soundings;
    readers::ReadingReport report;
};

/// Soundings by hand from a table lon, lat, depth_m, bottom, with fresh ids.
/// \return what readers::readLeadLine() returns.
[[nodiscard]] base::Result<LeadLineBroughtIn>
bringInLeadLine(const Water& water, const std::filesystem::path& path, base::Progress& progress);

/// The fishery's rules from JSON. \return what readers::readHouseRules() returns.
[[nodiscard]] base::Result<logbook::HouseRules>
bringInHouseRules(const std::filesystem::path& path);

} // namespace water
