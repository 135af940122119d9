// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"

#include <chrono>
#include <mutex>
#include <string>

namespace batch {

/// Tells on standard error, where that is a terminal, what runs once it has run for a second; stops
/// at Ctrl-C.
class TerminalProgress : public base::Progress {
public:
    TerminalProgress();
    ~TerminalProgress() override;

    void begin(std::string_view part) override;
    void tell(double share) override;
    [[nodiscard]] bool stopAsked() const override;

private:
    void wipe();

    std::mutex mutex_;
    std::string part_;
    std::chrono::steady_clock::time_point partBegan_;
    std::chrono::steady_clock::time_point told_;
    bool isTerminal_ = false;
    bool lineIsOpen_ = false;
};

} // namespace batch
