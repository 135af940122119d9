// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet for the boat in German: all of it, and on no more paper.
#include "app/paper/day_sheet.h"
#include "app/wording/tongue.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

namespace {

using paper::SheetForm;
using wording::Tongue;

QStringList linesIn(const char* language, SheetForm form, int& pages) {
    Tongue::speak(language);
    support::RecordedPages paper;
    const auto painted =
        paper::paintDaySheet(paper, support::contentToRead(preferences::UnitSystem::metric), form);
    Tongue::speak("en");
    EXPECT_TRUE(painted);
    pages = painted.value_or(0);
    return paper.lines();
}

TEST(GermanSheet, LeavesNoEnglishWordButNames) {
    static const QRegularExpression english(
        "\\b(the|and|is|of|from|with|rope|depth|mark|caution|why|wear|tell)\\b",
        QRegularExpression::CaseInsensitiveOption);
    for (const SheetForm form : {SheetForm::oneSheet, SheetForm::withPictures}) {
        int pages = 0;
        const QStringList lines = linesIn("de", form, pages);
        ASSERT_GT(lines.size(), 20);
        for (QString line : lines) {
            line.remove("No engine within 50 m of the dam."); // the fishery's own words
            EXPECT_FALSE(english.match(line).hasMatch()) << line.toStdString();
        }
        EXPECT_TRUE(lines.join('\n').contains("Schwimmweste"));
        EXPECT_TRUE(lines.join('\n').contains("5,2 °C"));
    }
}

TEST(GermanSheet, TakesNoMorePaperThanTheEnglishOne) {
    for (const SheetForm form : {SheetForm::oneSheet, SheetForm::withPictures}) {
        int english = 0;
        int german = 0;
        (void)linesIn("en", form, english);
        (void)linesIn("de", form, german);
        EXPECT_GT(german, 0);
        EXPECT_LE(german, english + (form == SheetForm::oneSheet ? 0 : 1));
    }
}

} // namespace
