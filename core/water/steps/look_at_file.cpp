// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/look_at_file.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

namespace water {

namespace {

constexpr std::size_t looked = 65536;

bool holds(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
}

template <std::size_t n>
bool holdsAny(std::string_view text, const std::array<std::string_view, n>& parts) {
    return std::ranges::any_of(parts, [text](std::string_view part) { return holds(text, part); });
}

/// The beginning in small letters, without a byte order mark and leading blanks.
std::string plain(std::string_view raw) {
    if (raw.starts_with("\xEF\xBB\xBF")) {
        raw.remove_prefix(3);
    }
    while (!raw.empty() && std::isspace(static_cast<unsigned char>(raw.front())) != 0) {
        raw.remove_prefix(1);
    }
    std::string text(raw);
    std::ranges::transform(text, text.begin(), [](unsigned char c) {
        return static_cast<char>(c < 128 ? std::tolower(c) : c);
    });
    return text;
}

FileContent contentOfJson(std::string_view text) {
    if (holdsAny<3>(text, {"\"rods_per_boat\"", "\"season\"", "\"closed_waters\""})) {
        return FileContent::houseRules;
    }
    if (holdsAny<2>(text, {"\"feature", "\"coordinates\""})) {
        return holdsAny<2>(text, {"polygon\"", "linestring\""}) ? FileContent::shoreline
                                                                : FileContent::soundings;
    }
    return FileContent::waterFacts;
}

FileContent contentOfMarkup(std::string_view text) {
    if (!holds(text, "<gpx")) {
        return holdsAny<2>(text, {"<polygon", "<linestring"}) ? FileContent::shoreline
                                                              : FileContent::soundings;
    }
    return holdsAny<2>(text, {"depth", "<ele>-"}) ? FileContent::soundings : FileContent::line;
}

/// The names in the first line of a table.
std::vector<std::string_view> headerOf(std::string_view text) {
    std::string_view line = text.substr(0, text.find_first_of("\r\n"));
    std::vector<std::string_view> names;
    while (true) {
        const std::size_t end = line.find_first_of(",;\t");
        std::string_view name = line.substr(0, end);
        while (!name.empty() && (name.front() == ' ' || name.front() == '"')) {
            name.remove_prefix(1);
        }
        while (!name.empty() && (name.back() == ' ' || name.back() == '"')) {
            name.remove_suffix(1);
        }
        names.push_back(name);
        if (end == std::string_view::npos) {
            return names;
        }
        line.remove_prefix(end + 1);
    }
}

FileContent contentOfTable(std::string_view text) {
    const auto names = headerOf(text);
    const auto has = [&names](std::string_view name) {
        return std::ranges::find(names, name) != names.end();
    };
    if (has("kind") && has("stay")) {
        return FileContent::log;
    }
    if (has("file") && (has("day") || has("water_level_m") || has("draft_m"))) {
        return FileContent::surveyDayFacts;
    }
    if (has("lon") && has("lat") && has("kind")) {
        return FileContent::weedNotes;
    }
    if (has("lon") && has("lat") && has("depth_m") && has("bottom")) {
        return FileContent::leadLine;
    }
    return FileContent::soundings;
}

/// The main file of a shapefile begins with 9994 and names its shape type at byte 32 (ESRI 1998).
bool isShapeOfLines(std::string_view raw) {
    if (!raw.starts_with(std::string_view("\x00\x00\x27\x0a", 4)) || raw.size() < 36) {
        return false;
    }
    const int type = static_cast<unsigned char>(raw[32]) % 10;
    return type == 3 || type == 5;
}

} // namespace

base::Result<FileContent> lookAtFile(const std::filesystem::path& path) {
    const std::string name = path.filename().string();
    std::error_code code;
    if (!std::filesystem::is_regular_file(path, code)) {
        return base::fail(base::ErrorKind::unusableInput, "there is no such file", name,
                          "choose another one");
    }
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        return base::fail(base::ErrorKind::unusableInput, "the file may not be read", name,
                          "allow reading it");
    }
    std::string raw(looked, '\0');
    file.read(raw.data(), static_cast<std::streamsize>(looked));
    raw.resize(static_cast<std::size_t>(file.gcount()));
    if (raw.empty()) {
        return base::fail(base::ErrorKind::unusableInput, "the file is empty", name,
                          "choose another one");
    }
    if (raw.starts_with(std::string_view("SQLite format 3\0", 16))) {
        return FileContent::waterFile;
    }
    if (isShapeOfLines(raw)) {
        return FileContent::shoreline;
    }
    const std::string text = plain(raw);
    if (text.starts_with('{')) {
        return contentOfJson(text);
    }
    return text.starts_with('<') ? contentOfMarkup(text) : contentOfTable(text);
}

} // namespace water
