// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/owner.h"

#include <filesystem>
#include <variant>

#include <sys/file.h>

namespace store {

/// Why there is no lock although nobody else has it.
enum class NoLock {
    closedToUs, ///< The folder takes no file of ours; SQLite could not save there either.
    notOffered  ///< The file system has no such locks, or no room just now.
};

/// The right to write a water file, which one opening has at a time.
///
/// It is the system's lock (flock) on a small file beside the water, `.NAME.gpkg.owner`, that says
/// who has it. The system drops the lock with the process that took it, however that ends: what a
/// dead one leaves behind keeps nobody out, and no clock is asked. Not on the water file itself:
/// SQLite's own locks on that are dropped when any descriptor of it is closed.
class OwnerLock {
public:
    /// The lock; or who has it; or why there is none.
    using Taken = std::variant<OwnerLock, Owner, NoLock>;
    /// As flock(2): 0, or -1 with errno.
    using LockCall = int (*)(int descriptor, int operation);

    /// Does not wait. \param water need not be there yet; a link is followed to the file itself.
    [[nodiscard]] static Taken take(const std::filesystem::path& water, LockCall lock = ::flock);
    /// The small file that carries the lock of a water.
    [[nodiscard]] static std::filesystem::path pathFor(const std::filesystem::path& water);

    OwnerLock(OwnerLock&& other) noexcept;
    OwnerLock& operator=(OwnerLock&& other) noexcept;
    OwnerLock(const OwnerLock&) = delete;
    OwnerLock& operator=(const OwnerLock&) = delete;
    ~OwnerLock();

private:
    OwnerLock(std::filesystem::path place, int descriptor);

    std::filesystem::path place_;
    int descriptor_;
};

} // namespace store
