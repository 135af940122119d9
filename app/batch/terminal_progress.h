// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"

#include <chrono>
#include <functional>
#include <mutex>
#include <string>

namespace batch {

/// Tells on standard error, where that is a terminal, what runs once it has run for a second; stops
/// at Ctrl-C or when asked to terminate, after a second at the latest.
class TerminalProgress : public base::Progress {
public:
    using Time = std::chrono::steady_clock::time_point;
    /// \param now the time that passes.
    explicit TerminalProgress(std::function<Time()> now = std::chrono::steady_clock::now);
    ~TerminalProgress() override;

    void begin(std::string_view part) override;
    void tell(double share) override;
    [[nodiscard]] bool stopAsked() const override;

private:
    void wipe();

    std::mutex mutex_;
    std::function<Time()> now_;
    std::string part_;
    Time partBegan_;
    Time told_;
    bool isTerminal_ = false;
    bool lineIsOpen_ = false;
};

} // namespace batch
