// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace support {

/// Asks the thread that it was made in, again and again, and notes how long each answer takes: as
/// long as a key pressed at that moment would have waited. The thread answers from its event loop.
class Watchdog {
public:
    using Clock = std::chrono::steady_clock;

    /// What was seen since the watchdog was made, or since the last reset().
    struct Seen {
        int answers = 0;
        Clock::duration longest{0}; ///< That an answer took, or has been waited for by now.
    };

    Watchdog();
    ~Watchdog();
    Watchdog(const Watchdog&) = delete;
    Watchdog& operator=(const Watchdog&) = delete;
    Watchdog(Watchdog&&) = delete;
    Watchdog& operator=(Watchdog&&) = delete;

    [[nodiscard]] Seen seen() const;
    void reset();

private:
    void ask(const std::stop_token& stop);

    QObject answering_; ///< Lives in the watched thread.
    mutable std::mutex mutex_;
    std::condition_variable_any answered_;
    bool isWaiting_ = false;
    Clock::time_point asked_;
    Seen seen_;
    std::jthread thread_;
};

} // namespace support
