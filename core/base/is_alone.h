// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <memory>

namespace base {

/// True where no other pointer holds what this one does; what was read through another, on another
/// thread, is done with then.
template <class T>
[[nodiscard]] bool isAlone(const std::shared_ptr<T>& pointer) {
    const bool isOnlyOne = pointer.use_count() == 1;
#ifdef __SANITIZE_THREAD__
    // It knows no fences. Counting up and down again asks as much of memory, at a higher price.
    static_cast<void>(std::shared_ptr<T>(pointer));
#else
    std::atomic_thread_fence(std::memory_order_acquire);
#endif
    return isOnlyOne;
}

} // namespace base
