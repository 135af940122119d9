// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/checks.h"

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

namespace rules {

namespace {

const std::string dep5 = ".reuse/dep5";

/// Debian's patterns: `*` for any run of characters, slashes among them, `?` for one.
bool matches(std::string_view pattern, std::string_view name) {
    if (pattern.empty()) {
        return name.empty();
    }
    if (pattern.front() == '*') {
        return matches(pattern.substr(1), name) ||
               (!name.empty() && matches(pattern, name.substr(1)));
    }
    return !name.empty() && (pattern.front() == '?' || pattern.front() == name.front()) &&
           matches(pattern.substr(1), name.substr(1));
}

/// The licence that a file names in its first three lines; empty where it names none.
std::string namedIn(const std::filesystem::path& path) {
    const std::string tag = std::string("SPDX-License-") + "Identifier: ";
    std::ifstream file(path);
    std::string line;
    for (int number = 0; number < 3 && std::getline(file, line); ++number) {
        if (const std::size_t at = line.find(tag); at != std::string::npos) {
            const std::size_t begin = at + tag.size();
            return line.substr(begin, line.find_first_of(" \r", begin) - begin);
        }
    }
    return {};
}

/// Where the words of a licence stand in the tree: the top level has room for one.
std::string textOf(const std::string& licence) {
    return licence == "GPL-3.0-or-later" ? "LICENSE" : "resources/install/" + licence + ".txt";
}

} // namespace

std::vector<Terms> termsIn(const std::string& text) {
    std::vector<Terms> all;
    std::vector<std::string> patterns;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        std::string key;
        words >> key;
        if (key == "Files:") {
            patterns.clear();
            for (std::string pattern; words >> pattern;) {
                patterns.push_back(pattern);
            }
        } else if (key == "License:") {
            std::string licence;
            words >> licence;
            for (const std::string& pattern : patterns) {
                all.push_back({pattern, licence});
            }
        }
    }
    return all;
}

void checkTerms(const std::filesystem::path& root, const std::vector<std::string>& files,
                std::vector<Breach>& breaches) {
    const std::vector<Terms> terms =
        termsIn(std::filesystem::exists(root / dep5) ? contentOf(root / dep5) : "");
    std::set<std::string> licences;
    for (const std::string& name : files) {
        // The last that fits counts, as everywhere in that format.
        const auto of = std::find_if(terms.rbegin(), terms.rend(), [&name](const Terms& each) {
            return matches(each.pattern, name);
        });
        const std::string named = namedIn(root / name);
        if (of == terms.rend()) {
            breaches.push_back({"licence", name, 0, dep5 + " says nothing of it"});
        } else if (!named.empty() && named != of->licence) {
            breaches.push_back({"licence", name, 0,
                                std::string("names ")
                                    .append(named)
                                    .append(", and ")
                                    .append(dep5)
                                    .append(" ")
                                    .append(of->licence)});
        } else {
            licences.insert(of->licence);
        }
    }
    for (const std::string& licence : licences) {
        if (!std::filesystem::exists(root / textOf(licence))) {
            breaches.push_back(
                {"licence", textOf(licence), 0, "the words of " + licence + " are missing"});
        }
    }
}

} // namespace rules
