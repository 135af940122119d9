// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_file.h"

#include "core/base/disk.h"
#include "core/base/leftovers.h"
#include "tests/support/scratch_folder.h"

#include <fstream>

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <string>
#include <vector>

namespace {

using support::ScratchFolder;

std::ptrdiff_t filesIn(const std::filesystem::path& folder) {
    return std::distance(std::filesystem::directory_iterator(folder), {});
}

TEST(WholeFile, HoldsWhatWasWritten) {
    const ScratchFolder folder;
    const std::string content("a\0b\n", 4);
    ASSERT_TRUE(base::writeWholeFile(folder.path() / "a.txt", content).has_value());
    EXPECT_EQ(ScratchFolder::textOf(folder.path() / "a.txt"), content);
    EXPECT_EQ(filesIn(folder.path()), 1);
}

TEST(WholeFile, TakesThePlaceOfAnOlderOne) {
    const ScratchFolder folder;
    const auto path = folder.file("a.txt", "a much longer text than the new one");
    ASSERT_TRUE(base::writeWholeFile(path, "new").has_value());
    EXPECT_EQ(ScratchFolder::textOf(path), "new");
}

TEST(WholeFile, KeepsTheLinkThatLeadsToItAndTheModeOfTheOlderOne) {
    const ScratchFolder folder;
    const auto path = folder.file("a.txt", "old");
    std::filesystem::permissions(path, std::filesystem::perms(0640));
    std::filesystem::create_directory(folder.path() / "links");
    const auto link = folder.path() / "links" / "b.txt";
    std::filesystem::create_symlink("../a.txt", link);
    ASSERT_TRUE(base::writeWholeFile(link, "new").has_value());
    EXPECT_TRUE(std::filesystem::is_symlink(link));
    EXPECT_EQ(ScratchFolder::textOf(path), "new");
    EXPECT_EQ(std::filesystem::status(path).permissions(), std::filesystem::perms(0640));
    EXPECT_EQ(filesIn(folder.path() / "links"), 1);
}

/// A process that has been there and is no more.
pid_t goneProcess() {
    const pid_t child = ::fork();
    if (child == 0) {
        ::_exit(0);
    }
    ::waitpid(child, nullptr, 0);
    return child;
}

TEST(WholeFile, SweepsWhatAKilledRunHasLeftAndNothingElse) {
    const ScratchFolder folder;
    // "a.txt.1f0c22ab-4711-1.part" with another process in the middle.
    const std::string name = base::besideName(folder.path() / "a.txt").filename().string();
    const std::string here = std::to_string(::getpid());
    const auto of = [&](const std::string& machine, const std::string& process) {
        return ".a.txt." + machine + "-" + process + "-1.part";
    };
    const std::string machine = name.substr(7, 8);
    ASSERT_EQ(name.substr(0, 16 + here.size()), ".a.txt." + machine + "-" + here);
    const std::string gone = std::to_string(goneProcess());
    const auto hourAgo = std::filesystem::file_time_type::clock::now() - std::chrono::hours(2);
    const auto lay = [&](const std::string& file, bool isOld) {
        const auto path = folder.file(file, "half");
        if (isOld) {
            std::filesystem::last_write_time(path, hourAgo);
        }
        return path;
    };
    std::filesystem::create_directory(folder.path() /
                                      (".given." + machine + "-" + gone + "-9.part"));
    const std::vector left{lay(of(machine, gone), false),
                           lay(of(machine, gone) + "-journal", false),
                           lay("." + of(machine, gone) + ".owner", false),
                           lay(".b.gpkg." + machine + "-" + gone + "-7.part", false),
                           lay(of("00000000", here), true),
                           lay(".given." + machine + "-" + gone + "-9.part/log.csv", false)};
    const std::vector kept{lay(of(machine, here), true),
                           lay(of("00000000", gone), false),
                           lay(".a.txt." + machine + "-x-1.part", true),
                           lay(".a.txt." + machine + "-" + gone + "-1.par", true),
                           lay("a.txt." + machine + "-" + gone + "-1.part", true),
                           lay("a.txt.bak", true)};
    ASSERT_TRUE(base::writeWholeFile(folder.path() / "c.txt", "new"));
    for (const auto& path : left) {
        EXPECT_FALSE(std::filesystem::exists(path)) << path;
    }
    for (const auto& path : kept) {
        EXPECT_TRUE(std::filesystem::exists(path)) << path;
    }
}

TEST(WholeFile, IsWrittenWhereALinkLeadsThatHasNoFileYet) {
    const ScratchFolder folder;
    std::filesystem::create_directory(folder.path() / "real");
    std::filesystem::create_symlink("real/a.txt", folder.path() / "link");
    std::filesystem::create_symlink("round", folder.path() / "round");
    ASSERT_TRUE(base::writeWholeFile(folder.path() / "link", "new"));
    EXPECT_EQ(ScratchFolder::textOf(folder.path() / "real" / "a.txt"), "new");
    EXPECT_TRUE(std::filesystem::is_symlink(folder.path() / "link"));
    EXPECT_EQ(base::throughLinks(folder.path() / "round"), folder.path() / "round");
}

TEST(WholeFile, MayHaveANameAsLongAsTheDiskTakes) {
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / std::string(255, 'x');
    ASSERT_TRUE(base::writeWholeFile(path, "new"));
    EXPECT_EQ(ScratchFolder::textOf(path), "new");
}

TEST(WholeFile, SaysWhereItCannotBeWritten) {
    const ScratchFolder folder;
    const auto path = folder.path() / "no such folder" / "a.txt";
    const auto written = base::writeWholeFile(path, "new");
    ASSERT_FALSE(written.has_value());
    EXPECT_EQ(written.error().kind, base::ErrorKind::unwritableOutput);
    EXPECT_EQ(written.error().where, path.string());
    EXPECT_FALSE(written.error().whatToDo.empty());
}

TEST(WholeFile, LeavesTheOlderOneWhenTheDiskTakesNoMore) {
    const ScratchFolder folder;
    const auto path = folder.file("a.txt", "old");
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        // No file may grow beyond a few bytes: the kernel says so in the middle of the writing.
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{64, 64};
        setrlimit(RLIMIT_FSIZE, &limit);
        const auto written = base::writeWholeFile(path, std::string(100'000, 'x'));
        _exit(!written && written.error().kind == base::ErrorKind::unwritableOutput ? 0 : 1);
    }
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    EXPECT_EQ(WEXITSTATUS(status), 0);
    EXPECT_EQ(ScratchFolder::textOf(path), "old");
    EXPECT_EQ(filesIn(folder.path()), 1);
}

TEST(PendingFile, IsGoneWhenItIsNotPutInPlace) {
    const ScratchFolder folder;
    const auto path = folder.file("a.txt", "old");
    {
        const base::PendingFile pending(path);
        std::ofstream(pending.beside()) << "half";
        EXPECT_EQ(filesIn(folder.path()), 2);
    }
    EXPECT_EQ(filesIn(folder.path()), 1);
    EXPECT_EQ(ScratchFolder::textOf(path), "old");
}

} // namespace
