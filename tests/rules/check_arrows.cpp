// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/checks.h"

#include <algorithm>
#include <array>

namespace rules {

namespace {

/// An include from the root, taken apart: core/units/depth.h.
struct Target {
    std::string part;
    std::string folder;
    std::string stem;
};

Target targetOf(const std::string& include) {
    const std::filesystem::path path(include);
    Target target;
    target.stem = path.stem().string();
    auto piece = path.begin();
    if (std::distance(path.begin(), path.end()) >= 2) {
        target.part = piece->string();
        ++piece;
        target.folder = std::next(piece) == path.end() ? "" : piece->string();
    }
    return target;
}

/// "water/steps" of core/water/steps/derive.h; empty for a file that lies in no room.
std::string roomOf(const std::string& name) {
    const std::filesystem::path inCore = std::filesystem::path(name).lexically_relative("core");
    const std::filesystem::path room = inCore.parent_path();
    return std::distance(room.begin(), room.end()) < 2 ? "" : room.generic_string();
}

/// Where core/water has rooms, each file lies in one, and includes only what that names.
std::string roomFault(const File& file, const std::string& include, const Layers& rooms) {
    const std::string here = roomOf(file.name);
    const std::string there = roomOf(include);
    const auto from = rooms.find(here);
    const bool isAllowed = here == there || !rooms.contains(there) ||
                           (from != rooms.end() && from->second.contains(there));
    return isAllowed ? std::string() : "core/CMakeLists.txt does not let " + here + " use " + there;
}

bool isMade(const std::string& include) {
    return include.ends_with(".moc") || include.starts_with("moc_") || include.starts_with("ui_");
}

/// What core folders the file may take verbs from, besides its own.
bool mayCallJobsOf(const File& file, const std::string& folder) {
    if (file.part == "core") {
        return file.folder == folder || file.folder == "water" ||
               (file.folder == "acts" && folder == "water");
    }
    return folder == "water" || folder == "acts" || folder == "store" || folder == "outputs";
}

std::string arrowFault(const File& file, const std::string& include, const Arrows& arrows) {
    const Target target = targetOf(include);
    if (target.part == "tests") {
        return "the program may not know its tests";
    }
    if (target.part == "app") {
        if (file.part == "core") {
            return "core may not know the window";
        }
        const auto from = arrows.app.find(file.folder);
        const bool isDeclared = arrows.app.contains(target.folder) && from != arrows.app.end();
        if (isDeclared && target.folder != file.folder &&
            !from->second.contains("app_" + target.folder)) {
            return "app/CMakeLists.txt does not let " + file.folder + " use app_" + target.folder;
        }
        return {};
    }
    if (file.part != "core") {
        return {};
    }
    if (target.folder == file.folder) {
        return roomFault(file, include, arrows.rooms);
    }
    const auto from = arrows.core.find(file.folder);
    if (from == arrows.core.end()) {
        return "core/CMakeLists.txt does not name the folder " + file.folder;
    }
    if (!from->second.contains(target.folder)) {
        return "core/CMakeLists.txt does not let " + file.folder + " use " + target.folder;
    }
    return {};
}

} // namespace

bool isVerb(std::string_view stem) {
    constexpr std::array verbs = {
        "read_",    "correct_", "set_aside_", "find_",   "tie_",    "draw_",    "check_",
        "measure_", "propose_", "trace_",     "map_",    "divide_", "reshape_", "count_",
        "shrink_",  "compare_", "place_",     "spread_", "rank_",   "order_",   "write_"};
    return std::ranges::any_of(verbs,
                               [stem](std::string_view verb) { return stem.starts_with(verb); });
}

void checkArrows(const File& file, const Arrows& arrows, std::vector<Breach>& breaches) {
    if (file.part != "core" && file.part != "app") {
        return;
    }
    const bool hasRooms = std::ranges::any_of(arrows.rooms, [&file](const auto& room) {
        return room.first.starts_with(file.folder + "/");
    });
    if (file.part == "core" && hasRooms && !arrows.rooms.contains(roomOf(file.name))) {
        breaches.push_back({"arrow", file.name, 0,
                            "core/" + file.folder + " has rooms, and this file lies in none"});
    }
    for (const Piece& include : file.text.quotedIncludes) {
        if (isMade(include.text)) {
            continue;
        }
        const Target target = targetOf(include.text);
        if (target.part != "core" && target.part != "app" && target.part != "tests") {
            breaches.push_back(
                {"arrow", file.name, include.line, include.text + ": include from the root"});
            continue;
        }
        if (const std::string fault = arrowFault(file, include.text, arrows); !fault.empty()) {
            breaches.push_back({"arrow", file.name, include.line, include.text + ": " + fault});
        }
        if (target.part == "core" && isVerb(target.stem) && !mayCallJobsOf(file, target.folder)) {
            breaches.push_back({"verb", file.name, include.line,
                                include.text + ": jobs of other folders are called by core/water "
                                               "alone, and its own by core/acts"});
        }
    }
}

} // namespace rules
