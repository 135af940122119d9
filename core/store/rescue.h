// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/store/check_report.h"

#include <filesystem>
#include <string>
#include <vector>

namespace store {

/// What could be read of a water file that is not whole.
struct Rescue {
    CheckReport held; ///< Of the new file: counts, and no faults.
    /// What could not, one plain sentence each; none where nothing was missed.
    std::vector<std::string> lost;
};

/// Reads table by table what can be read of a water file and lays it into a new one, which is
/// whole. The damaged file stays as it is, to the last byte. A sounding, stay or note that makes no
/// sense is left out and told; nothing is made up in its place. What is drawn and found is not
/// taken over: it is made again. \return unwritableOutput where there is something of the new name
/// or it cannot be written; damagedWater where nothing of a water can be read; unusableInput where
/// there is no such file; cancelled.
[[nodiscard]] base::Result<Rescue> rescue(const std::filesystem::path& damaged,
                                          const std::filesystem::path& to,
                                          base::Progress& progress);

} // namespace store
