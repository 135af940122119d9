// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace base {

/// A name in the folder of `wanted`, for what is to be put in its place once it is whole:
/// ".log.csv.1f0c22ab-4711-3.part". No other run of ours uses it; it tells the machine (and the
/// boot, and the container) and the process that it was given out by. Each call gives another one.
[[nodiscard]] std::filesystem::path besideName(const std::filesystem::path& wanted);

/// Removes what runs of ours that are no more have left in `folder` under such names, with all that
/// was laid beside it. What another machine may be at is left for an hour. A folder that is not
/// there, or closed to us, is none of its business.
void sweepLeftovers(const std::filesystem::path& folder);

} // namespace base
