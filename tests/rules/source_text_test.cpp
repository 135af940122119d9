// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/source_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rules {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> texts(const std::vector<Piece>& pieces) {
    std::vector<std::string> out;
    for (const Piece& piece : pieces) {
        out.push_back(piece.text);
    }
    return out;
}

} // namespace

TEST(SourceText, TellsLiteralsFromCommentsAndCode) {
    const SourceText text = takeApart("int a; // \"no\"\n/* \"nor\nthis\" */ f(\"yes\");\n");
    EXPECT_THAT(texts(text.literals), ElementsAre("yes"));
    EXPECT_EQ(text.literals.front().line, 3);
    EXPECT_THAT(text.code, ElementsAre("int a; ", "", " f(\"\");"));
}

TEST(SourceText, ReadsRawLiteralsWhole) {
    const SourceText text = takeApart("auto a = R\"x(one )\" // two\nthree)x\"; g(\"four\");");
    EXPECT_THAT(texts(text.literals), ElementsAre("one )\" // two\nthree", "four"));
    EXPECT_EQ(text.literals.back().line, 2);
}

TEST(SourceText, IsNotMisledByQuotesInsideLiteralsAndNumbers) {
    const SourceText text = takeApart(R"(f('"', "a \" b", 1'000, '\'', "c");)");
    EXPECT_THAT(texts(text.literals), ElementsAre("a \\\" b", "c"));
}

TEST(SourceText, SeesIncludesButNotThoseInComments) {
    const SourceText text = takeApart("// #include \"no.h\"\n#include \"core/a/b.h\"\n/*\n#include "
                                      "<no>\n*/\n  #  include <vector> // why\n");
    ASSERT_THAT(texts(text.quotedIncludes), ElementsAre("core/a/b.h"));
    ASSERT_THAT(texts(text.angledIncludes), ElementsAre("vector"));
    EXPECT_EQ(text.quotedIncludes[0].line, 2);
    EXPECT_EQ(text.angledIncludes[0].line, 6);
}

TEST(SourceText, BearsSourcesThatEndInTheMiddle) {
    for (const char* source :
         {"\"", "'", "/*", "//", "R\"", "R\"(", "R\"x(y", "\"\\", "#include \""}) {
        EXPECT_THAT(takeApart(source).quotedIncludes, IsEmpty()) << source;
    }
}

} // namespace rules
