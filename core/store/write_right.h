// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/store/owner_lock.h"

#include <filesystem>
#include <optional>

namespace store {

/// What a water file is opened for.
enum class Purpose {
    writing, ///< Alone, where nobody else has it for that.
    looking  ///< Keeps nobody from writing, and never writes.
};

/// Whether this opening of a water file may write it, and if not, why.
class WriteRight {
public:
    /// Asks for the lock where the purpose is writing.
    WriteRight(const std::filesystem::path& path, Purpose purpose);

    /// False where somebody else has the water, where its folder is closed to us, or where it was
    /// opened to be looked at. Without locks on its file system every opening may write: what it is
    /// based on is checked at each save.
    [[nodiscard]] bool isGranted() const { return refusal_ == Refusal::none; }
    /// Who had the water when we asked for it.
    [[nodiscard]] const std::optional<Owner>& owner() const { return owner_; }
    /// Gives it up, as the file may only be read.
    void giveUp();
    /// Gives it up, as a newer version of the program keeps the file.
    void leaveToNewer();

    /// To be asked before every save; looks for a lock again where there was none to be had.
    /// \return waterInUse, unwritableOutput.
    [[nodiscard]] base::Result<void> claim();

private:
    enum class Refusal { none, inUse, closedToUs, onlyLooking, newerVersion };
    void ask();

    std::filesystem::path path_;
    Refusal refusal_ = Refusal::none;
    std::optional<OwnerLock> lock_;
    std::optional<Owner> owner_;
};

/// That this one has the water.
[[nodiscard]] base::Error inUseBy(const Owner& owner, const std::filesystem::path& path);

} // namespace store
