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

/// A run of meremark-batch that goes on by itself.
class StartedBatch {
public:
    explicit StartedBatch(const std::vector<std::string>& arguments);
    StartedBatch(const StartedBatch&) = delete;
    StartedBatch& operator=(const StartedBatch&) = delete;
    StartedBatch(StartedBatch&&) = delete;
    StartedBatch& operator=(StartedBatch&&) = delete;
    ~StartedBatch();

    /// What it has said on standard error so far.
    [[nodiscard]] std::string errorSoFar() const;
    [[nodiscard]] bool isRunning();
    /// Waits for its end.
    [[nodiscard]] BatchRun finish();
    [[nodiscard]] int process() const { return process_; }

private:
    void take(int status);

    std::string stem_;
    int process_ = -1;
    bool isOver_ = false;
    int exitCode_ = -1;
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
