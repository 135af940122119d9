// SPDX-License-Identifier: GPL-3.0-or-later
// Two openings of one water: one writes, the other looks and follows; and where nothing keeps two
// from writing, no save is lost under another.
#include "core/store/owner_lock.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/as_nobody.h"
#include "tests/support/failing_disk.h"
#include "tests/support/found_water.h"
#include "tests/support/random_water.h"
#include "tests/support/scratch_folder.h"

#include <array>
#include <atomic>
#include <functional>
#include <thread>

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using base::ErrorKind;
using store::Purpose;
using store::WaterStore;
using support::RandomWater;
using support::ScratchFolder;

base::Progress quiet;

using Act = std::function<base::Result<void>(WaterStore&)>;

class TwoOpenings : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(
            store::create(path_).value()->save(before_, water::allParts, quiet).has_value());
    }
    [[nodiscard]] std::unique_ptr<WaterStore> opened(Purpose purpose = Purpose::writing) const {
        auto store = store::open(path_, purpose);
        EXPECT_TRUE(store.has_value()) << store.error().sentence();
        return std::move(*store);
    }
    /// What is in the file.
    [[nodiscard]] water::Water kept() const {
        return opened(Purpose::looking)->load(quiet).value();
    }
    /// As on a file system that has no locks: everybody may write.
    void takeLocksAway() const {
        std::filesystem::create_directory(store::OwnerLock::pathFor(path_));
    }
    [[nodiscard]] static base::Result<void> saveAll(WaterStore& store, const water::Water& water) {
        return store.save(water, water::allParts, quiet);
    }
    /// Every way of saving.
    [[nodiscard]] std::array<Act, 4> ways() const {
        return {[this](WaterStore& store) { return saveAll(store, after_); },
                [this](WaterStore& store) {
                    return store.saveDrawing(*known_.found.drawn, known_.made.frame,
                                             water::Stamp(9));
                },
                [this](WaterStore& store) {
                    return store.saveFound(known_.water, known_.found, known_.told(), quiet);
                },
                [this](WaterStore& store) {
                    return store.saveWhole(known_.water, known_.found, known_.told(), quiet);
                }};
    }

    const water::Water before_ = RandomWater(1).make(40);
    const water::Water after_ = RandomWater(2).make(40);
    const support::FoundWater known_;
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
};

TEST_F(TwoOpenings, OneWritesAndTheOtherLooksAndIsToldWhoWrites) {
    const auto writer = opened();
    EXPECT_FALSE(writer->isReadOnly());
    EXPECT_EQ(writer->owner(), std::nullopt);
    const auto second = opened();
    EXPECT_TRUE(second->isReadOnly());
    ASSERT_TRUE(second->owner().has_value());
    EXPECT_EQ(second->owner()->process, getpid());
    EXPECT_TRUE(second->load(quiet).value() == before_);
    for (const Act& way : ways()) {
        const auto saved = way(*second);
        ASSERT_FALSE(saved.has_value());
        EXPECT_EQ(saved.error().kind, ErrorKind::waterInUse);
        EXPECT_EQ(saved.error().what, second->owner()->text() + " has this water open");
        EXPECT_EQ(saved.error().where, path_.string());
        EXPECT_EQ(saved.error().whatToDo, "close it there, then open it here again");
    }
    EXPECT_TRUE(kept() == before_);
    EXPECT_TRUE(saveAll(*writer, after_).has_value());
}

TEST_F(TwoOpenings, WhoOnlyLooksKeepsNobodyOutAndWritesNothing) {
    const std::string bytes = ScratchFolder::textOf(path_);
    const auto looker = opened(Purpose::looking);
    EXPECT_TRUE(looker->isReadOnly());
    EXPECT_EQ(looker->owner(), std::nullopt);
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder_.path()), {}), 1);
    for (const Act& way : ways()) {
        const auto saved = way(*looker);
        ASSERT_FALSE(saved.has_value());
        EXPECT_EQ(saved.error().kind, ErrorKind::unwritableOutput);
        EXPECT_EQ(saved.error().what, "the water was opened to be looked at; nothing was changed");
    }
    EXPECT_EQ(ScratchFolder::textOf(path_), bytes);
    const auto writer = opened();
    EXPECT_FALSE(writer->isReadOnly());
    EXPECT_TRUE(saveAll(*writer, after_).has_value());
}

TEST_F(TwoOpenings, TheOneThatLooksFollowsWhatTheOtherSaves) {
    const auto writer = opened();
    const auto looker = opened();
    ASSERT_TRUE(looker->load(quiet).has_value());
    for (const Act& way : ways()) {
        EXPECT_FALSE(looker->hasChanged().value());
        ASSERT_TRUE(way(*writer).has_value());
        EXPECT_FALSE(writer->hasChanged().value()) << "its own save is none of another's";
        EXPECT_TRUE(looker->hasChanged().value());
        EXPECT_TRUE(looker->hasChanged().value()) << "until it has been loaded";
        ASSERT_TRUE(looker->load(quiet).has_value());
    }
    EXPECT_TRUE(looker->load(quiet).value() == known_.water);
}

TEST_F(TwoOpenings, TheOneThatLooksIsNotHeldUpByASave) {
    const auto looker = opened(Purpose::looking);
    const auto other = store::Connection::open(path_, store::Connection::Access::existing).value();
    other->execute("BEGIN EXCLUSIVE; DELETE FROM stays");
    ASSERT_TRUE(other->outcome().has_value());
    const auto asked = looker->hasChanged();
    ASSERT_TRUE(asked.has_value()) << asked.error().sentence();
    EXPECT_FALSE(*asked);
    other->rollBack();
    EXPECT_TRUE(looker->load(quiet).value() == before_);
}

TEST_F(TwoOpenings, TheOneThatWritesNeverTakesItsOwnSaveForAnothers) {
    const auto writer = opened();
    std::atomic<bool> isDone = false;
    std::thread saving([&] {
        for (int i = 0; i < 25; ++i) {
            const auto saved = saveAll(*writer, i % 2 == 0 ? after_ : before_);
            EXPECT_TRUE(saved.has_value()) << saved.error().sentence();
        }
        isDone = true;
    });
    while (!isDone) {
        EXPECT_FALSE(writer->hasChanged().value_or(true));
        EXPECT_FALSE(writer->isReadOnly());
    }
    saving.join();
}

TEST_F(TwoOpenings, WhoOpensItAgainMayWriteOnceTheOtherHasGone) {
    auto writer = opened();
    ASSERT_TRUE(opened()->isReadOnly());
    writer.reset();
    const auto again = opened();
    EXPECT_FALSE(again->isReadOnly());
    EXPECT_TRUE(saveAll(*again, after_).has_value());
    EXPECT_TRUE(kept() == after_);
}

TEST_F(TwoOpenings, WithoutLocksASaveOnTopOfAnothersIsRefused) {
    takeLocksAway();
    for (const Act& late : ways()) {
        const auto one = opened();
        const auto two = opened();
        ASSERT_FALSE(one->isReadOnly() || two->isReadOnly());
        ASSERT_TRUE(one->load(quiet).has_value());
        ASSERT_TRUE(two->load(quiet).has_value());
        water::Water fished = before_;
        fished.log.push_back({});
        ASSERT_TRUE(saveAll(*one, fished).has_value());
        const auto saved = late(*two);
        ASSERT_FALSE(saved.has_value());
        EXPECT_EQ(saved.error().kind, ErrorKind::waterChanged);
        EXPECT_EQ(saved.error().where, path_.string());
        EXPECT_EQ(saved.error().whatToDo, "open the water again and make the change there");
        EXPECT_TRUE(kept() == fished);
        EXPECT_TRUE(two->hasChanged().value());
        EXPECT_FALSE(late(*two).has_value()) << "it stays refused";
        ASSERT_TRUE(two->load(quiet).value() == fished);
        EXPECT_TRUE(late(*two).has_value());
        EXPECT_FALSE(saveAll(*one, fished).has_value()) << "now the other one is late";
        ASSERT_TRUE(one->load(quiet).has_value());
        ASSERT_TRUE(saveAll(*one, before_).has_value());
    }
}

TEST_F(TwoOpenings, WithoutLocksTheRightIsAskedForAgainAtEachSave) {
    takeLocksAway();
    const auto early = opened();
    std::filesystem::remove(store::OwnerLock::pathFor(path_));
    const auto late = opened();
    EXPECT_FALSE(late->isReadOnly());
    const auto saved = saveAll(*early, after_);
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().kind, ErrorKind::waterInUse);
    EXPECT_TRUE(early->isReadOnly());
    EXPECT_TRUE(saveAll(*late, after_).has_value());
}

TEST_F(TwoOpenings, ASaveWhoseWordWasLostIsNotTakenForAnothers) {
    support::FailingDisk disk;
    const auto store = opened();
    disk.loseWordOfRemoval();
    const auto saved = saveAll(*store, after_);
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error().kind, ErrorKind::unwritableOutput) << saved.error().sentence();
    ASSERT_TRUE(kept() == after_) << "it went through all the same";
    const auto again = saveAll(*store, before_);
    EXPECT_TRUE(again.has_value()) << again.error().sentence();
    EXPECT_TRUE(kept() == before_);
}

TEST_F(TwoOpenings, AFullDiskThatIsFreeAgainTakesTheNextSave) {
    support::FailingDisk disk;
    const auto store = opened();
    for (const int changes : {0, 1, 5, 12}) {
        disk.failAfter(changes, support::FailingDisk::Way::isFull);
        const auto saved = saveAll(*store, after_);
        ASSERT_FALSE(saved.has_value());
        EXPECT_EQ(saved.error().kind, ErrorKind::unwritableOutput);
        EXPECT_FALSE(saveAll(*store, after_).has_value()) << "it is still full";
        disk.heal();
        EXPECT_TRUE(kept() == before_);
        ASSERT_TRUE(saveAll(*store, after_).has_value());
        EXPECT_TRUE(kept() == after_);
        ASSERT_TRUE(saveAll(*store, before_).has_value());
    }
}

TEST_F(TwoOpenings, AFileThatWasMovedOrDeletedIsNotSavedTo) {
    const auto elsewhere = folder_.path() / "elsewhere.gpkg";
    const std::array<std::function<void()>, 3> acts{
        [&] { std::filesystem::rename(path_, elsewhere); }, [&] { std::filesystem::remove(path_); },
        [&] { std::filesystem::rename(folder_.file("new", "dear diary"), path_); }};
    for (const auto& act : acts) {
        std::filesystem::remove(path_);
        ASSERT_TRUE(saveAll(*store::create(path_).value(), before_).has_value());
        const auto store = opened();
        ASSERT_TRUE(store->load(quiet).has_value());
        act();
        const auto saved = saveAll(*store, after_);
        ASSERT_FALSE(saved.has_value());
        EXPECT_EQ(saved.error().kind, ErrorKind::unwritableOutput);
        EXPECT_EQ(saved.error().what,
                  "the water file was moved or deleted while it was open; nothing was saved");
        EXPECT_EQ(saved.error().where, path_.string());
        EXPECT_EQ(saved.error().whatToDo, "open it where it is now, or save under another name");
        const auto changed = store->hasChanged();
        ASSERT_FALSE(changed.has_value()) << "what is shown is no longer what is there";
        EXPECT_EQ(changed.error().kind, ErrorKind::unusableInput);
    }
    EXPECT_EQ(ScratchFolder::textOf(path_), "dear diary");
    EXPECT_TRUE(store::open(elsewhere).value()->load(quiet).value() == before_);
}

TEST_F(TwoOpenings, ALinkStaysALinkAndAFileKeepsItsMode) {
    const auto link = folder_.path() / "link.gpkg";
    std::filesystem::create_symlink("water.gpkg", link);
    const auto mode = std::filesystem::perms(0640);
    std::filesystem::permissions(path_, mode);
    {
        const auto store = store::open(link).value();
        EXPECT_TRUE(opened()->isReadOnly()) << "it is the same water";
        ASSERT_TRUE(store->saveWhole(known_.water, known_.found, known_.told(), quiet).has_value());
    }
    EXPECT_TRUE(std::filesystem::is_symlink(link));
    EXPECT_EQ(std::filesystem::status(path_).permissions(), mode);
    EXPECT_TRUE(kept() == known_.water);
}

TEST_F(TwoOpenings, InAFolderThatIsClosedToUsTheWaterIsLookedAt) {
    std::filesystem::permissions(path_, std::filesystem::perms(0666));
    std::filesystem::permissions(folder_.path(), std::filesystem::perms(0555));
    EXPECT_TRUE(support::holdsAsNobody([this] {
        const auto store = store::open(path_);
        return store && (*store)->isReadOnly() && !(*store)->owner() &&
               (*store)->load(quiet).value() == before_ &&
               saveAll(**store, after_).error().kind == ErrorKind::unwritableOutput;
    }));
    EXPECT_TRUE(kept() == before_);
}

/// Whether another process may write as far as SQLite's own locks go (SQLite file format, the
/// reserved byte).
bool isReserved(const std::filesystem::path& path) {
    const pid_t child = fork();
    if (child == 0) {
        struct flock reserved {};
        reserved.l_type = F_WRLCK;
        reserved.l_whence = SEEK_SET;
        reserved.l_start = 0x40000001;
        reserved.l_len = 1;
        const int file = open(path.c_str(), O_RDWR);
        _exit(file >= 0 && fcntl(file, F_GETLK, &reserved) == 0 && reserved.l_type != F_UNLCK ? 0
                                                                                              : 1);
    }
    int status = 1;
    return waitpid(child, &status, 0) == child && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

TEST_F(TwoOpenings, LookingAtTheFileDropsNoLockThatThisProcessHasOnIt) {
    const auto writing =
        store::Connection::open(path_, store::Connection::Access::existing).value();
    writing->execute("BEGIN IMMEDIATE");
    ASSERT_TRUE(isReserved(path_));
    EXPECT_EQ(store::stateOf(path_), store::FileState::current);
    EXPECT_TRUE(isReserved(path_));
    EXPECT_TRUE(opened(Purpose::looking)->load(quiet).has_value());
    EXPECT_TRUE(isReserved(path_));
    writing->rollBack();
    EXPECT_FALSE(isReserved(path_));
}

} // namespace
