// SPDX-License-Identifier: GPL-3.0-or-later
// Every reason for which a reader refuses a row is said in words at the desk.
#include "tests/rules/checks.h"

#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include <gtest/gtest.h>

namespace rules {

namespace {

const std::filesystem::path root = MEREMARK_SOURCE_DIR;

std::string textIn(const std::filesystem::path& file) {
    std::ostringstream text;
    text << std::ifstream(file).rdbuf();
    return text.str();
}

std::set<std::string> reasonsOfReaders() {
    static const std::regex refused(R"re(refuse\((?:\w+, )?"([a-z_]+)")re");
    std::set<std::string> reasons;
    for (const auto& entry : std::filesystem::directory_iterator(root / "core/readers")) {
        const std::string text = textIn(entry.path());
        for (std::sregex_iterator at(text.begin(), text.end(), refused), end; at != end; ++at) {
            reasons.insert((*at)[1]);
        }
    }
    return reasons;
}

TEST(RefusedWords, AreThereForEveryReasonOfEveryReader) {
    const std::string words = textIn(root / "app/wording/refused_words.cpp");
    EXPECT_GE(reasonsOfReaders().size(), 20U);
    for (const std::string& reason : reasonsOfReaders()) {
        EXPECT_NE(words.find("{\"" + reason + '"'), std::string::npos) << reason;
    }
}

} // namespace

} // namespace rules
