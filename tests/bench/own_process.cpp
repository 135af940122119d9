// SPDX-License-Identifier: GPL-3.0-or-later
#include "own_process.h"

#include <chrono>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace bench {

Taken inOwnProcess(const std::function<int()>& work) {
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child == 0) {
        _exit(work());
    }
    Taken taken;
    int status = 0;
    rusage usage{};
    if (child < 0 || wait4(child, &status, 0, &usage) != child) {
        return taken;
    }
    taken.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    taken.most_MiB = static_cast<double>(usage.ru_maxrss) / 1024.0;
    taken.isDone = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    return taken;
}

} // namespace bench
