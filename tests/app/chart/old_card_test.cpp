// SPDX-License-Identifier: GPL-3.0-or-later
// What is older than the water is marked as old, on top of all, and only then.
#include "app/chart/old_card.h"

#include "tests/app/support/recorded.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QImage>

namespace {

using chart::ChartContent;
using chart::ContentAge;
using chart::LayerKind;
using chart::oldWords;
using support::Recorded;

const QSize page(900, 640);

TEST(OldCard, SaysWhatIsOldAndWhetherItIsBeingMadeAnew) {
    const auto words = [](bool isMapOld, bool isPlanOld, bool isBeingMade, bool showsMarks) {
        return oldWords({isMapOld, isPlanOld, isBeingMade}, showsMarks).toStdString();
    };
    EXPECT_EQ(words(false, false, false, true), "");
    EXPECT_EQ(words(false, false, true, true), "");
    EXPECT_EQ(words(false, true, false, false), "") << "no marks, nothing to warn of";
    EXPECT_EQ(words(false, true, false, true), "Marks older than your last change");
    EXPECT_EQ(words(true, false, false, true), "Map older than your last change");
    EXPECT_EQ(words(true, true, false, false), "Map older than your last change");
    EXPECT_EQ(words(true, true, true, true),
              "Map and marks older than your last change: being worked out anew");
}

TEST(OldCard, SaysThatTheRestIsStillBeingRead) {
    ContentAge age;
    age.isBeingRead = true;
    EXPECT_EQ(oldWords(age, true).toStdString(), "Map as it was kept: the water is being read");
}

/// Where the words stand on a chart of the star of this age.
std::size_t cardsOn(const ContentAge& age, std::set<LayerKind> shown, const QString& words) {
    ChartContent content = support::starContent();
    content.age = age;
    content.shown = std::move(shown);
    Recorded drawn(page);
    support::paintOn(drawn, content, chart::wholeWater(content, page));
    return drawn.texts(words).size();
}

TEST(OldCard, StandsOnTheChartAsLongAsWhatIsShownIsOld) {
    const QString marks = "Marks older than your last change";
    const QString map = "Map older than your last change";
    EXPECT_EQ(cardsOn({}, {LayerKind::marks}, marks), 0U);
    EXPECT_EQ(cardsOn({false, true, false}, {LayerKind::marks}, marks), 1U);
    EXPECT_EQ(cardsOn({false, true, false}, {LayerKind::depth}, marks), 0U);
    EXPECT_EQ(cardsOn({true, false, false}, {LayerKind::depth}, map), 1U);
}

TEST(OldCard, OldMarksArePale) {
    const auto painted = [](bool isOld) {
        ChartContent content = support::starContent();
        content.age.isPlanOld = isOld;
        content.shown = {LayerKind::marks};
        QImage image(page, QImage::Format_RGB32);
        QPainter painter(&image);
        chart::paintChart(painter, chart::wholeWater(content, page), content);
        // Below the card, the strongest red there is.
        int strongest = 255;
        for (int y = 100; y < page.height(); ++y) {
            for (int x = 0; x < page.width(); ++x) {
                strongest = std::min(strongest, qGreen(image.pixel(x, y)));
            }
        }
        return strongest;
    };
    EXPECT_GT(painted(true), painted(false) + 60);
}

} // namespace
