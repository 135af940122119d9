// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace rules {

/// One fault of a list in tests/planted; tests/planted/README.md tells what each line means.
struct PlantedFault {
    std::string name;
    std::string file;
    std::string after; ///< Empty: the text is looked for in the whole file.
    std::string from;
    std::string to;
    std::string what;
    std::string noticedBy;
    std::string excuse; ///< Why nothing can notice it; empty for most.
};

/// The faults of a list, and the lines that are no part of one.
struct PlantedList {
    std::vector<PlantedFault> faults;
    std::vector<std::string> strangeLines;
};

[[nodiscard]] PlantedList plantedIn(std::string_view list);

/// What keeps the fault from being planted into a file of this content; empty where nothing does.
[[nodiscard]] std::string whyNotPlanted(const PlantedFault& fault, std::string_view content);

} // namespace rules
