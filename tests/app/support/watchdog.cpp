// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/support/watchdog.h"

#include <QMetaObject>

#include <algorithm>

namespace support {

namespace {

/// Between two questions: so short that nothing worth noticing falls between, so long that asking
/// costs nothing.
constexpr std::chrono::milliseconds pause{1};

} // namespace

Watchdog::Watchdog() : thread_([this](const std::stop_token& stop) { ask(stop); }) {}

Watchdog::~Watchdog() {
    thread_.request_stop();
    thread_.join();
}

void Watchdog::ask(const std::stop_token& stop) {
    while (!stop.stop_requested()) {
        {
            const std::lock_guard lock(mutex_);
            isWaiting_ = true;
            asked_ = Clock::now();
        }
        const auto answer = [this] {
            const std::lock_guard lock(mutex_);
            isWaiting_ = false;
            ++seen_.answers;
            seen_.longest = std::max(seen_.longest, Clock::now() - asked_);
            answered_.notify_all();
        };
        QMetaObject::invokeMethod(&answering_, answer, Qt::QueuedConnection);
        std::unique_lock lock(mutex_);
        answered_.wait(lock, stop, [this] { return !isWaiting_; });
        answered_.wait_for(lock, stop, pause, [] { return false; });
    }
}

Watchdog::Seen Watchdog::seen() const {
    const std::lock_guard lock(mutex_);
    Seen seen = seen_;
    if (isWaiting_) {
        seen.longest = std::max(seen.longest, Clock::now() - asked_);
    }
    return seen;
}

void Watchdog::reset() {
    const std::lock_guard lock(mutex_);
    seen_ = {};
    asked_ = std::max(asked_, Clock::now()); // what it waits for by now began before
}

} // namespace support
