// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <time.h>

namespace batch {

/// Ends this whole program once it has lived as long: with exit code 6 and one line on standard
/// error, whatever it is doing and however deep in whose code. For whoever shows files that
/// somebody sent and waits for none. One at a time; the kernel's clock counts (POSIX timer_create).
class TimeLimit {
public:
    /// \param seconds above 0; 0 sets no limit.
    explicit TimeLimit(double seconds);
    TimeLimit(const TimeLimit&) = delete;
    TimeLimit& operator=(const TimeLimit&) = delete;
    TimeLimit(TimeLimit&&) = delete;
    TimeLimit& operator=(TimeLimit&&) = delete;
    ~TimeLimit();
    [[nodiscard]] bool isSet() const { return timer_.has_value(); }

private:
    std::optional<timer_t> timer_;
};

} // namespace batch
