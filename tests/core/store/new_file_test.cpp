// SPDX-License-Identifier: GPL-3.0-or-later
// A water file that is made: it holds what was to be in it, or it is not there.
#include "core/store/owner_lock.h"
#include "core/store/water_store.h"
#include "core/store/write_water.h"
#include "tests/support/failing_disk.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using base::ErrorKind;
using support::FailingDisk;
using support::RandomWater;
using support::ScratchFolder;

base::Progress quiet;

class ANewFile : public testing::Test {
protected:
    [[nodiscard]] std::ptrdiff_t filesInFolder() const {
        return std::distance(std::filesystem::directory_iterator(folder_.path()), {});
    }

    /// A water that is gone, and beside its name the journal of a save that was killed when pages
    /// of the file had been written: SQLite sets the first byte once it has to be rolled back.
    void leaveAJournalToRollBack() const {
        const std::string journal = path_.string() + "-journal";
        for (int changes = 25; changes < 2500; changes += 25) {
            std::filesystem::remove(path_);
            std::filesystem::remove(journal);
            ASSERT_TRUE(
                store::create(path_).value()->save(water_, water::allParts, quiet).has_value());
            killSaveAfter(changes);
            const std::string left = ScratchFolder::textOf(journal);
            if (!left.empty() && left.front() != '\0') {
                std::filesystem::remove(path_);
                return;
            }
        }
        FAIL() << "no kill left a journal to roll back";
    }

    void killSaveAfter(int changes) const {
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            FailingDisk disk;
            auto store = store::open(path_);
            disk.killAfter(changes);
            static_cast<void>((*store)->save(RandomWater(4).make(60), water::allParts, quiet));
            _exit(0);
        }
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_EQ(WEXITSTATUS(status), FailingDisk::killedCode);
    }

    const water::Water water_ = RandomWater(3).make(60);
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
};

TEST_F(ANewFile, GoesWithItsStoreWhereNothingCouldBeSavedInIt) {
    FailingDisk disk;
    {
        const auto store = store::create(path_).value();
        disk.failAfter(2, FailingDisk::Way::isFull);
        EXPECT_FALSE(store->save(water_, water::allParts, quiet).has_value());
        disk.heal();
        EXPECT_TRUE(std::filesystem::exists(path_)) << "the save may be tried again";
    }
    EXPECT_EQ(filesInFolder(), 0);
}

TEST_F(ANewFile, StaysWhereALaterSaveWentThrough) {
    FailingDisk disk;
    {
        const auto store = store::create(path_).value();
        disk.failAfter(2, FailingDisk::Way::isFull);
        EXPECT_FALSE(store->save(water_, water::allParts, quiet).has_value());
        disk.heal();
        ASSERT_TRUE(store->save(water_, water::allParts, quiet).has_value());
        disk.failAfter(2, FailingDisk::Way::isFull);
        EXPECT_FALSE(store->save({}, water::allParts, quiet).has_value());
        disk.heal();
    }
    EXPECT_TRUE(store::open(path_).value()->load(quiet).value() == water_);
    EXPECT_TRUE(store::open(path_).value()->check(quiet).value().isWhole());
}

TEST_F(ANewFile, OfAnotherThatTookItsNameIsNotTakenAlong) {
    {
        const auto store = store::create(path_).value();
        std::filesystem::rename(folder_.file("other", "dear diary"), path_);
        EXPECT_FALSE(store->save(water_, water::allParts, quiet).has_value());
    }
    EXPECT_EQ(ScratchFolder::textOf(path_), "dear diary");
}

TEST_F(ANewFile, IsMadeByOneAtATime) {
    const auto other = store::OwnerLock::take(path_);
    ASSERT_TRUE(std::holds_alternative<store::OwnerLock>(other));
    const auto made = store::create(path_);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().kind, ErrorKind::waterInUse);
    const auto written = store::writeWater(path_, water_, {}, {}, quiet);
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().kind, ErrorKind::waterInUse);
    EXPECT_FALSE(std::filesystem::exists(path_));
}

TEST_F(ANewFile, OfOneGoIsNeverWrittenOverAnother) {
    const auto path = folder_.file("diary.gpkg", "dear diary");
    const auto written = store::writeWater(path, water_, {}, {}, quiet);
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().kind, ErrorKind::unwritableOutput);
    EXPECT_EQ(written.error().what, "a file of this name is there already");
    EXPECT_EQ(written.error().where, path.string());
    EXPECT_EQ(ScratchFolder::textOf(path), "dear diary");
    EXPECT_EQ(filesInFolder(), 1);
}

TEST_F(ANewFile, IsNotSpoiltByTheJournalOfOneThatIsGone) {
    for (const bool inOneGo : {false, true}) {
        leaveAJournalToRollBack();
        const water::Water another = RandomWater(5).make(80);
        if (inOneGo) {
            ASSERT_TRUE(store::writeWater(path_, another, {}, {}, quiet).has_value());
        } else {
            ASSERT_TRUE(
                store::create(path_).value()->save(another, water::allParts, quiet).has_value());
        }
        const auto store = store::open(path_);
        ASSERT_TRUE(store.has_value()) << store.error().sentence();
        EXPECT_TRUE((*store)->load(quiet).value() == another);
        EXPECT_TRUE((*store)->check(quiet).value().isWhole());
        std::filesystem::remove(path_);
    }
}

} // namespace
