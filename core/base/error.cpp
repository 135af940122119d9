// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

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
    for (char& c : line) { // Parts may quote a file; a terminal obeys control characters.
        if ((c >= 0 && c < ' ') || c == '\x7f') {
            c = ' ';
        }
    }
    return line;
}

Error cancelled() {
    return {ErrorKind::cancelled, "stopped before it was done", "",
            "nothing was changed; start it again when you like"};
}

} // namespace base
