// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace batch {

/// A file that a verb reads or writes, and what it is called: an option, or "the water".
struct NamedPath {
    std::string name;
    std::filesystem::path path; ///< Empty where it was not asked for; "-" is standard output.
};

/// Whether all outputs may be written: none is the same file as an input or as another output, by
/// whatever name or link, nor one that belongs to such a file (a water's journal and lock, the
/// tables of a shapefile); what stands there already is a regular file, and the folder is there. To
/// be asked before any work. \return unwritableOutput, which names the option.
[[nodiscard]] base::Result<void> checkOutputs(const std::vector<NamedPath>& outputs,
                                              const std::vector<NamedPath>& inputs);

} // namespace batch
