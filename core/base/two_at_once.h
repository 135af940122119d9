// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <thread>

namespace base {

/// Does two things that know nothing of each other at the same time, and returns when both are
/// done. What they give is the same as one after the other. Neither may throw.
template <class First, class Second>
void twoAtOnce(const First& first, const Second& second) {
    const std::jthread helper(second);
    first();
}

} // namespace base
