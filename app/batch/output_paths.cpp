// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/output_paths.h"

#include <span>

namespace batch {

namespace fs = std::filesystem;
using base::Result;

namespace {

bool isFile(const NamedPath& named) {
    return !named.path.empty() && named.path != "-";
}

/// By device and number where both are there, else by the path without links.
bool isSameFile(const fs::path& a, const fs::path& b) {
    std::error_code fault;
    if (fs::equivalent(a, b, fault) && !fault) {
        return true;
    }
    const fs::path realA = fs::weakly_canonical(a, fault);
    const fs::path realB = fault ? fs::path() : fs::weakly_canonical(b, fault);
    return !fault && realA == realB;
}

Result<void> checkOne(const NamedPath& output, std::span<const NamedPath> others) {
    for (const NamedPath& other : others) {
        if (isFile(other) && isSameFile(output.path, other.path)) {
            return base::fail(base::ErrorKind::unwritableOutput,
                              output.name + " is the same file as " + other.name,
                              output.path.string(), "give another name for " + output.name);
        }
    }
    return {};
}

} // namespace

Result<void> checkOutputs(const std::vector<NamedPath>& outputs,
                          const std::vector<NamedPath>& inputs) {
    for (std::size_t i = 0; i < outputs.size(); ++i) {
        const NamedPath& output = outputs[i];
        if (!isFile(output)) {
            continue;
        }
        if (auto checked = checkOne(output, inputs); !checked) {
            return checked;
        }
        if (auto checked = checkOne(output, std::span(outputs).first(i)); !checked) {
            return checked;
        }
        std::error_code fault;
        const fs::file_status there = fs::status(output.path, fault);
        if (fs::exists(there) && !fs::is_regular_file(there)) {
            return base::fail(base::ErrorKind::unwritableOutput, "that is no regular file",
                              output.path.string(), "give another name for " + output.name);
        }
    }
    return {};
}

} // namespace batch
