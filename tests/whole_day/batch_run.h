// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

namespace whole_day {

/// What a run of meremark-batch left behind.
struct BatchRun {
    int exitCode = -1;
    std::string out;   ///< Standard output.
    std::string error; ///< Standard error.
};

/// Runs meremark-batch with these arguments, as a user would.
[[nodiscard]] BatchRun runBatch(const std::vector<std::string>& arguments);

/// An empty folder of this name below the scratch folder of the build.
[[nodiscard]] std::filesystem::path freshFolder(const std::string& name);

/// Files of the sample survey and of the folder of open data.
[[nodiscard]] std::string sampleFile(const std::string& name);
[[nodiscard]] std::filesystem::path openData(const std::string& name);

[[nodiscard]] nlohmann::json readJson(const std::filesystem::path& path);
void writeText(const std::filesystem::path& path, const std::string& text);

} // namespace whole_day
