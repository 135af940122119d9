// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/bring_in.h"

#include "core/base/harmless_text.h"
#include "core/geo/outline.h"
#include "core/readers/read_house_rules.h"
#include "core/readers/read_lead_line.h"
#include "core/readers/read_shoreline.h"
#include "core/readers/read_soundings.h"
#include "core/readers/read_table.h"
#include "core/readers/read_water_facts.h"
#include "core/readers/read_weed_notes.h"
#include "core/water/document/stamp_values.h"
#include "core/water/steps/check_plausible.h"

#include <algorithm>

namespace water {

using base::Progress;
using base::Result;

namespace {

/// Some place at the water, to tell longitude from latitude.
std::optional<geo::LonLat> somePlace(const Water& water) {
    if (!water.shoreline.empty() && !water.shoreline.front().outer.empty()) {
        return water.shoreline.front().outer.front();
    }
    if (!water.days.empty() && !water.days.front().soundings.empty()) {
        return water.days.front().soundings.front().place;
    }
    return std::nullopt;
}

/// The day as a name: its date at the water where it has one, else the file's stem.
std::string nameOf(const soundings::SurveyDay& day, const std::filesystem::path& path,
                   const units::Clock& clock) {
    const auto dated =
        std::find_if(day.soundings.begin(), day.soundings.end(),
                     [](const soundings::Sounding& s) { return s.time.has_value(); });
    return dated == day.soundings.end() ? base::harmless(path.stem().string())
                                        : units::isoText(clock.dayOf(*dated->time));
}

} // namespace

Result<DayBroughtIn> bringInDay(const Water& water, const std::filesystem::path& path,
                                readers::SoundingFileSettings settings, Progress& progress) {
    settings.clock = water.clock;
    if (!settings.near) {
        settings.near = somePlace(water);
    }
    auto read = readers::readSoundings(path, settings, progress);
    if (!read) {
        return std::unexpected(read.error());
    }
    DayBroughtIn brought;
    brought.report = std::move(read->report);
    brought.kind = read->kind;
    brought.depthSource = read->depthSource;
    brought.depthSources = std::move(read->depthSources);
    brought.reference = read->reference;
    brought.day.soundings = std::move(read->soundings);
    brought.day.passStarts = std::move(read->passStarts);
    brought.day.waterTemperature = read->waterTemperature;
    brought.day.sounder.measuresBySound = brought.kind != readers::SoundingFileKind::grid;
    brought.day.source = base::harmless(path.filename().string());
    brought.day.name = nameOf(brought.day, path, water.clock);
    if (auto plausible = checkPlausible(water, brought.day, path.string()); !plausible) {
        return std::unexpected(plausible.error());
    }
    // Worked out here, where nobody waits at the window: the soundings know their stamp from now
    // on.
    Stamp stamp;
    take(stamp, brought.day);
    return brought;
}

Result<std::optional<readers::TablePreview>>
previewOf(const std::filesystem::path& path, const readers::SoundingFileSettings& settings) {
    const auto kind = readers::readKindOf(path);
    if (!kind) {
        return std::unexpected(kind.error());
    }
    if (*kind != readers::SoundingFileKind::table) {
        return std::nullopt;
    }
    auto preview = readers::readTablePreview(path, settings);
    if (!preview) {
        return std::unexpected(preview.error());
    }
    return std::optional(std::move(*preview));
}

Result<std::vector<geo::LonLatPiece>> bringInShoreline(const Water& water,
                                                       const std::filesystem::path& path,
                                                       std::optional<int> epsg,
                                                       Progress& progress) {
    auto pieces = readers::readShoreline(path, epsg, progress);
    if (!pieces) {
        return pieces;
    }
    if (auto plausible = checkShorePlausible(water, *pieces, path.string()); !plausible) {
        return std::unexpected(plausible.error());
    }
    return pieces;
}

Result<std::vector<readers::SurveyDayFacts>> bringInDayFacts(const std::filesystem::path& path) {
    return readers::readSurveyDayFacts(path);
}

void applyFacts(const readers::SurveyDayFacts& facts, soundings::SurveyDay& day) {
    if (!facts.day.empty()) {
        day.name = facts.day;
    }
    if (facts.level) {
        day.gauge = soundings::Gauge::constant(*facts.level);
    }
    if (facts.waterTemperature) {
        day.waterTemperature = facts.waterTemperature;
    }
    day.sounder.draft = facts.draft.value_or(day.sounder.draft);
    day.sounder.assumedSoundSpeed = facts.assumedSoundSpeed.value_or(day.sounder.assumedSoundSpeed);
}

Result<void> bringInFacts(Water& water, const std::filesystem::path& path) {
    auto facts = readers::readWaterFacts(path);
    if (!facts) {
        return std::unexpected(facts.error());
    }
    water.name = facts->name;
    water.clock = facts->clock;
    water.chartLevel = facts->chartLevel.value_or(water.chartLevel);
    if (facts->secchi) {
        water.settings.secchi = facts->secchi;
    }
    if (facts->launch) {
        water.plan.launch = facts->launch;
    }
    if (!facts->places.empty()) {
        water.places.clear();
        for (const readers::PlaceFact& place : facts->places) {
            water.places.push_back({place.name, place.place});
        }
    }
    return {};
}

Result<WeedNotesBroughtIn> bringInWeedNotes(const Water& water, const std::filesystem::path& path,
                                            Progress& progress) {
    auto read = readers::readWeedNotes(path, progress);
    if (!read) {
        return std::unexpected(read.error());
    }
    std::int64_t next = freshId(water);
    for (weed::WeedNote& note : read->notes) {
        note.id = weed::WeedNoteId(next++);
    }
    return WeedNotesBroughtIn{std::move(read->notes), std::move(read->report)};
}

Result<LeadLineBroughtIn> bringInLeadLine(const Water& water, const std::filesystem::path& path,
                                          Progress& progress) {
    auto read = readers::readLeadLine(path, progress);
    if (!read) {
        return std::unexpected(read.error());
    }
    std::int64_t next = freshId(water);
    for (soundings::LeadLineSounding& sounding : read->soundings) {
        sounding.id = soundings::LeadLineId(next++);
    }
    return LeadLineBroughtIn{std::move(read->soundings), std::move(read->report)};
}

Result<logbook::HouseRules> bringInHouseRules(const std::filesystem::path& path) {
    return readers::readHouseRules(path);
}

} // namespace water
