// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/rules/breach.h"
#include "tests/rules/layers.h"
#include "tests/rules/source_text.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace rules {

/// One file of the tree: what its name says and what it holds.
struct File {
    std::string name; ///< core/units/depth.h
    SourceText text;
    std::string part;      ///< core, app, tests; empty at the top level
    std::string folder;    ///< units; empty where the file lies directly in its part
    std::string stem;      ///< depth
    std::string extension; ///< .h

    [[nodiscard]] bool isHeader() const { return extension == ".h"; }
    [[nodiscard]] bool isCpp() const { return isHeader() || extension == ".cpp"; }
};

[[nodiscard]] File read(const std::filesystem::path& root, const std::string& name);

/// Sources, build descriptions and scripts: what people write and what the rules read.
[[nodiscard]] bool isText(std::string_view name);

/// True for a file of core that holds a job, not a value: its name begins with a verb of the list
/// in DEVELOPERS.md.
[[nodiscard]] bool isVerb(std::string_view stem);

struct Arrows {
    Layers core;
    Layers app;
    Layers rooms; ///< Of folders of core: "water/steps".
};

/// What .reuse/dep5 says of the files of a pattern.
struct Terms {
    std::string pattern;
    std::string licence; ///< SPDX identifier.
};

[[nodiscard]] std::vector<Terms> termsIn(const std::string& text);

/// Every file has terms in .reuse/dep5, names no others itself, and their words lie in the tree.
/// Appends what it finds, as each of those below.
void checkTerms(const std::filesystem::path& root, const std::vector<std::string>& files,
                std::vector<Breach>& breaches);
void checkTopLevel(const std::string& name, std::vector<Breach>& breaches);
void checkLicence(const File& file, std::vector<Breach>& breaches);
void checkLeftOpen(const File& file, std::vector<Breach>& breaches);
void checkArrows(const File& file, const Arrows& arrows, std::vector<Breach>& breaches);
void checkFences(const File& file, std::vector<Breach>& breaches);
void checkSaid(const File& file, std::vector<Breach>& breaches);
void checkShape(const File& file, std::vector<Breach>& breaches);

} // namespace rules
