// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <exception>
#include <new>
#include <string>

namespace base {

/// What `work` gives, a Result; an exception that comes out of it as an error: for the two ends of
/// the program, a thread and a command, beyond which an exception would end everything.
template <class Work>
[[nodiscard]] auto caught(const Work& work) -> decltype(work()) {
    try {
        return work();
    } catch (const std::bad_alloc&) {
        return fail(ErrorKind::unusableInput, "there is not enough memory for this", "",
                    "close other programs, or work with fewer and larger cells");
    } catch (const std::exception& exception) {
        return fail(ErrorKind::unusableInput,
                    std::string("something unforeseen went wrong: ") + exception.what(), "",
                    "try again; what was saved is kept");
    }
}

} // namespace base
