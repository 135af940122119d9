// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/terminal_progress.h"

#include "app/batch/exit_code.h"

#include <atomic>
#include <csignal>
#include <cstdio>
#include <string_view>
#include <utility>

#include <unistd.h>

namespace batch {

namespace {

constexpr unsigned patience_s = 1; ///< Jobs end within 0.3 s.

std::atomic<bool>& interrupted() {
    static std::atomic<bool> flag = false;
    return flag;
}

void onInterrupt(int /*signal*/) {
    interrupted() = true;
    alarm(patience_s);
}

/// The work did not end in time: a library is deep in something and does not ask. What is written
/// appears whole or not at all, so that nothing is half done.
void onAlarm(int /*signal*/) {
    constexpr std::string_view line = "meremark-batch: stopped\n";
    [[maybe_unused]] const auto written = write(STDERR_FILENO, line.data(), line.size());
    _exit(exitCodeOf(base::ErrorKind::cancelled));
}

} // namespace

TerminalProgress::TerminalProgress(std::function<Time()> now)
    : now_(std::move(now)), partBegan_(now_()), told_(partBegan_),
      isTerminal_(isatty(STDERR_FILENO) != 0) {
    interrupted() = false;
    std::signal(SIGINT, onInterrupt);
    std::signal(SIGTERM, onInterrupt);
    std::signal(SIGALRM, onAlarm);
}

TerminalProgress::~TerminalProgress() {
    alarm(0); // it ended by itself
    wipe();
}

void TerminalProgress::begin(std::string_view part) {
    const std::lock_guard lock(mutex_);
    part_ = std::string(part);
    partBegan_ = now_();
}

void TerminalProgress::tell(double share) {
    if (!isTerminal_) {
        return;
    }
    const std::lock_guard lock(mutex_);
    const Time now = now_();
    if (now - partBegan_ < std::chrono::seconds(1) ||
        now - told_ < std::chrono::milliseconds(200)) {
        return;
    }
    told_ = now;
    lineIsOpen_ = true;
    std::fprintf(stderr, "\r%s: %3.0f %%\033[K", part_.c_str(), 100.0 * share);
    std::fflush(stderr);
}

bool TerminalProgress::stopAsked() const {
    return interrupted();
}

void TerminalProgress::wipe() {
    if (lineIsOpen_) {
        std::fputs("\r\033[K", stderr);
        lineIsOpen_ = false;
    }
}

} // namespace batch
