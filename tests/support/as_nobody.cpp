// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/as_nobody.h"

#include <sys/wait.h>
#include <unistd.h>

namespace support {

bool holdsAsNobody(const std::function<bool()>& claim) {
    const pid_t child = fork();
    if (child == 0) {
        constexpr uid_t nobody = 65534;
        const bool isUser = geteuid() != 0 || setuid(nobody) == 0;
        _exit(isUser && claim() ? 0 : 1);
    }
    int status = 1;
    return child > 0 && waitpid(child, &status, 0) == child && WIFEXITED(status) &&
           WEXITSTATUS(status) == 0;
}

} // namespace support
