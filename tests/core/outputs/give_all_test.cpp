// SPDX-License-Identifier: GPL-3.0-or-later
// Each file of the folder holds just what its own writer makes of the part it is named after.
#include "core/outputs/write_all.h"

#include "core/outputs/write_b12.h"
#include "core/outputs/write_geojson.h"
#include "core/outputs/write_geotiff.h"
#include "core/outputs/write_gpx.h"
#include "core/outputs/write_hypsography.h"
#include "core/outputs/write_table.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

using support::FoundWater;
using support::ScratchFolder;

/// A found water whose level today differs from chart level, with a table of its form.
FoundWater givenWater() {
    FoundWater known;
    water::WaterForm form = *known.found.form;
    form.hypsography.maxDepth = units::Depth::metres(1.5);
    form.hypsography.steps = {
        {units::Depth(), units::Area::squareMetres(9000.0), units::Volume::cubicMetres(6000.0)}};
    known.found.form = std::make_shared<const water::WaterForm>(form);
    form.contours.clear();
    form.bandPolygons.clear();
    form.hypsography.steps.clear();
    known.found.today = std::make_shared<const water::WaterForm>(form);
    return known;
}

TEST(GiveAll, PutsEachPartIntoTheFileThatIsNamedAfterIt) {
    const ScratchFolder folder;
    const FoundWater known = givenWater();
    base::Progress quiet;
    const auto all = folder.path() / "all";
    ASSERT_TRUE(outputs::writeAll(known.water, known.found, known.told(), all, quiet).has_value());
    const water::Water& water = known.water;
    const water::Derived& found = known.found;
    const geo::WaterFrame& frame = known.made.frame;
    const reduction::ReducedSurvey* survey = &found.checked->survey;
    std::vector<structure::Zone> zones = found.structure->zones;
    zones.insert(zones.end(), found.weed->zones.zones.begin(), found.weed->zones.zones.end());
    const auto one = [&](const char* name) { return folder.path() / name; };
    using namespace outputs;
    const std::vector<std::pair<const char*, base::Result<void>>> files{
        {"depth.tif", writeDepthGeotiff(one("depth.tif"), found.drawn->depth, frame)},
        {"trust.tif", writeTrustGeotiff(one("trust.tif"), found.drawn->trust, frame)},
        {"soundings.csv", writeSoundingsTable(one("soundings.csv"), water.days, survey)},
        {"soundings-b12.csv", writeB12Table(one("soundings-b12.csv"), water.days, survey)},
        {"soundings-b12.geojson",
         writeB12Geojson(one("soundings-b12.geojson"), water.days, survey)},
        {"shoreline.geojson",
         writeShorelineGeojson(one("shoreline.geojson"), water.shoreline, water.name)},
        {"contours.geojson",
         writeContoursGeojson(one("contours.geojson"), found.form->contours, frame)},
        {"bands.geojson", writeBandsGeojson(one("bands.geojson"), found.form->bandPolygons, frame)},
        {"hypsography.csv", writeHypsographyTable(one("hypsography.csv"), found.form->hypsography)},
        {"zones.geojson", writeZonesGeojson(one("zones.geojson"), zones, frame)},
        {"sections.geojson", writeSectionsGeojson(one("sections.geojson"), found.sections->sections,
                                                  water::useOfSections(water, found), frame)},
        {"marks.gpx", writeMarksGpx(one("marks.gpx"), known.told(), frame, water.name)},
        {"log.csv", writeLogTable(one("log.csv"), water.log, water.clock)}};
    ASSERT_EQ(zones.size(), 2U) << "structure and weed";
    for (const auto& [name, written] : files) {
        ASSERT_TRUE(written.has_value()) << name;
        EXPECT_EQ(ScratchFolder::textOf(all / name), ScratchFolder::textOf(one(name))) << name;
        EXPECT_GT(std::filesystem::file_size(all / name), 40U) << name;
    }
}

TEST(GiveAll, LeavesOutTheB12FilesWhereNoSoundingHasATime) {
    const ScratchFolder folder;
    FoundWater known;
    for (soundings::Sounding& sounding : known.water.days[0].soundings.edit()) {
        sounding.time.reset();
    }
    base::Progress quiet;
    ASSERT_TRUE(outputs::writeAll(known.water, known.found, known.told(), folder.path(), quiet)
                    .has_value());
    EXPECT_FALSE(std::filesystem::exists(folder.path() / "soundings-b12.csv"));
    EXPECT_FALSE(std::filesystem::exists(folder.path() / "soundings-b12.geojson"));
    EXPECT_TRUE(std::filesystem::exists(folder.path() / "soundings.csv"));
}

/// Takes down the shares that are told, and asks to stop once so many have been told.
class Listener : public base::Progress {
public:
    explicit Listener(std::size_t stopAfter) : stopAfter_(stopAfter) {}
    void tell(double share) override { shares.push_back(share); }
    [[nodiscard]] bool stopAsked() const override { return shares.size() >= stopAfter_; }
    std::vector<double> shares;

private:
    std::size_t stopAfter_;
};

TEST(GiveAll, TellsHowFarItIsAndStopsBetweenTwoFiles) {
    const ScratchFolder folder;
    const FoundWater known = givenWater();
    Listener listener(1000);
    ASSERT_TRUE(
        outputs::writeAll(known.water, known.found, known.told(), folder.path() / "a", listener)
            .has_value());
    ASSERT_EQ(listener.shares.size(), 15U) << "fourteen files and the end";
    for (std::size_t i = 0; i < 15; ++i) {
        EXPECT_NEAR(listener.shares[i], static_cast<double>(i) / 14.0, 1e-12);
    }
    Listener stopper(3);
    const auto stopped =
        outputs::writeAll(known.water, known.found, known.told(), folder.path() / "b", stopper);
    ASSERT_FALSE(stopped.has_value());
    EXPECT_EQ(stopped.error().kind, base::ErrorKind::cancelled);
    EXPECT_FALSE(std::filesystem::exists(folder.path() / "b")) << "all files or none";
}

TEST(GiveAll, TakesThePlaceOfAnOlderSetWithoutMixingTheTwo) {
    const ScratchFolder folder;
    const FoundWater known = givenWater();
    base::Progress quiet;
    const auto to = folder.path() / "all";
    ASSERT_TRUE(outputs::writeAll(known.water, known.found, known.told(), to, quiet));
    ASSERT_TRUE(std::filesystem::exists(to / "zones.geojson"));
    ASSERT_TRUE(outputs::writeAll(known.water, {}, {}, to, quiet));
    EXPECT_FALSE(std::filesystem::exists(to / "zones.geojson")) << "it is of another drawing";
    EXPECT_TRUE(std::filesystem::exists(to / "read-me.txt"));
}

TEST(GiveAll, SaysWhichFileCannotBeWritten) {
    const FoundWater known = givenWater();
    for (const char* name :
         {"depth.tif", "trust.tif", "soundings.csv", "soundings-b12.csv", "soundings-b12.geojson",
          "shoreline.geojson", "contours.geojson", "bands.geojson", "hypsography.csv",
          "zones.geojson", "sections.geojson", "marks.gpx", "log.csv"}) {
        const ScratchFolder folder;
        std::filesystem::create_directories(folder.path() / name / "in the way");
        base::Progress quiet;
        const auto written =
            outputs::writeAll(known.water, known.found, known.told(), folder.path(), quiet);
        ASSERT_FALSE(written.has_value()) << name;
        EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput) << name;
        EXPECT_NE(written.error().sentence().find(name), std::string::npos)
            << written.error().sentence();
        for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
            EXPECT_EQ(entry.path().filename().string().find("part"), std::string::npos)
                << entry.path();
        }
    }
}

} // namespace
