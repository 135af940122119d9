// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>

namespace surface::solver {

/// Calls `work(first, last)` for whole parts of 0..count, each number once, on at most `threads`
/// threads; at once on this one where count < `leastEach` x 2. The parts must not depend on one
/// another, so that the result is the same for any number of threads. What one of them throws is
/// thrown here, once all are done.
void parallelFor(int threads, std::size_t count, std::size_t leastEach,
                 const std::function<void(std::size_t, std::size_t)>& work);

} // namespace surface::solver
