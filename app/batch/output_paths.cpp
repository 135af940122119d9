// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/output_paths.h"

#include "core/base/disk.h"
#include "core/base/number_text.h"

#include <span>
#include <string_view>
#include <utility>

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
    const fs::path realA = fs::weakly_canonical(base::throughLinks(a), fault);
    const fs::path realB = fault ? fs::path() : fs::weakly_canonical(base::throughLinks(b), fault);
    return !fault && realA == realB;
}

/// What is read or written along with a file, under a name that is made from its own.
std::vector<fs::path> companionsOf(const fs::path& file) {
    const std::string kind = base::lowerCase(file.extension().string());
    std::vector<fs::path> beside;
    if (kind == ".gpkg") {
        for (const char* suffix : {"-journal", "-wal", "-shm"}) {
            beside.push_back(file.string() + suffix);
        }
        beside.push_back(file.parent_path() / ("." + file.filename().string() + ".owner"));
    }
    for (const auto& [main, others] :
         {std::pair<std::string_view, std::vector<const char*>>{
              ".shp", {".shx", ".dbf", ".prj", ".cpg", ".qix", ".sbn", ".sbx"}},
          {".tab", {".dat", ".map", ".id", ".ind"}},
          {".mif", {".mid"}}}) {
        for (const char* other : kind == main ? others : std::vector<const char*>()) {
            beside.push_back(fs::path(file).replace_extension(other));
        }
    }
    return beside;
}

Result<void> checkOne(const NamedPath& output, std::span<const NamedPath> others) {
    const auto refused = [&](const std::string& what) {
        return base::fail(base::ErrorKind::unwritableOutput, output.name + what,
                          output.path.string(), "give another name for " + output.name);
    };
    for (const NamedPath& other : others) {
        if (!isFile(other)) {
            continue;
        }
        if (isSameFile(output.path, other.path)) {
            return refused(" is the same file as " + other.name);
        }
        for (const fs::path& companion : companionsOf(other.path)) {
            if (isSameFile(output.path, companion)) {
                return refused(" is a file that belongs to " + other.name);
            }
        }
    }
    return {};
}

/// What stands there is a regular file, or nothing in a folder that is there.
Result<void> checkPlace(const NamedPath& output) {
    const fs::path real = base::throughLinks(output.path);
    std::error_code fault;
    const fs::file_status there = fs::status(real, fault);
    if (fs::exists(there) && !fs::is_regular_file(there)) {
        return base::fail(base::ErrorKind::unwritableOutput, "that is no regular file",
                          output.path.string(), "give another name for " + output.name);
    }
    const fs::path folder = real.parent_path();
    if (!real.has_filename() || !fs::is_directory(folder.empty() ? fs::path(".") : folder, fault)) {
        return base::fail(base::ErrorKind::unwritableOutput, "the folder is not there",
                          output.path.string(), "make it, or give another name for " + output.name);
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
        if (auto checked = checkPlace(output); !checked) {
            return checked;
        }
    }
    return {};
}

} // namespace batch
