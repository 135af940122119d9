// SPDX-License-Identifier: GPL-3.0-or-later
// Who may write a water file: one at a time, for as long as it lives and no longer.
#include "core/store/owner_lock.h"

#include "tests/support/as_nobody.h"
#include "tests/support/scratch_folder.h"

#include <cerrno>
#include <csignal>

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using store::NoLock;
using store::Owner;
using store::OwnerLock;
using support::ScratchFolder;

bool isLock(const OwnerLock::Taken& taken) {
    return std::holds_alternative<OwnerLock>(taken);
}

/// Who has it; the test fails where nobody has.
Owner ownerOf(const OwnerLock::Taken& taken) {
    const auto* owner = std::get_if<Owner>(&taken);
    EXPECT_NE(owner, nullptr);
    return owner == nullptr ? Owner() : *owner;
}

class ALock : public testing::Test {
protected:
    /// Says that this program has it, or had it.
    void leave(const std::string& text) const {
        ASSERT_EQ(folder_.file(".mere.gpkg.owner", text), place_);
    }

    const ScratchFolder folder_;
    const std::filesystem::path water_ = folder_.file("mere.gpkg", "water");
    const std::filesystem::path place_ = folder_.path() / ".mere.gpkg.owner";
};

TEST_F(ALock, IsHadByOneAtATimeWhoSaysSo) {
    const auto first = OwnerLock::take(water_);
    ASSERT_TRUE(isLock(first));
    const Owner owner = ownerOf(OwnerLock::take(water_));
    EXPECT_EQ(owner.program, "test_core_store");
    EXPECT_EQ(owner.process, getpid());
    EXPECT_FALSE(owner.host.empty());
    EXPECT_EQ(owner.text(),
              "test_core_store (process " + std::to_string(getpid()) + " on " + owner.host + ")");
    EXPECT_EQ(Owner().text(), "another program");
    EXPECT_TRUE(isLock(OwnerLock::take(folder_.path() / "other.gpkg"))) << "each water has its own";
}

TEST_F(ALock, IsFreeOnceItIsLetGoOfAndLeavesNothing) {
    {
        const auto first = OwnerLock::take(water_);
        EXPECT_TRUE(std::filesystem::exists(place_));
        EXPECT_FALSE(isLock(OwnerLock::take(water_)));
        EXPECT_TRUE(std::filesystem::exists(place_)) << "whoever did not get it leaves it alone";
        EXPECT_FALSE(isLock(OwnerLock::take(water_)));
    }
    EXPECT_FALSE(std::filesystem::exists(place_));
    EXPECT_TRUE(isLock(OwnerLock::take(water_)));
}

TEST_F(ALock, GoesAlongWhenItIsMoved) {
    auto first = OwnerLock::take(water_);
    {
        const OwnerLock held = std::move(std::get<OwnerLock>(first));
        first = Owner();
        EXPECT_FALSE(isLock(OwnerLock::take(water_)));
    }
    EXPECT_TRUE(isLock(OwnerLock::take(water_)));
}

TEST_F(ALock, DiesWithTheProcessThatHasIt) {
    std::array<int, 2> ready{};
    ASSERT_EQ(pipe(ready.data()), 0);
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        const auto taken = OwnerLock::take(water_);
        const char answer = isLock(taken) ? 'y' : 'n';
        static_cast<void>(write(ready[1], &answer, 1));
        for (;;) {
            pause();
        }
    }
    char answer = 0;
    ASSERT_EQ(read(ready[0], &answer, 1), 1);
    EXPECT_EQ(answer, 'y');
    EXPECT_EQ(ownerOf(OwnerLock::take(water_)).process, child);
    ASSERT_EQ(kill(child, SIGKILL), 0);
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    EXPECT_TRUE(std::filesystem::exists(place_)) << "it had no time to tidy up";
    EXPECT_TRUE(isLock(OwnerLock::take(water_)));
    close(ready[0]);
    close(ready[1]);
}

TEST_F(ALock, IsNotKeptByWhatADeadOneLeftWhateverTheClockSays) {
    leave("program=meremark\nprocess=1\nhost=elsewhere\n");
    std::filesystem::last_write_time(place_, std::filesystem::file_time_type::clock::now() +
                                                 std::chrono::hours(24 * 400));
    const auto taken = OwnerLock::take(water_);
    ASSERT_TRUE(isLock(taken));
    EXPECT_EQ(ownerOf(OwnerLock::take(water_)).process, getpid()) << "not who had it before";
}

TEST_F(ALock, IsOneUnderEveryNameOfTheFile) {
    const auto link = folder_.path() / "link.gpkg";
    std::filesystem::create_symlink("mere.gpkg", link);
    EXPECT_EQ(OwnerLock::pathFor(link), place_);
    EXPECT_EQ(OwnerLock::pathFor(folder_.path() / "." / "mere.gpkg"), place_);
    const auto taken = OwnerLock::take(link);
    ASSERT_TRUE(isLock(taken));
    EXPECT_FALSE(isLock(OwnerLock::take(water_)));
}

TEST_F(ALock, SaysWhyThereIsNone) {
    const auto reasonWith = [this](OwnerLock::LockCall call) {
        const auto taken = OwnerLock::take(water_, call);
        const auto* reason = std::get_if<NoLock>(&taken);
        return reason == nullptr ? std::optional<NoLock>() : *reason;
    };
    EXPECT_EQ(reasonWith([](int, int) {
                  errno = ENOLCK;
                  return -1;
              }),
              NoLock::notOffered);
    EXPECT_EQ(reasonWith([](int, int) {
                  errno = EOPNOTSUPP;
                  return -1;
              }),
              NoLock::notOffered);
    EXPECT_EQ(reasonWith([](int, int) {
                  errno = EWOULDBLOCK;
                  return -1;
              }),
              std::nullopt)
        << "somebody has it";
    const auto nowhere = OwnerLock::take(folder_.path() / "no" / "mere.gpkg");
    EXPECT_EQ(std::get<NoLock>(nowhere), NoLock::notOffered);
}

TEST_F(ALock, IsAskedForAgainWhereASignalCameBetween) {
    static int asked = 0;
    asked = 0;
    const auto taken = OwnerLock::take(water_, [](int descriptor, int operation) {
        if (++asked < 3) {
            errno = EINTR;
            return -1;
        }
        return flock(descriptor, operation);
    });
    EXPECT_TRUE(isLock(taken));
    EXPECT_EQ(asked, 3);
}

TEST_F(ALock, IsTakenOnTheFileThatStandsThere) {
    // Between our opening the file and locking it, its owner takes it away and a third one comes.
    static std::filesystem::path place;
    static std::optional<OwnerLock::Taken> third;
    place = place_;
    third.reset();
    leave("");
    const auto second = OwnerLock::take(water_, [](int descriptor, int operation) {
        if (!third) {
            std::filesystem::remove(place);
            third = OwnerLock::take(place.parent_path() / "mere.gpkg");
        }
        return flock(descriptor, operation);
    });
    EXPECT_TRUE(isLock(*third));
    EXPECT_FALSE(isLock(second)) << "two have it";
    third.reset();
}

TEST_F(ALock, DoesNotTouchWhatIsNoFileOfItsOwn) {
    const auto diary = folder_.file("diary", "dear diary");
    std::filesystem::create_symlink(diary, place_);
    EXPECT_EQ(std::get<NoLock>(OwnerLock::take(water_)), NoLock::notOffered);
    EXPECT_EQ(ScratchFolder::textOf(diary), "dear diary");
    std::filesystem::remove(place_);
    std::filesystem::create_directory(place_);
    EXPECT_EQ(std::get<NoLock>(OwnerLock::take(water_)), NoLock::notOffered);
    std::filesystem::remove(place_);
    ASSERT_EQ(mkfifo(place_.c_str(), 0600), 0);
    EXPECT_EQ(std::get<NoLock>(OwnerLock::take(water_)), NoLock::notOffered);
    EXPECT_TRUE(std::filesystem::is_fifo(place_));
}

TEST_F(ALock, BelievesNoJunkAboutItsOwner) {
    const int other = open(place_.c_str(), O_RDWR | O_CREAT, 0600);
    ASSERT_GE(other, 0);
    ASSERT_EQ(flock(other, LOCK_EX), 0);
    leave("program=" + std::string(500, 'm') + "\x1b[2J\nprocess=1\nhost=a\tb\r\n");
    const Owner owner = ownerOf(OwnerLock::take(water_));
    EXPECT_EQ(owner.program, std::string(64, 'm'));
    EXPECT_EQ(owner.host, "ab");
    std::array<char, 256> host{};
    ASSERT_EQ(gethostname(host.data(), host.size() - 1), 0);
    const pid_t child = fork();
    if (child == 0) {
        _exit(0);
    }
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    for (const std::string& text :
         {std::string(), std::string(2000, 'x'), std::string("program=meremark\nprocess=soon\n"),
          "program=meremark\nprocess=" + std::to_string(child) + "\nhost=" + host.data() + "\n"}) {
        leave(text);
        EXPECT_EQ(ownerOf(OwnerLock::take(water_)), Owner()) << text;
    }
    leave("program=meremark\nprocess=1\nhost=" + std::string(host.data()) + "\n");
    EXPECT_EQ(ownerOf(OwnerLock::take(water_)).program, "meremark") << "process 1 always lives";
    close(other);
}

TEST_F(ALock, IsNotHadInAFolderThatIsClosedToUs) {
    std::filesystem::permissions(folder_.path(), std::filesystem::perms(0555));
    EXPECT_TRUE(support::holdsAsNobody([this] {
        const auto taken = OwnerLock::take(water_);
        const auto* reason = std::get_if<NoLock>(&taken);
        return reason != nullptr && *reason == NoLock::closedToUs;
    }));
}

TEST_F(ALock, IsHadOverTheLeftoverOfAnotherUser) {
    leave("program=meremark\nprocess=1\nhost=elsewhere\n");
    std::filesystem::permissions(folder_.path(), std::filesystem::perms(0777));
    std::filesystem::permissions(place_, std::filesystem::perms(0644));
    EXPECT_TRUE(support::holdsAsNobody([this] { return isLock(OwnerLock::take(water_)); }));
}

} // namespace
