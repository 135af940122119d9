// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace store {

/// What checking a water file found.
struct CheckReport {
    std::size_t surveyDays = 0;
    std::size_t soundings = 0;
    std::size_t stays = 0;
    std::size_t fish = 0; ///< Landed fish and lost runs.
    bool hasDrawing = false;
    /// One plain sentence each; none where the file is whole and agrees with itself.
    std::vector<std::string> faults;
    /// What a whole file may hold all the same and a later step would stop at, one sentence each:
    /// a shore that crosses itself, a plan that cannot be followed.
    std::vector<std::string> problems;

    [[nodiscard]] bool isWhole() const { return faults.empty(); }
};

} // namespace store
