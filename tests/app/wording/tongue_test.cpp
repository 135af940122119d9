// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/tongue.h"

#include "app/wording/core_sentences.h"
#include "app/wording/counted_words.h"
#include "app/wording/mid_sentence.h"
#include "app/wording/sayings.h"
#include "app/wording/section_words.h"
#include "app/wording/typed_amount.h"
#include "app/wording/words.h"
#include "app/wording/zone_words.h"

#include <gtest/gtest.h>

namespace {

using preferences::UnitSystem;
using wording::Tongue;
using wording::Words;

/// What the desk says in German; English again afterwards.
class German : public testing::Test {
protected:
    void SetUp() override {
        Tongue::speak(QStringLiteral("de"));
        ASSERT_EQ(Tongue::spoken(), QStringLiteral("de")) << "German is shipped";
    }
    void TearDown() override { Tongue::speak(QStringLiteral("en")); }
};

QString filled(QString text, const QStringList& gaps) {
    static const QRegularExpression gap(QStringLiteral("\\{(\\d*)(:[^}]*)?\\}"));
    qsizetype next = 0;
    for (auto match = gap.match(text); match.hasMatch(); match = gap.match(text)) {
        const qsizetype which = match.captured(1).isEmpty() ? next++ : match.captured(1).toInt();
        text.replace(match.capturedStart(), match.capturedLength(), gaps.at(which));
    }
    return text;
}

} // namespace

TEST(Tongue, IsWhatWasAskedForThenTheMachinesOwnThenEnglish) {
    EXPECT_EQ(Tongue::shipped().front(), "en");
    EXPECT_TRUE(Tongue::shipped().contains("de"));
    EXPECT_EQ(Tongue::best({}, {"de-AT", "en-GB"}), "de");
    EXPECT_EQ(Tongue::best("en", {"de-AT"}), "en");
    EXPECT_EQ(Tongue::best({}, {"tr-TR", "de_CH", "en"}), "de") << "the next best of the machine";
    EXPECT_EQ(Tongue::best({}, {"ar", "tr-TR"}), "en");
    EXPECT_EQ(Tongue::best("no-such", {}), "en");
    EXPECT_EQ(Tongue::ownName("de"), "Deutsch");
}

TEST(Tongue, SpeaksEnglishWhereTheLanguageIsNotShipped) {
    Tongue::speak("xx");
    EXPECT_EQ(Tongue::spoken(), "en");
    EXPECT_EQ(Tongue::tr("Survey day"), "Survey day");
}

TEST(Tongue, SetsMarksBetweenThousandsInEverySentence) {
    wording::Tongue::speak("en");
    EXPECT_EQ(QStringLiteral("%L1").arg(119648), "119,648");
    wording::Tongue::speak("de");
    EXPECT_EQ(QStringLiteral("%L1").arg(119648), "119.648");
    wording::Tongue::speak("en");
}

TEST(Tongue, CountsInEnglishWithoutAnyCatalogue) {
    EXPECT_EQ(wording::staysCounted(0), "0 stays");
    EXPECT_EQ(wording::staysCounted(1), "1 stay");
    EXPECT_EQ(wording::staysCounted(41208), "41,208 stays");
}

TEST(Tongue, LeavesWhatCoreSaysInEnglish) {
    EXPECT_EQ(Tongue::ofCore("no water is left at +2.50 m"), "no water is left at +2.50 m");
    const base::Error error{base::ErrorKind::unusableInput, "the file is empty", "a.csv",
                            "choose another"};
    EXPECT_EQ(Tongue::sentence(error).toStdString(), error.sentence());
}

TEST_F(German, SaysCountsWithItsOwnPlurals) {
    EXPECT_EQ(wording::staysCounted(1), "1 Ansitz");
    EXPECT_EQ(wording::staysCounted(0), "0 Ansitze");
    EXPECT_EQ(wording::soundingsCounted(41208), "41.208 Lotungen");
    EXPECT_EQ(wording::islandsCounted(0), "keine Insel");
}

TEST_F(German, WritesNumbersAndDatesAsGermansDo) {
    const Words words;
    EXPECT_EQ(words.depth(units::Depth::metres(5.4)), "5,4 m");
    EXPECT_EQ(words.depthRange(units::Depth::metres(4), units::Depth::metres(6.5)), "4 bis 6,5 m");
    EXPECT_EQ(words.levelChange(units::Length()), "±0,00 m");
    EXPECT_EQ(words.levelChange(units::Length::metres(-0.35)), "−0,35 m");
    EXPECT_EQ(Words::count(41208), "41.208");
    EXPECT_EQ(Words::windPoint(units::Bearing::degrees(135.0)), "SO");
    using namespace std::chrono;
    EXPECT_EQ(Words::day(year{2026} / 11 / 27), "Fr. 27. Nov. 2026");
}

TEST_F(German, KeepsPositionsAsEverybodyElseHasThem) {
    EXPECT_EQ(Words::place({3.11272, 55.20341}), "55.20341 N  3.11272 E");
}

TEST_F(German, TakesBackWhatItShows) {
    const Words words;
    for (const double metres : {0.0, 0.3, 3.6, 12.0, 28.9}) {
        const auto depth = units::Depth::metres(metres);
        const auto typed = wording::depthTyped(words.depth(depth), UnitSystem::metric);
        ASSERT_TRUE(typed) << metres;
        EXPECT_NEAR(typed->inMetres(), metres, 1e-9);
    }
    for (int degrees = 0; degrees < 360; degrees += 1) {
        const QString point = Words::windPoint(units::Bearing::degrees(degrees));
        const auto typed = wording::bearingTyped(point);
        ASSERT_TRUE(typed) << point.toStdString();
        EXPECT_EQ(Words::windPoint(*typed), point);
    }
    const auto edges = wording::depthsTyped(
        "2" + wording::depthsApart() + "4,5" + wording::depthsApart() + "6 m", UnitSystem::metric);
    ASSERT_TRUE(edges);
    ASSERT_EQ(edges->size(), 3U);
    EXPECT_DOUBLE_EQ((*edges)[1].inMetres(), 4.5);
}

TEST_F(German, TakesBackEveryDayItShows) {
    for (int month = 1; month <= 12; ++month) {
        const units::Day day{std::chrono::year(2025),
                             std::chrono::month(static_cast<unsigned>(month)),
                             std::chrono::day(20)};
        EXPECT_EQ(wording::dayTyped(Words::day(day)), day) << Words::day(day).toStdString();
    }
}

TEST(DaysTyped, AreReadAsTheyAreShownAndAsPeopleWriteThem) {
    const units::Day day{std::chrono::year(2025), std::chrono::month(8), std::chrono::day(9)};
    for (const QString& text :
         {Words::day(day), QStringLiteral("2025-08-09"), QStringLiteral("9.8.2025"),
          QStringLiteral("9. 8. 2025"), QStringLiteral("9/8/2025"), QStringLiteral(" 9 Aug 2025 "),
          QStringLiteral("9 August 2025")}) {
        EXPECT_EQ(wording::dayTyped(text), day) << text.toStdString();
    }
    for (const char* none : {"", "last summer", "31.2.2025", "8/20/2025", "9.8.25", "2025"}) {
        EXPECT_FALSE(wording::dayTyped(QString::fromLatin1(none))) << none;
    }
}

TEST_F(German, ReadsACommaBetweenDigitsAsTheDecimalMarkOfDepths) {
    const auto one = wording::depthsTyped("2,5", UnitSystem::metric);
    ASSERT_TRUE(one);
    ASSERT_EQ(one->size(), 1U) << "and not 2 and 5";
    EXPECT_DOUBLE_EQ(one->front().inMetres(), 2.5);
    EXPECT_EQ(wording::depthsTyped("2, 4, 6", UnitSystem::metric)->size(), 3U);
    EXPECT_EQ(wording::depthsTyped("2,5 4,5", UnitSystem::metric)->size(), 2U);
    EXPECT_FALSE(wording::depthsTyped("2,4,6", UnitSystem::metric)) << "could be read in two ways";
}

TEST_F(German, SaysALossThatWasMetMoreThanOnce) {
    EXPECT_EQ(
        Tongue::ofCore("a row of the table fish holds what it cannot hold, and so 3 times in all"),
        "eine Zeile der Tabelle fish enthält, was sie nicht enthalten kann, und das insgesamt "
        "3-mal");
}

TEST_F(German, SaysEverySentenceOfCoreGapsAndAll) {
    const auto core = wording::CoreSentences::read(":/translations/core_de.ts");
    ASSERT_GT(core.all().size(), 500U);
    for (const auto& sentence : core.all()) {
        const auto gaps = sentence.source.count('{');
        QStringList english;
        QStringList german;
        for (qsizetype i = 0; i < gaps; ++i) {
            english += QStringLiteral("%1.25").arg(i + 3);
            german += QStringLiteral("%1,25").arg(i + 3);
        }
        EXPECT_EQ(core.translated(filled(sentence.source, english)),
                  filled(sentence.translation, german))
            << sentence.source.toStdString();
    }
}

TEST_F(German, SaysASentenceWithinASentenceAndLeavesNamesAlone) {
    EXPECT_EQ(Tongue::ofCore("a stay cannot be learned from: an effort of 3.5 rod-hours"),
              "aus einem Ansitz lässt sich nicht lernen: ein Aufwand von 3,5 Rutenstunden");
    EXPECT_EQ(Tongue::ofCore("no beliefs are saved as 'windy autumn'"),
              "keine Annahmen sind als „windy autumn“ gespeichert");
    EXPECT_EQ(Tongue::ofCore("something core never says"), "something core never says");
    const base::Error error{base::ErrorKind::unusableInput, "the file is empty", "/tmp/a b.csv",
                            "copy it again from where it was recorded"};
    EXPECT_EQ(Tongue::sentence(error), "/tmp/a b.csv: die Datei ist leer; sie noch einmal vom "
                                       "Aufzeichnungsgerät kopieren");
}

TEST_F(German, CallsByTheirOwnNamesWhatTheUserNamed) {
    EXPECT_EQ(wording::nameCalled("Section 4"), "Abschnitt 4");
    EXPECT_EQ(wording::nameCalled("Section of reeds"), "Section of reeds");
    EXPECT_EQ(wording::rowCalled("day glow", water::ReviewBy::bait), "day glow");
    EXPECT_EQ(Tongue::ofCore("day glow"), "day glow") << "no day";
    EXPECT_EQ(Tongue::ofCore("day 4"), "Tag 4");
    EXPECT_EQ(wording::rowCalled("weed", water::ReviewBy::bait), "weed");
    EXPECT_EQ(wording::rowCalled("not noted", water::ReviewBy::bait), "nicht notiert");
    EXPECT_EQ(wording::rowCalled("weed edge", water::ReviewBy::zone), "Krautkante");
}

TEST_F(German, KeepsTheCapitalsOfNouns) {
    EXPECT_EQ(wording::midSentence("Bugleine"), "Bugleine");
    EXPECT_EQ(wording::spoken(structure::ZoneKind::hole), "Loch");
}

TEST(MidSentence, IsSmallInEnglish) {
    EXPECT_EQ(wording::midSentence("Bow rope"), "bow rope");
    EXPECT_EQ(wording::midSentence("INLET"), "inlet")
        << "with the dot, whatever the machine's locale";
}
