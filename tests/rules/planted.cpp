// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/planted.h"

#include "tests/rules/source_text.h"

#include <array>
#include <utility>

namespace rules {

namespace {

/// Takes "key: value" into the member of that key. \return false for a line that is none.
bool take(PlantedFault& fault, std::string_view line) {
    const std::array<std::pair<std::string_view, std::string PlantedFault::*>, 7> keys{
        {{"file", &PlantedFault::file},
         {"after", &PlantedFault::after},
         {"from", &PlantedFault::from},
         {"to", &PlantedFault::to},
         {"what", &PlantedFault::what},
         {"noticed by", &PlantedFault::noticedBy},
         {"no fault", &PlantedFault::excuse}}};
    for (const auto& [key, member] : keys) {
        if (!line.starts_with(key) || line.substr(key.size(), 1) != ":") {
            continue;
        }
        line.remove_prefix(key.size() + 1);
        if (line.starts_with(' ')) {
            line.remove_prefix(1);
        }
        fault.*member = line;
        return true;
    }
    return false;
}

} // namespace

PlantedList plantedIn(std::string_view list) {
    PlantedList found;
    for (const std::string& line : linesOf(list)) {
        if (line.empty() || line.starts_with('#')) {
            continue;
        }
        if (line.starts_with('[') && line.ends_with(']')) {
            found.faults.push_back({.name = line.substr(1, line.size() - 2),
                                    .file = {},
                                    .after = {},
                                    .from = {},
                                    .to = {},
                                    .what = {},
                                    .noticedBy = {},
                                    .excuse = {}});
        } else if (found.faults.empty() || !take(found.faults.back(), line)) {
            found.strangeLines.push_back(line);
        }
    }
    return found;
}

std::string whyNotPlanted(const PlantedFault& fault, std::string_view content) {
    if (fault.from.empty() || fault.from == fault.to) {
        return "it changes nothing";
    }
    if (!fault.after.empty()) {
        const std::size_t start = content.find(fault.after);
        if (start == std::string_view::npos) {
            return "'" + fault.after + "' is not there";
        }
        content.remove_prefix(start);
    }
    const std::size_t first = content.find(fault.from);
    if (first == std::string_view::npos) {
        return "'" + fault.from + "' is not there";
    }
    if (fault.after.empty() &&
        content.find(fault.from, first + fault.from.size()) != std::string_view::npos) {
        return "'" + fault.from + "' stands more than once";
    }
    return {};
}

} // namespace rules
