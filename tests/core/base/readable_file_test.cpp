// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/readable_file.h"

#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

namespace {

using base::sizeOfReadableFile;
using support::ScratchFolder;

TEST(ReadableFile, TellsTheSizeAlsoThroughALink) {
    const ScratchFolder folder;
    const auto path = folder.file("a.txt", "seven b");
    std::filesystem::create_symlink(path, folder.path() / "link.txt");
    EXPECT_EQ(sizeOfReadableFile(path), 7U);
    EXPECT_EQ(sizeOfReadableFile(folder.path() / "link.txt"), 7U);
}

TEST(ReadableFile, IsNoLargerThanWhatIsReadAndTheLimitIsSaid) {
    const ScratchFolder folder;
    const auto path = folder.file("a.txt", "x");
    std::filesystem::resize_file(path, base::mostReadable);
    EXPECT_EQ(sizeOfReadableFile(path), base::mostReadable);
    std::filesystem::resize_file(path, base::mostReadable + 1); // takes no room: it is all hole
    const auto size = sizeOfReadableFile(path);
    ASSERT_FALSE(size);
    EXPECT_EQ(size.error().what, "the file has 1025 MiB, and at most 1024 MiB are read");
    EXPECT_FALSE(sizeOfReadableFile(path, base::mostReadable));
    EXPECT_TRUE(sizeOfReadableFile(path, base::mostReadable + 1));
}

TEST(ReadableFile, IsNoFolderPipeOrDeviceAndHasToBeThere) {
    const ScratchFolder folder;
    const auto pipe = folder.path() / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    const auto refused = [](const std::filesystem::path& path) {
        const auto size = sizeOfReadableFile(path);
        EXPECT_FALSE(size) << path;
        EXPECT_EQ(size.error().kind, base::ErrorKind::unusableInput);
        EXPECT_EQ(size.error().where, path.string());
        EXPECT_FALSE(size.error().whatToDo.empty());
        return size.error().what;
    };
    EXPECT_EQ(refused(pipe), "it is a pipe or a device and no file");
    EXPECT_EQ(refused("/dev/zero"), "it is a pipe or a device and no file");
    EXPECT_EQ(refused(folder.path()), "it is a folder");
    EXPECT_EQ(refused(folder.path() / "none"), "there is no such file");
}

} // namespace
