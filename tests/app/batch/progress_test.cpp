// SPDX-License-Identifier: GPL-3.0-or-later
// What is told on a terminal, and how a job is stopped.
#include "app/batch/terminal_progress.h"

#include "tests/app/batch/batch_call.h"
#include "tests/app/batch/dish_files.h"

#include <csignal>
#include <thread>

#include <fcntl.h>
#include <stdlib.h> // posix_openpt is POSIX
#include <unistd.h>

namespace {

using batch_tests::call;
using batch_tests::Call;
using batch_tests::DishFolder;

/// Standard error led to a terminal of our own while it lives.
class TerminalForErrors {
public:
    TerminalForErrors() : master_(posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK)) {
        if (master_ >= 0 && grantpt(master_) == 0 && unlockpt(master_) == 0) {
            slave_ = open(ptsname(master_), O_RDWR | O_NOCTTY);
        }
        std::fflush(stderr);
        before_ = dup(STDERR_FILENO);
        if (slave_ >= 0) {
            dup2(slave_, STDERR_FILENO);
        }
    }
    ~TerminalForErrors() {
        dup2(before_, STDERR_FILENO);
        for (const int file : {before_, slave_, master_}) {
            close(file);
        }
    }
    TerminalForErrors(const TerminalForErrors&) = delete;
    TerminalForErrors& operator=(const TerminalForErrors&) = delete;

    [[nodiscard]] bool isThere() const { return slave_ >= 0; }
    /// What was written since the last look.
    [[nodiscard]] std::string seen() const {
        std::fflush(stderr);
        std::string text(4096, '\0');
        const auto size = read(master_, text.data(), text.size());
        text.resize(size > 0 ? static_cast<std::size_t>(size) : 0);
        return text;
    }

private:
    int master_ = -1;
    int slave_ = -1;
    int before_ = -1;
};

TEST(TerminalProgress, TellsOfAPartThatRunsForASecondNotMoreOftenThanEvery200Milliseconds) {
    const TerminalForErrors terminal;
    if (!terminal.isThere()) {
        GTEST_SKIP() << "no terminal can be had here";
    }
    using std::chrono::milliseconds;
    batch::TerminalProgress::Time now;
    {
        batch::TerminalProgress progress([&now] { return now; });
        progress.begin("Drawing");
        now += milliseconds(999);
        progress.tell(0.25);
        EXPECT_EQ(terminal.seen(), "") << "not a second yet";
        now += milliseconds(1);
        progress.tell(0.256);
        EXPECT_EQ(terminal.seen(), "\rDrawing:  26 %\033[K");
        now += milliseconds(199);
        progress.tell(0.5);
        EXPECT_EQ(terminal.seen(), "") << "told just before";
        now += milliseconds(1);
        progress.tell(1.0);
        EXPECT_EQ(terminal.seen(), "\rDrawing: 100 %\033[K");
        progress.begin("Writing");
        now += milliseconds(500);
        progress.tell(0.5);
        EXPECT_EQ(terminal.seen(), "") << "another part, another second";
    }
    EXPECT_EQ(terminal.seen(), "\r\033[K") << "the line is wiped";
    {
        const batch::TerminalProgress quiet([&now] { return now; });
    }
    EXPECT_EQ(terminal.seen(), "") << "there is nothing to wipe";
}

TEST(TerminalProgress, TellsNothingWhereStandardErrorIsAFile) {
    batch::TerminalProgress::Time now;
    testing::internal::CaptureStderr();
    {
        batch::TerminalProgress progress([&now] { return now; });
        progress.begin("Drawing");
        now += std::chrono::hours(1);
        progress.tell(0.5);
    }
    EXPECT_EQ(testing::internal::GetCapturedStderr(), "");
}

TEST(Stopping, IsAskedForByEitherSignalAndForgottenByTheNextJob) {
    for (const int signal : {SIGINT, SIGTERM}) {
        {
            const batch::TerminalProgress progress;
            EXPECT_FALSE(progress.stopAsked());
            std::raise(signal);
            EXPECT_TRUE(progress.stopAsked());
        }
        const batch::TerminalProgress next;
        EXPECT_FALSE(next.stopAsked());
    }
    std::signal(SIGINT, SIG_DFL);
    std::signal(SIGTERM, SIG_DFL);
}

TEST(Stopping, EndsWorkThatDoesNotAskWhetherItShould) {
    EXPECT_EXIT(
        {
            const batch::TerminalProgress progress;
            std::raise(SIGTERM);
            for (;;) {
                pause();
            }
        },
        testing::ExitedWithCode(6), "meremark-batch: stopped");
}

/// Somebody who asks to stop as soon as the verb listens, long before a drawing of 70 000 cells is
/// done.
TEST(Stopping, EndsWithItsOwnExitCodeAndLeavesNothingBehind) {
    const DishFolder folder;
    const auto before = folder.names();
    std::signal(SIGINT, SIG_DFL);
    std::thread user([] {
        struct sigaction now = {};
        while (sigaction(SIGINT, nullptr, &now) == 0 && now.sa_handler == SIG_DFL) {
            std::this_thread::yield();
        }
        kill(getpid(), SIGINT);
    });
    std::vector<std::string> words = folder.sketchWords();
    *(std::ranges::find(words, "--cell") + 1) = "1";
    const Call stopped = call(words);
    user.join();
    expectRefused(stopped, 6, {"stopped"});
    EXPECT_EQ(folder.names(), before);
    std::signal(SIGINT, SIG_DFL);
    std::signal(SIGTERM, SIG_DFL);
}

} // namespace
