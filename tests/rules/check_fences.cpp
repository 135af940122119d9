// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/checks.h"

#include <array>
#include <regex>

namespace rules {

namespace {

/// One foreign library and the one place that may know it.
struct Fence {
    const char* header;    ///< Pattern of its headers.
    const char* inside;    ///< Pattern of the files that may include them.
    const char* complaint; ///< Said to all others.
};

constexpr std::array fences = {
    Fence{"(Q[A-Z]|Qt|qt|q[a-z]+\\.h$).*", "(app|tests|sample-survey)/.*", "Qt belongs to app"},
    Fence{"(gdal|ogr|cpl_|vrtdataset|memdataset).*", "core/gdal/.*", "GDAL belongs to core/gdal"},
    Fence{"(proj|proj_.*|geodesic)\\.h", "core/geo/water_frame\\.cpp",
          "PROJ belongs to core/geo/water_frame.cpp"},
    Fence{"sqlite3.*", "core/store/.*", "SQLite belongs to core/store"},
    Fence{"(boost|fmt|CLI)/.*|nlohmann/json\\.hpp", ".*\\.cpp",
          "keep heavy headers out of headers"},
    Fence{"CLI/.*", "app/batch/.*", "options belong to app/batch"},
};

/// Words that are SQL and hardly anything else.
const std::regex& sqlWords() {
    static const std::regex words(
        R"(\b(SELECT|INSERT INTO|INSERT OR|REPLACE INTO|DELETE FROM|UPDATE \w+ SET|PRAGMA|)"
        R"((CREATE|create|DROP|drop|ALTER|alter) (TABLE|table|INDEX|index|VIEW|TRIGGER)|)"
        R"(insert into|delete from|select [\w*, ]+ from \w+ where)\b)");
    return words;
}

} // namespace

void checkFences(const File& file, std::vector<Breach>& breaches) {
    if (file.part != "core" && file.part != "app") {
        return;
    }
    const auto checkInclude = [&](const Piece& include) {
        for (const Fence& fence : fences) {
            if (std::regex_match(include.text, std::regex(fence.header)) &&
                !std::regex_match(file.name, std::regex(fence.inside))) {
                breaches.push_back(
                    {"fence", file.name, include.line, include.text + ": " + fence.complaint});
            }
        }
    };
    for (const Piece& include : file.text.angledIncludes) {
        checkInclude(include);
    }
    for (const Piece& include : file.text.quotedIncludes) {
        checkInclude(include);
    }
    if (file.part == "core" && file.folder == "store") {
        return;
    }
    for (const Piece& literal : file.text.literals) {
        std::smatch match;
        if (std::regex_search(literal.text, match, sqlWords())) {
            breaches.push_back({"fence", file.name, literal.line,
                                "'" + match[1].str() + "': SQL belongs to core/store"});
        }
    }
}

} // namespace rules
