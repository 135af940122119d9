// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/said.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rules {

namespace {

using testing::ElementsAre;

std::vector<Said> of(const std::string& source) {
    return saidIn(takeApart(source));
}

} // namespace

TEST(SaidIn, TellsWhatIsTranslatedFromWhatIsNot) {
    const auto said = of("auto a = tr(\"one \" \"two\"); b = QStringLiteral(\"three four\");\n"
                         "c = wording::Tongue::tr(\"five\"); d = str(\"six\");\n"
                         "#include \"seven.h\"\n"
                         "e = QT_TRANSLATE_NOOP(\"wording\", \"eight\");\n");
    ASSERT_EQ(said.size(), 6U);
    EXPECT_EQ(said[0].text, "one two");
    EXPECT_EQ(said[0].way, Said::Way::translated);
    EXPECT_EQ(said[1].way, Said::Way::plain);
    EXPECT_EQ(said[2].way, Said::Way::translated);
    EXPECT_EQ(said[3].way, Said::Way::plain) << "str( is no tr(";
    EXPECT_EQ(said[4].text, "wording") << "the context of what follows";
    EXPECT_EQ(said[5].way, Said::Way::translated);
    EXPECT_EQ(said[5].line, 4);
}

TEST(SaidIn, KnowsBothFormsOfWhatIsCounted) {
    const auto said = of("Tongue::counted(\"%n \" \"days\",\n \"%n \" \"day\", n); tr(\"go\", \"by "
                         "boat\"); x ? \"a b\" : \"c\\nd\"");
    ASSERT_EQ(said.size(), 6U);
    EXPECT_EQ(said[0].way, Said::Way::counted);
    EXPECT_EQ(said[0].text, "%n days");
    EXPECT_EQ(said[0].one, "%n day");
    EXPECT_EQ(said[1].way, Said::Way::one);
    EXPECT_EQ(said[2].one, "by boat");
    EXPECT_EQ(said[5].text, "c\nd");
}

TEST(Prose, IsWordsWithABlankBetween) {
    for (const char* yes : {"the file is empty", "choose {}", "%1 days", "{} lies off", " and the ",
                            "Weed, thick", "look: a shoal", "survey day '"}) {
        EXPECT_TRUE(isProse(yes)) << yes;
    }
    for (const char* no :
         {"bad_checksum", "%1 (%2)", "{} x {}", "SELECT id FROM stays", "ddd", "<p>one two</p>",
          ":/desk/keys of.txt", "Area", "", "%1  %2", "d. M. yyyy", "ddd d MMM yyyy, HH:mm"}) {
        EXPECT_FALSE(isProse(no)) << no;
    }
}

TEST(ShownWord, IsOneThatIsMadeATextOfTheDesk) {
    EXPECT_TRUE(isShownWord(of("a = QStringLiteral(\"Area\");")[0]));
    EXPECT_FALSE(isShownWord(of("w->setObjectName(QStringLiteral(\"area\"));")[0]));
    EXPECT_FALSE(isShownWord(of("key = \"area\";")[0]));
    EXPECT_FALSE(isShownWord(of("a = QStringLiteral(\"m\");")[0]));
    EXPECT_FALSE(isShownWord(of("a = tr(\"Area\");")[0]));
}

TEST(Messages, AreReadWithFormsAndState) {
    const auto messages =
        messagesOf("<TS><context><name>x</name><message><source>a &lt; b</source><translation>c "
                   "&amp; d</translation></message>\n<message numerus=\"yes\"><source>%n "
                   "fish</source><comment>a fish</comment><translation>\n<numerusform>%n "
                   "Fisch</numerusform><numerusform>%n Fische</numerusform></translation>"
                   "</message><message><source>e</source><translation type=\"unfinished\">"
                   "</translation></message></context></TS>");
    ASSERT_EQ(messages.size(), 3U);
    EXPECT_EQ(messages[0].source, "a < b");
    EXPECT_THAT(messages[0].forms, ElementsAre("c & d"));
    EXPECT_TRUE(messages[1].isCounted);
    EXPECT_EQ(messages[1].comment, "a fish");
    EXPECT_THAT(messages[1].forms, ElementsAre("%n Fisch", "%n Fische"));
    EXPECT_FALSE(messages[2].isFinished);
}

TEST(Gaps, AreThePlacesThatATranslationHasToKeep) {
    EXPECT_THAT(gapsOf("%2 of %1, %L3 and %n"), ElementsAre("%1", "%2", "%L3", "%n"));
    EXPECT_EQ(gapsOf("{:.1f} m of {}"), gapsOf("{1} von {}"));
    EXPECT_NE(gapsOf("{} m"), gapsOf("m"));
}

} // namespace rules
