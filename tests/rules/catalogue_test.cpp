// SPDX-License-Identifier: GPL-3.0-or-later
// Every text of the desk can be translated, and every language that is shipped says all of them.
#include "tests/rules/breach.h"
#include "tests/rules/checks.h"
#include "tests/rules/said.h"

#include <algorithm>
#include <array>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rules {

namespace {

const std::filesystem::path root = MEREMARK_SOURCE_DIR;

/// What core writes into files for other programs, or nobody's language: titles of published work.
/// What stands there is English for good. Whole names of files, or of folders.
constexpr std::array notForTheDesk{
    "core/outputs/not_for_navigation.h", "core/outputs/write_b12.cpp",
    "core/outputs/write_geotiff.cpp",    "core/outputs/write_gpx.cpp",
    "core/store/geopackage.cpp",         "core/store/keep_drawing.cpp",
    "core/store/schema/step_",           "core/weed/growth_limit.cpp"};

/// Alone, with the reason.
constexpr std::array notAlone{
    "SQLite format 3", // what a file begins with
    "ESRI Shapefile",
    "MapInfo File",
    "GeoJSON CSB",                    // formats by their own names
    "numbers are copied as they lie", // said by the compiler
    "create table%",
    "create virtual table%", // SQL
    "{} {} depth {}",        // a row quoted as it was
    "{}{:.2f} ha {}",
    "{}{} x {} (first",   // one of a list; alone it is known
    "{} (damaged, {}){}", // the name of a file
    "not a water",
    "in use", // states, for reports of meremark-batch
    "species, keep",
    "species, least_length_mm", // places in a JSON file
    ": none may be kept",
    ": {} may be kept",
    ", none below {} mm", // kept in the water as a note
    "leastCrossings or longest_s",
    "near_m, threshold, floor_m", // settings by name
    "DejaVu Sans",
    "sans-serif",
    "Fusion",
    "Meremark",                                 // type, style, ourselves
    "the colours are missing from the program", // a program put together wrongly
    "shown",
    "hidden",
    "down",
    "steps", // keys of what is kept
    "\\A(",
    " ac-ft",
    "ac-ft",
    "mph"}; // a form; signs of units, the same everywhere

std::vector<File> sources(const std::string& part) {
    std::vector<File> files;
    for (const std::string& name : filesOfTree(root)) {
        if (name.starts_with(part + "/") && !name.starts_with("app/batch") &&
            name != "app/main.cpp" && name != "app/wording/tongue.cpp") {
            File file = read(root, name);
            if (file.isCpp()) {
                files.push_back(std::move(file));
            }
        }
    }
    return files;
}

std::vector<std::filesystem::path> catalogues(const std::string& start) {
    std::vector<std::filesystem::path> found;
    for (const auto& entry : std::filesystem::directory_iterator(root / "resources/translations")) {
        if (entry.path().filename().string().starts_with(start)) {
            found.push_back(entry.path());
        }
    }
    std::ranges::sort(found);
    return found;
}

/// A text with the one beside it, as catalogues tell them apart.
using Key = std::pair<std::string, std::string>;

std::set<Key> textsOfTheDesk() {
    std::set<Key> keys;
    for (const File& file : sources("app")) {
        for (const Said& said : saidIn(file.text)) {
            if (said.way == Said::Way::translated || said.way == Said::Way::counted) {
                keys.insert({said.text, said.one});
            }
        }
    }
    return keys;
}

bool isForTheDesk(const File& file, const Said& said) {
    const auto isIn = [&](const char* name) { return file.name.starts_with(name); };
    const auto isIt = [&](std::string_view text) { return said.text.starts_with(text); };
    return std::ranges::none_of(notForTheDesk, isIn) && std::ranges::none_of(notAlone, isIt);
}

/// What is said in plain words: by core, and by the desk in errors that it makes itself.
std::vector<std::pair<std::string, std::string>> plainProse() {
    std::vector<std::pair<std::string, std::string>> found;
    for (const char* part : {"core", "app"}) {
        for (const File& file : sources(part)) {
            for (const Said& said : saidIn(file.text)) {
                if (said.way == Said::Way::plain && isForTheDesk(file, said) &&
                    (isProse(said.text) || (file.part == "app" && isShownWord(said)))) {
                    found.emplace_back(said.text, file.name + ":" + std::to_string(said.line));
                }
            }
        }
    }
    return found;
}

std::string trimmed(std::string text) {
    const auto isBlank = [](char c) { return c == ' ' || c == '\n'; };
    while (!text.empty() && isBlank(text.back())) {
        text.pop_back();
    }
    text.erase(text.begin(), std::ranges::find_if_not(text, isBlank));
    return text;
}

} // namespace

TEST(Catalogues, AreThereForTheDeskAndForCore) {
    EXPECT_FALSE(catalogues("meremark_").empty());
    EXPECT_EQ(catalogues("meremark_").size(), catalogues("core_").size());
    EXPECT_GT(textsOfTheDesk().size(), 1000U);
    EXPECT_GT(plainProse().size(), 500U);
}

TEST(Catalogues, AreWholeAndKeepEveryGap) {
    for (const auto& file : catalogues("")) {
        std::set<Key> seen;
        for (const Message& message : messagesOf(contentOf(file))) {
            const std::string at = file.filename().string() + ": " + message.source;
            EXPECT_TRUE(message.isFinished) << at << " is not translated";
            EXPECT_TRUE(seen.insert({message.source, message.comment}).second) << at << " twice";
            const auto gaps = gapsOf(message.source);
            for (const std::string& form : message.forms) {
                EXPECT_FALSE(form.empty()) << at;
                auto own = gapsOf(form);
                const bool saysOneInWords = message.isCounted && gapsOf(message.comment) == own;
                EXPECT_TRUE(own == gaps || saysOneInWords) << at << " -> " << form;
                EXPECT_EQ(message.source.ends_with(' '), form.ends_with(' ')) << at;
            }
        }
    }
}

TEST(Catalogues, SayAllThatTheDeskSaysAndNothingElse) {
    const std::set<Key> said = textsOfTheDesk();
    for (const auto& file : catalogues("meremark_")) {
        std::set<Key> known;
        for (const Message& message : messagesOf(contentOf(file))) {
            known.insert({message.source, message.comment});
            EXPECT_TRUE(said.contains({message.source, message.comment}))
                << file.filename() << " translates what nobody says: " << message.source
                << "\nrun cmake/translate.sh";
        }
        for (const Key& key : said) {
            EXPECT_TRUE(known.contains(key))
                << file.filename() << " lacks: " << key.first << "\nrun cmake/translate.sh";
        }
    }
}

TEST(Catalogues, SayAllThatCoreSays) {
    for (const auto& file : catalogues("core_")) {
        std::string known;
        for (const Message& message : messagesOf(contentOf(file))) {
            known += message.source + '\n';
        }
        for (const auto& [text, where] : plainProse()) {
            EXPECT_NE(known.find(trimmed(text)), std::string::npos)
                << where << ": \"" << text << "\" is neither translated nor in " << file.filename()
                << ".\nIn the desk let Tongue::tr() say it; what core says gets a message there, "
                   "with {} for each gap.";
        }
    }
}

} // namespace rules
