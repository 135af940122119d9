// SPDX-License-Identifier: GPL-3.0-or-later
// Locales with other decimal marks, digits and letters: what is stored and read never hangs on
// them.
#include "app/wording/tongue.h"
#include "app/wording/typed_amount.h"
#include "app/wording/words.h"
#include "core/base/number_text.h"

#include <clocale>

#include <gtest/gtest.h>

namespace {

using preferences::UnitSystem;
using wording::Words;

/// Qt's default and, where the machine has it, C's.
class Locales : public testing::TestWithParam<const char*> {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale(QString::fromLatin1(GetParam())));
        std::setlocale(LC_ALL, (std::string(GetParam()) + ".UTF-8").c_str());
    }
    void TearDown() override {
        std::setlocale(LC_ALL, "C");
        QLocale::setDefault(wording::Tongue::locale());
    }
};

} // namespace

TEST_P(Locales, DoNotChangeWhatIsWrittenAndRead) {
    for (const double value : {0.5, -1234.25, 55.20341, 1e-7}) {
        const std::string text = base::exactText(value);
        EXPECT_EQ(text.find(','), std::string::npos) << text;
        EXPECT_EQ(base::numberFrom(text), value);
    }
    EXPECT_EQ(base::fixedText(1234.5, 2), "1234.50");
    EXPECT_EQ(base::lowerCase("TITLE.GPX"), "title.gpx") << "an i keeps its dot";
}

TEST_P(Locales, DoNotChangeWhatEnglishSays) {
    const Words words;
    EXPECT_EQ(words.depth(units::Depth::metres(5.4)), "5.4 m");
    EXPECT_EQ(Words::count(41208), "41,208");
    using namespace std::chrono;
    EXPECT_EQ(Words::day(year{2026} / 11 / 27), "Fri 27 Nov 2026");
    EXPECT_EQ(Words::place({3.11272, 55.20341}), "55.20341 N  3.11272 E");
}

TEST_P(Locales, DoNotChangeWhatMayBeTyped) {
    EXPECT_NEAR(wording::lengthTyped("3.6 m", UnitSystem::metric)->inMetres(), 3.6, 1e-9);
    EXPECT_NEAR(wording::lengthTyped("3,6 m", UnitSystem::metric)->inMetres(), 3.6, 1e-9);
    EXPECT_NEAR(wording::lengthTyped("12 FT", UnitSystem::metric)->inMetres(), 3.6576, 1e-9);
    EXPECT_NEAR(wording::lengthTyped("31 IN", UnitSystem::metric)->inMetres(), 0.7874, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(Turkish, Locales, testing::Values("tr_TR"));
INSTANTIATE_TEST_SUITE_P(German, Locales, testing::Values("de_DE"));
INSTANTIATE_TEST_SUITE_P(Arabic, Locales, testing::Values("ar_EG"));
