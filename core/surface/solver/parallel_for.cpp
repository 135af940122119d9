// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/parallel_for.h"

#include <algorithm>
#include <exception>
#include <thread>
#include <vector>

namespace surface::solver {

void parallelFor(int threads, std::size_t count, std::size_t leastEach,
                 const std::function<void(std::size_t, std::size_t)>& work) {
    const std::size_t parts =
        std::min(static_cast<std::size_t>(std::max(threads, 1)),
                 std::max<std::size_t>(count / std::max<std::size_t>(leastEach, 1), 1));
    if (parts <= 1) {
        work(0, count);
        return;
    }
    std::vector<std::exception_ptr> thrown(parts);
    {
        std::vector<std::jthread> helpers;
        for (std::size_t part = 1; part < parts; ++part) {
            helpers.emplace_back([&, part] {
                try {
                    work(part * count / parts, (part + 1) * count / parts);
                } catch (...) {
                    thrown[part] = std::current_exception();
                }
            });
        }
        work(0, count / parts);
    }
    for (const std::exception_ptr& each : thrown) {
        if (each) {
            std::rethrow_exception(each);
        }
    }
}

} // namespace surface::solver
