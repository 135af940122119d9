// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/checks.h"

#include <algorithm>
#include <array>
#include <regex>

namespace rules {

namespace {

/// Built from halves, so that this file does not hold the words it looks for.
std::regex leftOpenWords() {
    const std::string upper = std::string("TO") + "DO|FIX" + "ME|XX" + "X|HA" + "CK";
    const std::string lower = std::string("[Ss]tu") + "b(s|bed)?|[Nn]ot (yet )?imple" + "mented";
    return std::regex("\\b(" + upper + "|" + lower + ")\\b");
}

/// Folders of one machine or one person.
std::regex privatePlaces() {
    return std::regex(std::string("(^|[^A-Za-z0-9_.}])/(ho") + "me|wo" + "rk|ro" + "ot)/");
}

} // namespace

bool isText(std::string_view name) {
    constexpr std::array endings = {".h", ".cpp", ".cmake", ".sh", ".sql"};
    return name.ends_with("CMakeLists.txt") ||
           std::ranges::any_of(endings,
                               [name](std::string_view ending) { return name.ends_with(ending); });
}

File read(const std::filesystem::path& root, const std::string& name) {
    const std::filesystem::path path(name);
    File file;
    file.name = name;
    file.text = takeApart(contentOf(root / path));
    file.stem = path.stem().string();
    file.extension = path.extension().string();
    std::vector<std::string> folders;
    for (const auto& piece : path.parent_path()) {
        folders.push_back(piece.string());
    }
    file.part = folders.empty() ? "" : folders[0];
    file.folder = folders.size() < 2 ? "" : folders[1];
    return file;
}

void checkTopLevel(const std::string& name, std::vector<Breach>& breaches) {
    constexpr std::array allowed = {"CMakeLists.txt", "README.md",        "DEVELOPERS.md",
                                    "CHANGELOG.md",   "LICENSE",          "app",
                                    "core",           "resources",        "tests",
                                    "cmake",          "sample-survey",    ".ci",
                                    ".reuse",         "CMakePresets.json"};
    const std::string top = name.substr(0, name.find('/'));
    const bool isDotfile = top.starts_with('.') && top == name;
    if (!isDotfile && std::ranges::find(allowed, top) == allowed.end()) {
        breaches.push_back({"top level", name, 0, "'" + top + "' has no place at the top level"});
    }
}

void checkLicence(const File& file, std::vector<Breach>& breaches) {
    const std::string line = "SPDX-License-Identifier: GPL-3.0-or-later";
    const auto first = file.text.lines.begin();
    // In a script the first line belongs to the shell.
    const auto last =
        first + std::min<std::ptrdiff_t>(file.isCpp() ? 1 : 2, std::ssize(file.text.lines));
    const bool found =
        std::any_of(first, last, [&](const std::string& text) { return text.ends_with(line); });
    if (!found) {
        breaches.push_back({"licence", file.name, 1, "must begin with: " + line});
    }
}

void checkLeftOpen(const File& file, std::vector<Breach>& breaches) {
    static const std::regex words = leftOpenWords();
    static const std::regex places = privatePlaces();
    int number = 0;
    for (const std::string& line : file.text.lines) {
        ++number;
        std::smatch match;
        if (std::regex_search(line, match, words)) {
            breaches.push_back({"left open", file.name, number,
                                "'" + match[1].str() + "': finish it, or leave it out"});
        }
        if (std::regex_search(line, places)) {
            breaches.push_back({"left open", file.name, number, "names a folder of one machine"});
        }
    }
}

} // namespace rules
