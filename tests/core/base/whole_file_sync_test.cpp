// SPDX-License-Identifier: GPL-3.0-or-later
// The order in which a whole file reaches the disk: its content before its name, its name before
// anybody is told that it is there. The system's own calls are stood in for here.
#include "core/base/whole_file.h"

#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <functional>
#include <utility>
#include <vector>

#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace {

/// What is done in the system's place while a test stands; nothing outside of one.
struct System {
    std::function<int(const std::string& file)> sync;
    std::function<int(const std::string& from, const std::string& to)> rename;
    std::function<ssize_t(int file, const void* bytes, std::size_t size)> write;
};

System* standsIn = nullptr;

std::string nameOf(int file) {
    std::array<char, 4096> name{};
    const ssize_t size =
        readlink(("/proc/self/fd/" + std::to_string(file)).c_str(), name.data(), name.size());
    return size < 0 ? std::string() : std::string(name.data(), static_cast<std::size_t>(size));
}

int refused(int why) {
    errno = why;
    return -1;
}

} // namespace

extern "C" {
int fsync(int file) {
    if (standsIn != nullptr && standsIn->sync) {
        return standsIn->sync(nameOf(file));
    }
    return static_cast<int>(syscall(SYS_fsync, file));
}
int rename(const char* from, const char* to) noexcept {
    if (standsIn != nullptr && standsIn->rename) {
        return standsIn->rename(from, to);
    }
    return renameat(AT_FDCWD, from, AT_FDCWD, to);
}
ssize_t write(int file, const void* bytes, std::size_t size) {
    if (standsIn != nullptr && standsIn->write) {
        return standsIn->write(file, bytes, size);
    }
    return syscall(SYS_write, file, bytes, size);
}
}

namespace {

using support::ScratchFolder;
using testing::ElementsAre;
using testing::HasSubstr;

class WholeFileOnTheDisk : public testing::Test {
protected:
    void SetUp() override {
        standsIn = &system_;
        system_.sync = [this](const std::string& file) {
            const bool isFolder = std::filesystem::is_directory(file);
            said_.push_back("sync " + shortName(file) +
                            (isFolder ? "" : ": " + ScratchFolder::textOf(file)));
            return 0;
        };
        system_.rename = [this](const std::string& from, const std::string& to) {
            said_.push_back("rename " + shortName(from) + " to " + shortName(to));
            return renameat(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str());
        };
    }
    void TearDown() override { standsIn = nullptr; }

    [[nodiscard]] std::string shortName(const std::filesystem::path& path) const {
        const auto real = std::filesystem::weakly_canonical(path);
        const std::string name = real.filename();
        return real == folder_.path()                 ? "folder"
               : name.ends_with(".part")              ? "part"
               : real.parent_path() == folder_.path() ? name
                                                      : real.string();
    }
    [[nodiscard]] std::vector<std::string> filesThere() const {
        std::vector<std::string> names;
        for (const auto& entry : std::filesystem::directory_iterator(folder_.path())) {
            names.push_back(entry.path().filename());
        }
        return names;
    }

    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.file("a.txt", "old");
    System system_;
    std::vector<std::string> said_;
};

TEST_F(WholeFileOnTheDisk, IsSyncedThenNamedThenItsFolderIsSynced) {
    ASSERT_TRUE(base::writeWholeFile(path_, "new").has_value());
    EXPECT_THAT(said_, ElementsAre("sync part: new", "rename part to a.txt", "sync folder"));
    EXPECT_EQ(ScratchFolder::textOf(path_), "new");
}

TEST_F(WholeFileOnTheDisk, SyncsTheFolderOfANameWithoutOne) {
    const auto before = std::filesystem::current_path();
    std::filesystem::current_path(folder_.path());
    const auto written = base::writeWholeFile("a.txt", "new");
    std::filesystem::current_path(before);
    ASSERT_TRUE(written.has_value());
    EXPECT_THAT(said_, ElementsAre("sync part: new", "rename part to a.txt", "sync folder"));
}

TEST_F(WholeFileOnTheDisk, LeavesTheOlderOneWhereItCannotBeSyncedOrNamed) {
    const auto fails = [&] {
        const auto written = base::writeWholeFile(path_, "new");
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
        EXPECT_EQ(written.error().where, path_.string());
        EXPECT_THAT(written.error().what, HasSubstr(std::strerror(EIO)));
        EXPECT_EQ(ScratchFolder::textOf(path_), "old");
        EXPECT_THAT(filesThere(), ElementsAre("a.txt"));
    };
    const auto rename =
        std::exchange(system_.rename, [](const auto&, const auto&) { return refused(EIO); });
    fails();
    system_.rename = rename;
    said_.clear();
    system_.sync = [](const std::string&) { return refused(EIO); };
    fails();
    EXPECT_THAT(said_, ElementsAre());
}

TEST_F(WholeFileOnTheDisk, StandsWhereTheFolderCannotBeSynced) {
    system_.sync = [](const std::string& file) {
        return std::filesystem::is_directory(file) ? refused(EINVAL) : 0;
    };
    EXPECT_TRUE(base::writeWholeFile(path_, "new").has_value());
    EXPECT_EQ(ScratchFolder::textOf(path_), "new");
    EXPECT_THAT(filesThere(), ElementsAre("a.txt"));
}

TEST_F(WholeFileOnTheDisk, IsWholeThoughTheDiskTakesItInBitsAndIsInterrupted) {
    int calls = 0;
    system_.write = [&](int file, const void* bytes, std::size_t size) -> ssize_t {
        return ++calls % 3 == 1 ? refused(EINTR)
                                : syscall(SYS_write, file, bytes, std::min<std::size_t>(size, 7));
    };
    const std::string content = "lon,lat,depth_m\n3.1,55.2,4.25\n3.2,55.1,6.5\n";
    ASSERT_TRUE(base::writeWholeFile(path_, content).has_value());
    EXPECT_EQ(ScratchFolder::textOf(path_), content);
    EXPECT_GT(calls, 8);
}

TEST_F(WholeFileOnTheDisk, SaysWhetherRoomIsMissingOrLeave) {
    for (const auto& [why, whatToDo] :
         {std::pair(ENOSPC, "make room on the disk, or choose another place"),
          std::pair(EDQUOT, "make room on the disk, or choose another place"),
          std::pair(EFBIG, "make room on the disk, or choose another place"),
          std::pair(EIO, "check that the folder is there and that you may write in it"),
          std::pair(EROFS, "check that the folder is there and that you may write in it")}) {
        system_.write = [why = why](int, const void*, std::size_t) { return refused(why); };
        const auto written = base::writeWholeFile(path_, "new");
        ASSERT_FALSE(written.has_value());
        EXPECT_EQ(written.error().whatToDo, whatToDo);
        EXPECT_EQ(written.error().what,
                  "the file cannot be written (" + std::string(std::strerror(why)) + ")");
        EXPECT_THAT(filesThere(), ElementsAre("a.txt"));
    }
}

TEST_F(WholeFileOnTheDisk, WaitsBesideUnderANameOfItsOwn) {
    const base::PendingFile first(path_);
    const base::PendingFile second(path_);
    EXPECT_NE(first.beside(), second.beside());
    EXPECT_EQ(first.beside().parent_path(), folder_.path());
    // Hidden, and no kind of file that anybody looks for.
    EXPECT_EQ(first.beside().filename().string().front(), '.');
    EXPECT_EQ(first.beside().extension(), ".part");
}

TEST_F(WholeFileOnTheDisk, LeavesNoFileOpen) {
    const auto openFiles = [] {
        return std::distance(std::filesystem::directory_iterator("/proc/self/fd"), {});
    };
    const auto before = openFiles();
    ASSERT_TRUE(base::writeWholeFile(path_, "new").has_value());
    EXPECT_EQ(openFiles(), before);
}

} // namespace
