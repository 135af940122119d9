// SPDX-License-Identifier: GPL-3.0-or-later
// Every command that the guide shows is run as somebody would who follows it: in a copy of the
// sample's folder, from top to bottom.
#include "tests/whole_day/batch_run.h"

#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <sstream>

namespace {

using Words = std::vector<std::string>;
constexpr std::string_view indent = "    ";
constexpr std::string_view program = "meremark-batch";

/// The command lines of a chapter, each in its words. \param chapter below resources/guide.
std::vector<Words> commandsIn(const std::string& chapter) {
    std::ifstream file(std::filesystem::path(MEREMARK_GUIDE_DIR) / chapter);
    EXPECT_TRUE(file) << chapter;
    std::vector<Words> commands;
    for (std::string line; std::getline(file, line);) {
        if (!line.starts_with(std::string(indent) + std::string(program))) {
            continue;
        }
        std::istringstream text(line);
        Words words;
        for (std::string word; text >> word;) {
            words.push_back(word);
        }
        words.erase(words.begin());
        commands.push_back(words);
    }
    return commands;
}

std::string joined(const Words& words) {
    std::string line;
    for (const std::string& word : words) {
        line += ' ' + word;
    }
    return line;
}

/// Where commands run, as long as it lives.
class WorkingFolder {
public:
    explicit WorkingFolder(const std::filesystem::path& folder)
        : before_(std::filesystem::current_path()) {
        std::filesystem::current_path(folder);
    }
    ~WorkingFolder() { std::filesystem::current_path(before_); }
    WorkingFolder(const WorkingFolder&) = delete;
    WorkingFolder& operator=(const WorkingFolder&) = delete;
    WorkingFolder(WorkingFolder&&) = delete;
    WorkingFolder& operator=(WorkingFolder&&) = delete;

private:
    std::filesystem::path before_;
};

} // namespace

TEST(GuideCommands, AllDoWhatTheySay) {
    const auto folder = whole_day::freshFolder("guide");
    std::filesystem::copy(std::filesystem::path(MEREMARK_SAMPLE_DIR) / "files", folder,
                          std::filesystem::copy_options::recursive |
                              std::filesystem::copy_options::overwrite_existing);
    const WorkingFolder there(folder);
    const std::set<std::string> givesFiles{"--report", "--picture", "--sheet", "--gpx",   "--csv",
                                           "--grid",   "--out",     "--to",    "--rescue"};
    for (const Words& words : commandsIn("batch.md")) {
        const auto run = whole_day::runBatch(words);
        EXPECT_EQ(run.exitCode, 0) << joined(words) << '\n' << run.error;
        for (std::size_t i = 0; i + 1 < words.size(); ++i) {
            if (givesFiles.contains(words[i])) {
                EXPECT_TRUE(std::filesystem::exists(words[i + 1])) << joined(words);
            }
        }
    }
}

TEST(GuideCommands, ShowEveryVerb) {
    std::set<std::string> verbs;
    for (const Words& words : commandsIn("batch.md")) {
        verbs.insert(words.front());
    }
    for (const char* verb : {"sketch", "marks", "log", "review", "compare", "check", "give"}) {
        EXPECT_TRUE(verbs.contains(verb)) << verb;
    }
    // One that is new has to be shown too: the program's own list is asked.
    const auto help = whole_day::runBatch({"--help"});
    ASSERT_EQ(help.exitCode, 0);
    std::istringstream text(help.out);
    bool isListed = false;
    int listed = 0;
    for (std::string line; std::getline(text, line);) {
        if (isListed && line.starts_with("  ") && line.size() > 2 && line[2] != ' ') {
            const std::string verb = line.substr(2, line.find(' ', 2) - 2);
            EXPECT_TRUE(verbs.contains(verb)) << verb;
            ++listed;
        }
        isListed = isListed || line.starts_with("Subcommands:");
    }
    EXPECT_GE(listed, 7) << help.out;
}

TEST(GuideCommands, AreTheSameInEveryLanguage) {
    EXPECT_EQ(commandsIn("batch.md"), commandsIn("de/batch.md"));
    EXPECT_GE(commandsIn("batch.md").size(), 12U);
}
