// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/whole_folder.h"

#include "core/base/whole_file.h"
#include "tests/support/power_cut.h"
#include "tests/support/scratch_folder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

namespace {

using base::PendingFolder;
using support::Files;
using support::filesIn;
using support::ScratchFolder;
using testing::HasSubstr;
namespace fs = std::filesystem;

const std::vector<std::string_view> names{"a.csv", "b.csv", "read-me.txt"};

/// Gives these files; `beforeIt` runs when all are written and none is in its place.
base::Result<void> give(
    const fs::path& to, const Files& files, const std::function<void()>& beforeIt = [] {}) {
    PendingFolder pending(to, names, "read-me.txt");
    if (auto begun = pending.begin(); !begun) {
        return begun;
    }
    for (const auto& [name, content] : files) {
        if (auto written = base::writeWholeFile(pending.beside() / name, content); !written) {
            return written;
        }
    }
    beforeIt();
    return pending.putInPlace();
}

const Files older{{"a.csv", "1"}, {"b.csv", "1"}, {"read-me.txt", "1"}};
const Files newer{{"a.csv", "2"}, {"read-me.txt", "2"}};

std::vector<std::string> entriesOf(const fs::path& folder) {
    std::vector<std::string> found;
    for (const auto& entry : fs::directory_iterator(folder)) {
        found.push_back(entry.path().filename());
    }
    return found;
}

TEST(PendingFolder, AppearsWholeWithTheFoldersAboveIt) {
    const ScratchFolder folder;
    const fs::path to = folder.path() / "x" / "y";
    ASSERT_TRUE(give(to, older, [&] { EXPECT_FALSE(fs::exists(to)); }));
    EXPECT_EQ(filesIn(to), older);
    EXPECT_EQ(entriesOf(folder.path() / "x").size(), 1U);
}

TEST(PendingFolder, TakesThePlaceOfAnOlderSetAtOnceAndLeavesNothingOfIt) {
    const ScratchFolder folder;
    const fs::path to = folder.path() / "given";
    ASSERT_TRUE(give(to, older));
    fs::permissions(to, fs::perms(0750));
    fs::permissions(to / "a.csv", fs::perms(0640));
    ASSERT_TRUE(give(to / "", newer, [&] { EXPECT_EQ(filesIn(to), older); }));
    EXPECT_EQ(filesIn(to), newer);
    EXPECT_EQ(fs::status(to).permissions(), fs::perms(0750));
    EXPECT_EQ(fs::status(to / "a.csv").permissions(), fs::perms(0640));
    EXPECT_EQ(entriesOf(folder.path()).size(), 1U);
}

TEST(PendingFolder, LeavesWhatElseIsInTheFolderAndAboveALink) {
    const ScratchFolder folder;
    const fs::path to = folder.path() / "given";
    ASSERT_TRUE(give(to, older));
    std::ofstream(to / "my letter.txt") << "dear";
    fs::create_directory(to / "photographs");
    fs::create_directory_symlink("given", folder.path() / "link");
    ASSERT_TRUE(give(folder.path() / "link", newer));
    Files all = newer;
    all["my letter.txt"] = "dear";
    EXPECT_EQ(filesIn(to), all);
    EXPECT_TRUE(fs::is_directory(to / "photographs"));
    EXPECT_TRUE(fs::is_symlink(folder.path() / "link"));
    EXPECT_EQ(entriesOf(to).size(), 4U);
}

TEST(PendingFolder, WhereSomebodyStandsIsNotTakenFromUnderHisFeet) {
    for (const bool isByItsName : {false, true}) {
        const ScratchFolder folder;
        const fs::path to = folder.path() / "given";
        ASSERT_TRUE(give(to, older));
        const fs::path before = fs::current_path();
        fs::current_path(to);
        const auto given = give(isByItsName ? to : fs::path("."), newer);
        const Files seen = filesIn(".");
        fs::current_path(before);
        ASSERT_TRUE(given) << given.error().sentence();
        EXPECT_EQ(seen, newer) << isByItsName;
    }
}

TEST(PendingFolder, IsAbsentOrAsBeforeWhereItIsNotPutInPlace) {
    const ScratchFolder folder;
    for (const bool hasOthers : {false, true}) {
        const fs::path to = folder.path() / "given";
        ASSERT_TRUE(give(to, older));
        if (hasOthers) {
            std::ofstream(to / "letter.txt") << "dear";
        }
        const Files before = filesIn(to);
        {
            PendingFolder pending(to, names, "read-me.txt");
            ASSERT_TRUE(pending.begin());
            ASSERT_TRUE(base::writeWholeFile(pending.beside() / "a.csv", "half"));
            PendingFolder deep(folder.path() / "x" / "y", names, "read-me.txt");
            ASSERT_TRUE(deep.begin());
        }
        EXPECT_EQ(filesIn(to), before);
        EXPECT_EQ(entriesOf(folder.path()), std::vector<std::string>{"given"});
    }
}

/// Killed when all is written: nothing is there of it, and the next run sweeps what is left.
TEST(PendingFolder, OfARunThatWasKilledIsSweptByTheNext) {
    const ScratchFolder folder;
    for (const bool hasOthers : {false, true}) {
        const fs::path to = folder.path() / "given";
        ASSERT_TRUE(give(to, older));
        if (hasOthers) {
            std::ofstream(to / "letter.txt") << "dear";
        }
        const Files before = filesIn(to);
        const pid_t child = ::fork();
        if (child == 0) {
            static_cast<void>(give(to, newer, [] { ::_exit(0); }));
        }
        ::waitpid(child, nullptr, 0);
        EXPECT_EQ(filesIn(to), before);
        const std::size_t all = entriesOf(to).size() + entriesOf(folder.path()).size();
        EXPECT_EQ(all, before.size() + 2U) << "the folder itself, and what was left";
        ASSERT_TRUE(give(to, newer));
        EXPECT_EQ(entriesOf(folder.path()), std::vector<std::string>{"given"});
        EXPECT_EQ(entriesOf(to).size(), hasOthers ? 3U : 2U);
    }
}

TEST(PendingFolder, RefusesAFileInItsPlaceAndWhatIsNoFileInIt) {
    const ScratchFolder folder;
    const auto inTheWay = folder.file("file", "x");
    const auto refused = [](const fs::path& to) {
        const auto given = give(to, newer);
        EXPECT_FALSE(given);
        EXPECT_EQ(given.error().kind, base::ErrorKind::unwritableOutput);
        return given.error();
    };
    EXPECT_EQ(refused(inTheWay).where, inTheWay.string());
    EXPECT_EQ(refused(inTheWay / "in it").what, "the folder cannot be made");
    const fs::path to = folder.path() / "given";
    fs::create_directory(to);
    fs::create_symlink(inTheWay, to / "a.csv");
    EXPECT_EQ(refused(to).where, (to / "a.csv").string());
    fs::remove(to / "a.csv");
    ASSERT_EQ(::mkfifo((to / "a.csv").c_str(), 0600), 0);
    EXPECT_THAT(refused(to).what, HasSubstr("no regular file"));
    EXPECT_EQ(ScratchFolder::textOf(inTheWay), "x");
}

} // namespace
