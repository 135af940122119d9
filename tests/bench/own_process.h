// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace bench {

/// What a piece of work took in a process of its own.
struct Taken {
    double seconds = 0.0;
    double most_MiB = 0.0; ///< Largest resident set.
    bool isDone = false;   ///< It ended with 0.
};

/// Runs `work` in a child process, so that its memory is its own and nothing is warm from the run
/// before. `work` returns the exit status; it may also replace the process by another program.
[[nodiscard]] Taken inOwnProcess(const std::function<int()>& work);

} // namespace bench
