// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/batch/command.h"

#include <algorithm>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace batch_tests {

/// What a call of meremark-batch gave.
struct Call {
    int exitCode = -1;
    std::string out;   ///< Standard output.
    std::string error; ///< Standard error.
    [[nodiscard]] nlohmann::json report() const { return nlohmann::json::parse(out); }
};

/// Calls a verb as the shell would, within this process: a run costs what its work costs.
inline Call call(std::vector<std::string> words) {
    words.insert(words.begin(), "meremark-batch");
    std::vector<char*> argv;
    for (std::string& word : words) {
        argv.push_back(word.data());
    }
    argv.push_back(nullptr);
    std::ostringstream out;
    std::ostringstream error;
    std::streambuf* const outBefore = std::cout.rdbuf(out.rdbuf());
    std::streambuf* const errorBefore = std::cerr.rdbuf(error.rdbuf());
    const int code = batch::runCommand(static_cast<int>(words.size()), argv.data());
    std::cout.rdbuf(outBefore);
    std::cerr.rdbuf(errorBefore);
    return {code, out.str(), error.str()};
}

/// Refused as the contract wants it: the exit code, nothing on standard output, and one line on
/// standard error that names what it is about and what to do.
inline void expectRefused(const Call& refused, int exitCode,
                          const std::vector<std::string>& named) {
    EXPECT_EQ(refused.exitCode, exitCode) << refused.error;
    EXPECT_EQ(refused.out, "");
    EXPECT_TRUE(refused.error.starts_with("meremark-batch: ")) << refused.error;
    EXPECT_EQ(std::ranges::count(refused.error, '\n'), 1) << refused.error;
    EXPECT_TRUE(refused.error.ends_with("\n")) << refused.error;
    for (const std::string& name : named) {
        EXPECT_NE(refused.error.find(name), std::string::npos)
            << "'" << name << "' is not in: " << refused.error;
    }
    EXPECT_NE(refused.error.find("; "), std::string::npos)
        << "what to do is missing in: " << refused.error;
}

} // namespace batch_tests
