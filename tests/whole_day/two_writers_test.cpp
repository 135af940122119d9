// SPDX-License-Identifier: GPL-3.0-or-later
// Programs that write one water at once: whatever one of them was told is kept (exit 0) is in the
// file afterwards. MEREMARK_TRIES says how often each is tried; a long run takes 200.
#include "core/store/owner_lock.h"
#include "core/store/water_store.h"
#include "core/store/write_water.h"
#include "tests/whole_day/batch_run.h"

#include <algorithm>
#include <array>
#include <csignal>
#include <cstdlib>
#include <thread>

#include <gtest/gtest.h>

namespace {

using whole_day::BatchRun;
using whole_day::runBatch;
using whole_day::sampleFile;
using whole_day::StartedBatch;

base::Progress quiet;

int tries() {
    const char* said = std::getenv("MEREMARK_TRIES");
    return said == nullptr ? 4 : std::max(1, std::atoi(said));
}

class TwoWriters : public testing::Test {
protected:
    void SetUp() override {
        folder_ = whole_day::freshFolder("two-writers");
        water::Water water;
        water.name = "Ashmere";
        water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
        ASSERT_TRUE(store::writeWater(water_, water, {}, {}, quiet).has_value());
    }
    /// Adds one stay that is known by its bait.
    [[nodiscard]] std::vector<std::string> adding(const std::string& bait, int day,
                                                  const std::string& wait) const {
        const std::string date = std::to_string(2000 + day / 171) + "-0" +
                                 std::to_string(1 + day % 9) + "-" +
                                 std::to_string(10 + day / 9 % 19);
        const auto table = folder_ / (bait + ".csv");
        whole_day::writeText(table, "kind,stay,start,end,lon,lat,rods,bait\nstay,1," + date +
                                        "T08:00Z," + date + "T11:00Z,3.1,55.2,2," + bait + "\n");
        std::vector<std::string> words{"log", water_.string(), "--add", table.string()};
        if (!wait.empty()) {
            words.insert(words.end(), {"--wait", wait});
        }
        return words;
    }
    [[nodiscard]] water::Water kept() const {
        auto store = store::open(water_, store::Purpose::looking);
        EXPECT_TRUE(store.has_value()) << store.error().sentence();
        return (*store)->load(quiet).value();
    }
    /// How many stays of this bait are in the file.
    [[nodiscard]] std::ptrdiff_t staysWith(const std::string& bait) const {
        return std::ranges::count(kept().log, bait, &logbook::Stay::bait);
    }
    [[nodiscard]] std::vector<std::string> sketching(const std::string& wait) const {
        return {"sketch",   sampleFile("survey-2026-09-19.csv"),
                "--shore",  sampleFile("shoreline.geojson"),
                "--water",  water_.string(),
                "--cell",   "20",
                "--wait",   wait,
                "--report", (folder_ / "report.json").string()};
    }

    std::filesystem::path folder_ = std::filesystem::path(MEREMARK_SCRATCH_DIR) / "two-writers";
    std::filesystem::path water_ = folder_ / "water.gpkg";
};

TEST_F(TwoWriters, BothWaitAndBothAreKept) {
    for (int i = 0; i < tries(); ++i) {
        SCOPED_TRACE("try " + std::to_string(i));
        const std::string a = "roach" + std::to_string(i);
        const std::string b = "smelt" + std::to_string(i);
        StartedBatch first(adding(a, 2 * i, "300"));
        StartedBatch second(adding(b, 2 * i + 1, "300"));
        const BatchRun one = first.finish();
        const BatchRun two = second.finish();
        ASSERT_EQ(one.exitCode, 0) << one.error;
        ASSERT_EQ(two.exitCode, 0) << two.error;
        ASSERT_EQ(staysWith(a), 1);
        ASSERT_EQ(staysWith(b), 1);
    }
    EXPECT_EQ(kept().log.size(), static_cast<std::size_t>(2 * tries()));
    EXPECT_FALSE(std::filesystem::exists(store::OwnerLock::pathFor(water_)));
}

TEST_F(TwoWriters, WithoutWaitingOneIsToldAndNothingThatWasKeptIsLost) {
    std::size_t keptStays = 0;
    for (int i = 0; i < tries(); ++i) {
        SCOPED_TRACE("try " + std::to_string(i));
        const std::string a = "roach" + std::to_string(i);
        const std::string b = "smelt" + std::to_string(i);
        StartedBatch first(adding(a, 2 * i, ""));
        StartedBatch second(adding(b, 2 * i + 1, ""));
        const std::array<std::pair<BatchRun, std::string>, 2> runs{
            {{first.finish(), a}, {second.finish(), b}}};
        for (const auto& [run, bait] : runs) {
            ASSERT_TRUE(run.exitCode == 0 || run.exitCode == 4) << run.error;
            ASSERT_EQ(staysWith(bait), run.exitCode == 0 ? 1 : 0) << run.error;
            keptStays += run.exitCode == 0 ? 1 : 0;
            if (run.exitCode != 0) {
                EXPECT_NE(run.error.find("has this water open"), std::string::npos) << run.error;
                EXPECT_NE(run.error.find("--wait"), std::string::npos) << run.error;
            }
        }
        ASSERT_TRUE(runs[0].first.exitCode == 0 || runs[1].first.exitCode == 0);
    }
    EXPECT_EQ(kept().log.size(), keptStays);
}

TEST_F(TwoWriters, TheOneThatWaitsSaysForWhomAndGoesOnWhenItMay) {
    auto ours = store::open(water_).value();
    ASSERT_FALSE(ours->isReadOnly());
    StartedBatch waiting(adding("roach", 1, "300"));
    while (waiting.errorSoFar().empty() && waiting.isRunning()) {
        std::this_thread::yield();
    }
    EXPECT_NE(waiting.errorSoFar().find("waiting: test_whole_day_"), std::string::npos)
        << waiting.errorSoFar();
    EXPECT_TRUE(waiting.isRunning());
    EXPECT_EQ(staysWith("roach"), 0);
    ours.reset();
    const BatchRun run = waiting.finish();
    EXPECT_EQ(run.exitCode, 0) << run.error;
    EXPECT_EQ(std::ranges::count(run.error, '\n'), 1) << run.error;
    EXPECT_EQ(staysWith("roach"), 1);
}

TEST_F(TwoWriters, TheOneThatWaitsStopsWhenAsked) {
    const auto ours = store::open(water_).value();
    StartedBatch waiting(adding("roach", 1, "300"));
    while (waiting.errorSoFar().empty() && waiting.isRunning()) {
        std::this_thread::yield();
    }
    ASSERT_TRUE(waiting.isRunning()) << waiting.errorSoFar();
    ASSERT_EQ(kill(waiting.process(), SIGTERM), 0);
    EXPECT_EQ(waiting.finish().exitCode, 6);
}

TEST_F(TwoWriters, AStayAddedWhileTheWaterIsDrawnIsKept) {
    const int rounds = std::max(1, tries() / 4);
    for (int i = 0; i < rounds; ++i) {
        SCOPED_TRACE("round " + std::to_string(i));
        StartedBatch drawing(sketching("300"));
        std::vector<std::string> baits;
        while (drawing.isRunning() || baits.size() < 2) {
            const std::string bait =
                "roach" + std::to_string(i) + "x" + std::to_string(baits.size());
            const BatchRun run =
                runBatch(adding(bait, static_cast<int>(i * 40 + baits.size()), "300"));
            ASSERT_EQ(run.exitCode, 0) << run.error;
            baits.push_back(bait);
        }
        const BatchRun drawn = drawing.finish();
        ASSERT_EQ(drawn.exitCode, 0) << drawn.error;
        const water::Water water = kept();
        ASSERT_EQ(water.days.size(), 1U);
        EXPECT_FALSE(water.days.front().soundings.empty());
        EXPECT_FALSE(water.shoreline.empty());
        for (const std::string& bait : baits) {
            EXPECT_EQ(std::ranges::count(water.log, bait, &logbook::Stay::bait), 1) << bait;
        }
    }
}

TEST_F(TwoWriters, WhoHasItOpenSeesWhatIsDrawnAndIsNotLeftWithADeadFile) {
    const auto looker = store::open(water_, store::Purpose::looking).value();
    ASSERT_TRUE(looker->load(quiet).value().days.empty());
    const BatchRun drawn = runBatch(sketching("0"));
    ASSERT_EQ(drawn.exitCode, 0) << drawn.error;
    EXPECT_TRUE(looker->hasChanged().value());
    EXPECT_EQ(looker->load(quiet).value().days.size(), 1U);
}

TEST_F(TwoWriters, TwoThatMakeTheSameWaterDoNotReplaceOneAnother) {
    std::filesystem::remove(water_);
    StartedBatch first(sketching("0"));
    StartedBatch second(sketching("0"));
    const BatchRun one = first.finish();
    const BatchRun two = second.finish();
    EXPECT_EQ(std::min(one.exitCode, two.exitCode), 0) << one.error << two.error;
    // 0 where it began only once the other had done: then it drew in the water that was there.
    const int other = std::max(one.exitCode, two.exitCode);
    EXPECT_TRUE(other == 0 || other == 4) << one.error << two.error;
    EXPECT_EQ(kept().days.size(), 1U);
}

} // namespace
