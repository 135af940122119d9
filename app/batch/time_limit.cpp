// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/time_limit.h"

#include "app/batch/exit_code.h"

#include <cmath>
#include <csignal>
#include <string_view>

#include <unistd.h>

namespace batch {

namespace {

constexpr std::string_view tooLong =
    "meremark-batch: it took longer than --within allows; allow more, or leave the option out\n";

/// Nothing but what a signal may do at any moment: files that were being written keep their
/// temporary names, which the next run into the folder sweeps away.
void endNow(int /*signal*/) {
    static_cast<void>(!write(STDERR_FILENO, tooLong.data(), tooLong.size()));
    _exit(exitCodeOf(base::ErrorKind::cancelled));
}

} // namespace

TimeLimit::TimeLimit(double seconds) {
    if (seconds <= 0.0) {
        return;
    }
    // A signal of its own: the alarm belongs to who was asked to stop (TerminalProgress).
    std::signal(SIGRTMIN, endNow);
    sigevent event{};
    event.sigev_notify = SIGEV_SIGNAL;
    event.sigev_signo = SIGRTMIN;
    timer_t timer{};
    if (timer_create(CLOCK_MONOTONIC, &event, &timer) != 0) {
        return; // No system of ours has too few timers; the limit is a courtesy.
    }
    timer_ = timer;
    double whole = 0.0;
    const double rest = std::modf(seconds, &whole);
    itimerspec limit{};
    limit.it_value.tv_sec = static_cast<time_t>(whole);
    limit.it_value.tv_nsec = static_cast<long>(rest * 1e9);
    timer_settime(timer, 0, &limit, nullptr);
}

TimeLimit::~TimeLimit() {
    if (timer_) {
        timer_delete(*timer_);
    }
}

} // namespace batch
