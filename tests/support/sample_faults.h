// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/moment.h"
#include "tests/support/given.h"

#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <vector>

namespace support {

inline std::filesystem::path sampleFile(const std::string& name) {
    return std::filesystem::path(MEREMARK_SAMPLE_DIR) / name;
}

/// Day and instant of each fault, with its kind.
inline std::map<std::string, std::map<units::Moment, std::string>> sampleFaults() {
    std::map<std::string, std::map<units::Moment, std::string>> faults;
    std::ifstream file(sampleFile("expected/faults.csv"));
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::vector<std::string> cells(1);
        for (const char c : line) {
            if (c == ',') {
                cells.emplace_back();
            } else if (c != '\r') {
                cells.back().push_back(c);
            }
        }
        const auto time = units::momentFrom(cells.at(1), units::Clock());
        faults[cells.at(0)][given(time)] = cells.at(3);
    }
    return faults;
}

} // namespace support
