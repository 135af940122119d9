// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <exception>
#include <thread>

namespace base {

/// Does two things that know nothing of each other at the same time, and returns when both are
/// done. What they give is the same as one after the other; so is an exception, of the first where
/// both throw.
template <class First, class Second>
void twoAtOnce(const First& first, const Second& second) {
    std::exception_ptr thrown;
    {
        const std::jthread helper([&] {
            try {
                second();
            } catch (...) {
                thrown = std::current_exception();
            }
        });
        first();
    }
    if (thrown) {
        std::rethrow_exception(thrown);
    }
}

} // namespace base
