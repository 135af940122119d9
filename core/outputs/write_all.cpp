// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_all.h"

#include "core/base/whole_file.h"
#include "core/base/whole_folder.h"
#include "core/outputs/not_for_navigation.h"
#include "core/outputs/write_b12.h"
#include "core/outputs/write_geojson.h"
#include "core/outputs/write_geotiff.h"
#include "core/outputs/write_gpx.h"
#include "core/outputs/write_hypsography.h"
#include "core/outputs/write_table.h"

#include <functional>

namespace outputs {

namespace {

using Job = std::function<base::Result<void>()>;

std::vector<structure::Zone> allZones(const water::Derived& derived) {
    std::vector<structure::Zone> zones;
    if (derived.structure) {
        zones = derived.structure->zones;
    }
    if (derived.weed) {
        const auto& weed = derived.weed->zones.zones;
        zones.insert(zones.end(), weed.begin(), weed.end());
    }
    return zones;
}

/// One job for each file that there is something for.
std::vector<Job> jobsFor(const water::Water& water, const water::Derived& derived,
                         const marks::ToldMarks& told, const std::filesystem::path& folder) {
    const geo::WaterFrame& frame = *water.frame;
    std::vector<Job> jobs;
    const auto* survey = derived.checked ? &derived.checked->survey : nullptr;
    if (derived.drawn) {
        jobs.emplace_back(
            [&] { return writeDepthGeotiff(folder / "depth.tif", derived.drawn->depth, frame); });
        jobs.emplace_back(
            [&] { return writeTrustGeotiff(folder / "trust.tif", derived.drawn->trust, frame); });
    }
    jobs.emplace_back([&water, survey, &folder] {
        return writeSoundingsTable(folder / "soundings.csv", water.days, survey);
    });
    if (hasB12Soundings(water.days, survey)) {
        jobs.emplace_back([&water, survey, &folder] {
            return writeB12Geojson(folder / "soundings-b12.geojson", water.days, survey);
        });
        jobs.emplace_back([&water, survey, &folder] {
            return writeB12Table(folder / "soundings-b12.csv", water.days, survey);
        });
    }
    if (!water.shoreline.empty()) {
        jobs.emplace_back([&] {
            return writeShorelineGeojson(folder / "shoreline.geojson", water.shoreline, water.name);
        });
    }
    if (derived.form) {
        jobs.emplace_back([&] {
            return writeContoursGeojson(folder / "contours.geojson", derived.form->contours, frame);
        });
        jobs.emplace_back([&] {
            return writeBandsGeojson(folder / "bands.geojson", derived.form->bandPolygons, frame);
        });
        jobs.emplace_back([&] {
            return writeHypsographyTable(folder / "hypsography.csv", derived.form->hypsography);
        });
    }
    if (derived.structure || derived.weed) {
        jobs.emplace_back(
            [&] { return writeZonesGeojson(folder / "zones.geojson", allZones(derived), frame); });
    }
    if (derived.sections) {
        jobs.emplace_back([&] {
            return writeSectionsGeojson(folder / "sections.geojson", derived.sections->sections,
                                        water::useOfSections(water, derived), frame);
        });
    }
    jobs.emplace_back([&] { return writeMarksGpx(folder / "marks.gpx", told, frame, water.name); });
    jobs.emplace_back([&] { return writeLogTable(folder / "log.csv", water.log, water.clock); });
    // Tables after RFC 4180 have no place for it.
    jobs.emplace_back([&water, &folder] {
        return base::writeWholeFile(folder / lastGiven,
                                    water.name + "\n" + std::string(notForNavigation) + "\n");
    });
    return jobs;
}

} // namespace

base::Result<void> writeAll(const water::Water& water, const water::Derived& derived,
                            const marks::ToldMarks& told, const std::filesystem::path& folder,
                            base::Progress& progress) {
    if (!water.frame) {
        return base::fail(base::ErrorKind::wrongUse,
                          "the water has neither a shoreline nor soundings", "",
                          "bring in a shoreline or soundings first");
    }
    base::PendingFolder pending(folder, {givenNames.begin(), givenNames.end()}, lastGiven);
    if (auto begun = pending.begin(); !begun) {
        return begun;
    }
    progress.begin("writing open formats");
    const std::vector<Job> jobs = jobsFor(water, derived, told, pending.beside());
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        progress.tell(static_cast<double>(i) / static_cast<double>(jobs.size()));
        if (auto done = jobs[i](); !done) {
            base::Error error = std::move(done.error());
            error.where = (folder / std::filesystem::path(error.where).filename()).string();
            return std::unexpected(std::move(error));
        }
    }
    progress.tell(1.0);
    return pending.putInPlace();
}

} // namespace outputs
