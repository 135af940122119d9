// SPDX-License-Identifier: GPL-3.0-or-later
// What is on the disk when the power goes in the middle of a save or right after it; and that every
// way of saving is one transaction, every way of reading one view.
#include "core/store/connection.h"
#include "core/store/water_store.h"
#include "core/store/write_water.h"
#include "tests/support/failing_disk.h"
#include "tests/support/found_water.h"
#include "tests/support/power_cut.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <functional>

#include <gtest/gtest.h>

namespace {

using support::DiskChange;
using support::FailingDisk;
using support::RandomWater;
using support::ScratchFolder;
using support::Unsynced;

base::Progress quiet;

using Act = std::function<base::Result<void>(store::WaterStore&)>;

class PowerCut : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(
            store::create(path_).value()->save(before_, water::allParts, quiet).has_value());
        files_ = support::filesIn(folder_.path());
    }
    /// What the disk is told while `act` runs on the water opened.
    std::vector<DiskChange> recorded(const Act& act) {
        FailingDisk disk;
        auto store = store::open(path_).value();
        disk.record();
        const auto done = act(*store);
        EXPECT_TRUE(done.has_value()) << done.error().sentence();
        return disk.recorded();
    }
    /// The water that is found where the power went after so many of these changes.
    [[nodiscard]] base::Result<water::Water> found(std::span<const DiskChange> changes,
                                                   Unsynced unsynced, std::uint64_t seed) const {
        const ScratchFolder other;
        support::layFiles(support::afterPowerCut(files_, changes, unsynced, seed), other.path());
        auto store = store::open(other.path() / "water.gpkg");
        if (!store) {
            return std::unexpected(store.error());
        }
        return (*store)->load(quiet);
    }

    /// Another water, with one more survey day.
    [[nodiscard]] static water::Water larger() {
        water::Water water = RandomWater(2).make(20);
        soundings::SurveyDay& day = water.days.emplace_back();
        day.id = soundings::SurveyDayId(4711);
        day.soundings.edit().assign(600, {{3.1, 55.2}, units::Depth::metres(4.0), std::nullopt});
        return water;
    }

    const water::Water before_ = RandomWater(1).make(20);
    const water::Water after_ = larger();
    const support::FoundWater known_;
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
    support::Files files_;
};

TEST_F(PowerCut, AtAnyMomentLeavesTheWaterAsItWasOrAsItWasSaved) {
    const auto changes = recorded(
        [this](store::WaterStore& store) { return store.save(after_, water::allParts, quiet); });
    ASSERT_GT(changes.size(), 20U);
    // The file grows: in the middle of it its head tells of pages that are not there yet.
    ASSERT_GT(std::filesystem::file_size(path_), files_.at("water.gpkg").size() + 4096);
    for (std::size_t count = 0; count <= changes.size(); ++count) {
        for (const Unsynced unsynced : {Unsynced::lost, Unsynced::kept, Unsynced::some}) {
            SCOPED_TRACE(std::to_string(count) + ", " + std::to_string(static_cast<int>(unsynced)));
            const auto water = found(std::span(changes).first(count), unsynced, count);
            ASSERT_TRUE(water.has_value()) << water.error().sentence();
            ASSERT_TRUE(*water == before_ || *water == after_);
        }
    }
}

TEST_F(PowerCut, RightAfterASaveLeavesWhatWasSaved) {
    const auto changes = recorded(
        [this](store::WaterStore& store) { return store.save(after_, water::allParts, quiet); });
    for (const Unsynced unsynced : {Unsynced::lost, Unsynced::kept, Unsynced::some}) {
        for (std::uint64_t seed = 1; seed <= 4; ++seed) {
            const auto water = found(changes, unsynced, seed);
            ASSERT_TRUE(water.has_value()) << water.error().sentence();
            EXPECT_TRUE(*water == after_);
        }
    }
}

TEST_F(PowerCut, FindsEveryWayOfSavingInOneTransactionThatIsOnTheDisk) {
    const std::array<std::pair<const char*, Act>, 4> ways{
        {{"parts",
          [this](store::WaterStore& store) { return store.save(after_, water::allParts, quiet); }},
         {"drawing",
          [this](store::WaterStore& store) {
              return store.saveDrawing(*known_.found.drawn, known_.made.frame, water::Stamp(9));
          }},
         {"found",
          [this](store::WaterStore& store) {
              return store.saveFound(known_.water, known_.found, known_.told(), quiet);
          }},
         {"whole", [this](store::WaterStore& store) {
              return store.saveWhole(known_.water, known_.found, known_.told(), quiet);
          }}}};
    for (const bool isFresh : {false, true}) {
        for (const auto& [name, act] : ways) {
            SCOPED_TRACE(name);
            FailingDisk disk;
            const auto path = isFresh ? folder_.path() / (std::string(name) + ".gpkg") : path_;
            auto store = isFresh ? store::create(path).value() : store::open(path).value();
            disk.record();
            ASSERT_TRUE(act(*store).has_value());
            const auto& changes = disk.recorded();
            EXPECT_EQ(std::ranges::count(changes, DiskChange::Kind::create, &DiskChange::kind), 1);
            EXPECT_EQ(std::ranges::count(changes, DiskChange::Kind::remove, &DiskChange::kind), 1);
            // The journal's removal is what makes the change: it comes last, and lasts.
            EXPECT_EQ(changes.back().kind, DiskChange::Kind::remove);
            EXPECT_EQ(changes.back().file, path.string() + "-journal");
            EXPECT_TRUE(changes.back().syncsFolder);
        }
    }
}

TEST_F(PowerCut, FindsEveryFailedSaveTakenBackToTheLastByte) {
    const std::array<Act, 3> ways{
        [this](store::WaterStore& store) {
            return store.saveDrawing(*known_.found.drawn, known_.made.frame, water::Stamp(9));
        },
        [this](store::WaterStore& store) {
            return store.saveFound(known_.water, known_.found, known_.told(), quiet);
        },
        [this](store::WaterStore& store) {
            return store.saveWhole(known_.water, known_.found, known_.told(), quiet);
        }};
    for (const Act& act : ways) {
        // One of them is the making of the journal, which always goes through.
        const auto all = static_cast<int>(recorded(act).size());
        support::layFiles(files_, folder_.path());
        for (const int changes : {0, 1, all / 2, all - 3, all - 2}) {
            SCOPED_TRACE(std::to_string(changes) + " of " + std::to_string(all));
            FailingDisk disk;
            auto store = store::open(path_).value();
            disk.failAfter(changes, FailingDisk::Way::isFull);
            EXPECT_FALSE(act(*store).has_value());
            disk.heal();
            EXPECT_TRUE(store->load(quiet).value() == before_);
            store.reset();
            EXPECT_TRUE(support::filesIn(folder_.path()).at("water.gpkg") ==
                        files_.at("water.gpkg"));
        }
    }
}

TEST_F(PowerCut, FindsEveryWayOfReadingInOneView) {
    FailingDisk disk;
    auto store = store::open(path_).value();
    ASSERT_TRUE(store->saveWhole(known_.water, known_.found, known_.told(), quiet).has_value());
    const auto readLocks = [&](const std::function<void()>& read) {
        disk.record();
        read();
        return disk.readLocks();
    };
    EXPECT_EQ(readLocks([&] { EXPECT_TRUE(store->load(quiet).has_value()); }), 1);
    EXPECT_EQ(readLocks([&] { EXPECT_TRUE(store->check(quiet).has_value()); }), 1);
    EXPECT_EQ(readLocks([&] {
                  EXPECT_TRUE(store->loadDrawing(known_.made.outline).value().has_value());
              }),
              1);
}

TEST_F(PowerCut, AFileThatCannotBeReadToItsEndIsDamaged) {
    FailingDisk disk;
    auto store = store::open(path_).value();
    disk.forbidReading();
    const auto water = store->load(quiet);
    ASSERT_FALSE(water.has_value());
    EXPECT_EQ(water.error().kind, base::ErrorKind::damagedWater);
    EXPECT_EQ(water.error().what, "the water file cannot be read to its end");
}

TEST_F(PowerCut, ANewWaterIsLaidInOneTransaction) {
    FailingDisk disk;
    disk.record();
    ASSERT_TRUE(store::create(folder_.path() / "new.gpkg").has_value());
    EXPECT_EQ(std::ranges::count(disk.recorded(), DiskChange::Kind::remove, &DiskChange::kind), 1);
}

} // namespace
