// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

#include "core/base/harmless_text.h"

#include <algorithm>

namespace base {

std::string Error::sentence() const {
    std::string line;
    if (!where.empty()) {
        line += where + ": ";
    }
    line += what;
    if (!whatToDo.empty()) {
        line += "; " + whatToDo;
    }
    // Parts may quote a file; a terminal obeys control characters.
    line = harmless(line);
    std::ranges::replace_if(
        line, [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
    return line;
}

Error cancelled() {
    return {ErrorKind::cancelled, "stopped before it was done", "",
            "nothing was changed; start it again when you like"};
}

} // namespace base
