// SPDX-License-Identifier: GPL-3.0-or-later
// What can happen to a water file: a disk that fails, a kill in the middle, a file that is not what
// its name says. What was saved must still be there, or the error must say what is wrong.
#include "core/store/connection.h"
#include "core/store/geopackage.h"
#include "core/store/water_store.h"
#include "core/store/write_water.h"
#include "tests/support/failing_disk.h"
#include "tests/support/found_water.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <fstream>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using base::ErrorKind;
using support::FailingDisk;
using support::RandomWater;
using support::ScratchFolder;

base::Progress quiet;

/// A file with a water in it.
class WaterFile : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(isSaved(before)); }

    /// Saves all of `water` in the file; a message where that fails.
    testing::AssertionResult isSaved(const water::Water& water) const {
        auto store = std::filesystem::exists(path) ? store::open(path) : store::create(path);
        if (!store) {
            return testing::AssertionFailure() << store.error().sentence();
        }
        const auto saved = (*store)->save(water, water::allParts, quiet);
        return saved ? testing::AssertionSuccess()
                     : testing::AssertionFailure() << saved.error().sentence();
    }
    [[nodiscard]] base::Result<water::Water> loaded() const {
        auto store = store::open(path);
        if (!store) {
            return std::unexpected(store.error());
        }
        return (*store)->load(quiet);
    }
    /// The error of opening the file.
    [[nodiscard]] base::Error refusal() const {
        auto store = store::open(path);
        if (store) {
            ADD_FAILURE() << "the file opens";
            return {};
        }
        return store.error();
    }
    void setStep(const std::string& step) const {
        auto connection =
            store::Connection::open(path, store::Connection::Access::existing).value();
        connection->execute("UPDATE water_file SET value='" + step + "' WHERE key='schema_step'");
        ASSERT_TRUE(connection->outcome().has_value());
    }

    const water::Water before = RandomWater(1).make(400);
    const water::Water after = RandomWater(2).make(400);
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "water.gpkg";
};

TEST_F(WaterFile, KeepsTheLastStateWhereverTheDiskFails) {
    FailingDisk disk;
    for (const FailingDisk::Way way : {FailingDisk::Way::isFull, FailingDisk::Way::isBroken}) {
        int failures = 0;
        for (int changes = 0;; ++changes) {
            SCOPED_TRACE("after " + std::to_string(changes) + " changes");
            auto store = store::open(path);
            ASSERT_TRUE(store.has_value());
            disk.failAfter(changes, way);
            const auto saved = (*store)->save(after, water::allParts, quiet);
            disk.heal();
            const auto found = (*store)->load(quiet);
            ASSERT_TRUE(found.has_value()) << found.error().sentence();
            if (saved) {
                ASSERT_TRUE(*found == after);
                break;
            }
            ++failures;
            ASSERT_EQ(saved.error().kind, ErrorKind::unwritableOutput) << saved.error().sentence();
            ASSERT_EQ(saved.error().where, path.string());
            ASSERT_FALSE(saved.error().whatToDo.empty());
            ASSERT_TRUE(*found == before);
        }
        EXPECT_GT(failures, 10);
        ASSERT_TRUE(isSaved(before));
    }
}

TEST_F(WaterFile, KeepsOneStateWholeWhereverTheProgramIsKilled) {
    int kills = 0;
    for (int changes = 0;; ++changes) {
        SCOPED_TRACE("after " + std::to_string(changes) + " changes");
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            FailingDisk disk;
            auto store = store::open(path);
            disk.killAfter(changes);
            _exit(store && (*store)->save(after, water::allParts, quiet) ? 0 : 1);
        }
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFEXITED(status));
        const auto found = loaded();
        ASSERT_TRUE(found.has_value()) << found.error().sentence();
        if (WEXITSTATUS(status) == 0) {
            ASSERT_TRUE(*found == after);
            break;
        }
        ASSERT_EQ(WEXITSTATUS(status), FailingDisk::killedCode);
        ++kills;
        ASSERT_TRUE(*found == before || *found == after);
        ASSERT_TRUE(isSaved(before));
    }
    EXPECT_GT(kills, 10);
}

TEST_F(WaterFile, IsCheckedWholeAfterAKill) {
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        FailingDisk disk;
        auto store = store::open(path);
        disk.killAfter(25);
        static_cast<void>((*store)->save(after, water::allParts, quiet));
        _exit(0);
    }
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    ASSERT_EQ(WEXITSTATUS(status), FailingDisk::killedCode);
    auto store = store::open(path);
    ASSERT_TRUE(store.has_value()) << store.error().sentence();
    const auto report = (*store)->check(quiet);
    ASSERT_TRUE(report.has_value());
    EXPECT_TRUE(report->isWhole()) << report->faults.front();
}

TEST_F(WaterFile, MayBeReadWhereItMayNotBeWritten) {
    FailingDisk disk;
    disk.forbidWriting();
    auto store = store::open(path);
    ASSERT_TRUE(store.has_value()) << store.error().sentence();
    EXPECT_TRUE((*store)->isReadOnly());
    EXPECT_TRUE((*store)->load(quiet).value() == before);
    EXPECT_TRUE((*store)->check(quiet).value().isWhole());
    const auto saved = (*store)->save(after, water::allParts, quiet);
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().kind, ErrorKind::unwritableOutput);
    EXPECT_TRUE((*store)->load(quiet).value() == before);
}

TEST_F(WaterFile, IsNotMadeWhereNothingMayBeWritten) {
    const auto inAFile = folder.file("file", "") / "water.gpkg";
    const auto made = store::create(inAFile);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().kind, ErrorKind::unwritableOutput);
    EXPECT_EQ(made.error().where, inAFile.string());
    const auto written = store::writeWater(inAFile, before, {}, {}, quiet);
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().kind, ErrorKind::unwritableOutput);
    EXPECT_EQ(written.error().where, inAFile.string());
}

TEST_F(WaterFile, OfANewerVersionIsLeftAlone) {
    setStep("99");
    const std::string bytes = ScratchFolder::textOf(path);
    EXPECT_EQ(store::stateOf(path), store::FileState::newer);
    const auto saved = store::open(path).value()->save(after, water::allParts, quiet);
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().kind, ErrorKind::unwritableOutput);
    EXPECT_NE(saved.error().what.find("newer"), std::string::npos);
    EXPECT_EQ(saved.error().where, path.string());
    EXPECT_EQ(ScratchFolder::textOf(path), bytes);
}

TEST_F(WaterFile, ThatDoesNotSayItsVersionIsDamaged) {
    setStep("soon");
    EXPECT_EQ(store::stateOf(path), store::FileState::damaged);
    EXPECT_EQ(refusal().kind, ErrorKind::damagedWater);
}

TEST_F(WaterFile, CutOffAnywhereIsDamaged) {
    const auto whole = std::filesystem::file_size(path);
    const std::string bytes = ScratchFolder::textOf(path);
    for (const std::uintmax_t size :
         {std::uintmax_t{16}, std::uintmax_t{99}, std::uintmax_t{100}, std::uintmax_t{4095},
          std::uintmax_t{4096}, std::uintmax_t{4097}, whole / 3, whole / 2, whole - 4096,
          whole - 1}) {
        SCOPED_TRACE(size);
        ASSERT_EQ(folder.file("water.gpkg", bytes.substr(0, size)), path);
        EXPECT_EQ(store::stateOf(path), store::FileState::damaged);
        const base::Error error = refusal();
        EXPECT_EQ(error.kind, ErrorKind::damagedWater) << error.sentence();
        EXPECT_FALSE(error.whatToDo.empty());
    }
}

TEST_F(WaterFile, WithJunkInItNeverDoesMoreThanComplain) {
    const std::string bytes = ScratchFolder::textOf(path);
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        RandomWater random(seed);
        std::string junk = bytes;
        for (int i = 0; i < 1 + random.upTo(30); ++i) {
            const auto at =
                static_cast<std::size_t>(random.upTo(static_cast<int>(junk.size()) - 1));
            junk[at] = static_cast<char>(random.upTo(255));
        }
        ASSERT_EQ(folder.file("water.gpkg", junk), path);
        auto store = store::open(path);
        if (!store) {
            EXPECT_TRUE(store.error().kind == ErrorKind::damagedWater ||
                        store.error().kind == ErrorKind::unusableInput)
                << store.error().sentence();
            continue;
        }
        const auto found = (*store)->load(quiet);
        const auto report = (*store)->check(quiet);
        ASSERT_TRUE(report.has_value());
        if (!found) {
            EXPECT_TRUE(found.error().kind == ErrorKind::damagedWater ||
                        found.error().kind == ErrorKind::unusableInput)
                << found.error().sentence();
            EXPECT_FALSE(report->isWhole()) << found.error().sentence();
        }
    }
}

TEST_F(WaterFile, IsToldFromEverythingElse) {
    const auto refuses = [](const std::filesystem::path& other, store::FileState state) {
        EXPECT_EQ(store::stateOf(other), state) << other;
        const auto opened = store::open(other);
        ASSERT_FALSE(opened.has_value());
        EXPECT_EQ(opened.error().kind, ErrorKind::unusableInput);
        EXPECT_EQ(opened.error().where, other.string());
        EXPECT_FALSE(opened.error().whatToDo.empty());
    };
    refuses(folder.path() / "nowhere.gpkg", store::FileState::missing);
    refuses(folder.path(), store::FileState::unreadable);
    refuses(folder.file("empty.gpkg", ""), store::FileState::notAWater);
    refuses(folder.file("text.gpkg", "lon,lat,depth_m\n3.1,55.2,4.0\n"),
            store::FileState::notAWater);
    refuses(folder.file("junk.gpkg", std::string(5000, '\xa7')), store::FileState::notAWater);
    const auto foreign = folder.path() / "foreign.gpkg";
    {
        auto connection =
            store::Connection::open(foreign, store::Connection::Access::create).value();
        store::layGeoPackage(*connection);
        ASSERT_TRUE(connection->outcome().has_value());
    }
    const std::string bytes = ScratchFolder::textOf(foreign);
    refuses(foreign, store::FileState::notAWater);
    EXPECT_EQ(ScratchFolder::textOf(foreign), bytes);
}

TEST_F(WaterFile, ThatContradictsItselfIsReported) {
    water::Water fished = before;
    fished.log.push_back({});
    fished.log.edit(fished.log.size() - 1).rods = 471;
    ASSERT_TRUE(isSaved(fished));
    auto connection = store::Connection::open(path, store::Connection::Access::existing).value();
    connection->execute("PRAGMA foreign_keys = FALSE; INSERT INTO soundings (geom, day_id, "
                        "shown_depth_m) SELECT geom, 4711, 1.0 "
                        "FROM soundings LIMIT 3; UPDATE stays SET rods = 0 WHERE rods = 471");
    ASSERT_TRUE(connection->outcome().has_value());
    const auto report = store::open(path).value()->check(quiet);
    ASSERT_TRUE(report.has_value());
    EXPECT_EQ(report->faults.size(), 2U);
}

TEST_F(WaterFile, InUseByAnotherProgramSaysSo) {
    auto other = store::Connection::open(path, store::Connection::Access::existing).value();
    other->execute("BEGIN EXCLUSIVE");
    ASSERT_TRUE(other->outcome().has_value());
    auto connection = store::Connection::open(path, store::Connection::Access::existing).value();
    connection->execute("PRAGMA busy_timeout = 1; BEGIN IMMEDIATE");
    const auto outcome = connection->outcome();
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().kind, ErrorKind::waterInUse);
    EXPECT_NE(outcome.error().what.find("another program"), std::string::npos);
}

} // namespace
