// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/failing_disk.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <map>
#include <span>
#include <string>

namespace support {

/// Files by their name without folder.
using Files = std::map<std::string, std::string>;

/// What is in a folder, without folders within it.
[[nodiscard]] Files filesIn(const std::filesystem::path& folder);
void layFiles(const Files& files, const std::filesystem::path& folder);

/// What becomes of the changes that were not synced when the power goes.
enum class Unsynced {
    lost,
    kept,
    some, ///< Each by chance: a disk may write in any order until it is told to sync.
    torn  ///< The same, and of what is written only the sectors that were under way.
};

/// The files that are left where the power goes after these changes: what was synced is there. A
/// file that is made is there once it has been synced (the journal's sync takes its folder along);
/// one that is removed is gone for good only where its folder was synced.
[[nodiscard]] Files afterPowerCut(Files before, std::span<const DiskChange> changes,
                                  Unsynced unsynced, std::uint64_t seed);

} // namespace support
