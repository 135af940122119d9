// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/lie_words.h"

#include "app/wording/planned_words.h"
#include "app/wording/reasons.h"

#include <gtest/gtest.h>

namespace {

using units::Bearing;
using units::Depth;
using units::Length;
using wording::Words;

const Words metric;

marks::Mark markBetweenTwo() {
    marks::Mark mark;
    mark.anchors.lie.heading = Bearing::degrees(300.0);
    mark.anchors.bow = {{}, Depth::metres(6.2), Length::metres(20.4), 3.0, true};
    mark.anchors.stern = anchoring::Anchor{{}, Depth::metres(4.8), Length::metres(8.2), 1.5};
    mark.anchors.fallBackRope = Length::metres(31.0);
    rods::RodPlace rod;
    rod.bearing = Bearing::degrees(45.0);
    rod.distance = Length::metres(22.0);
    rod.depth = Depth::metres(6.1);
    rod.stopKnot = Depth::metres(6.4);
    mark.spread.rods = {rod};
    return mark;
}

marks::Mark markAtOne(double toEachSide_deg) {
    marks::Mark mark = markBetweenTwo();
    mark.anchors.stern.reset();
    mark.anchors.bow.isByHand = false;
    mark.anchors.swing = anchoring::Swing{Length::metres(24.0), toEachSide_deg};
    return mark;
}

TEST(LieWords, SayHowToComeToLie) {
    EXPECT_EQ(wording::howToLie(markBetweenTwo(), metric),
              QStringLiteral("Heading %1. Bow down, fall back on %2, stern down, haul the bow rope "
                             "in to %3.")
                  .arg(Words::bearing(Bearing::degrees(300.0)), metric.length(Length::metres(31.0)),
                       metric.length(Length::metres(20.4))));
    EXPECT_EQ(
        wording::howToLie(markAtOne(30.0), metric),
        QStringLiteral("Heading %1. Bow down, %2 of rope. She swings within 24.0 m of the "
                       "anchor; baits are laid for 30° to either side.")
            .arg(Words::bearing(Bearing::degrees(300.0)), metric.length(Length::metres(20.4))));
    EXPECT_EQ(wording::swingOf(markAtOne(180.0), metric),
              "She swings within 24.0 m of the anchor, to any side: nobody knows to which, and no "
              "bait is sure.");
    EXPECT_EQ(wording::swingOf(markBetweenTwo(), metric), "");
}

TEST(LieWords, NameWhatIsLaidByHand) {
    marks::Mark mark = markBetweenTwo();
    EXPECT_EQ(wording::laidByHand(mark), "bow anchor laid by hand");
    mark.anchors.stern->isByHand = true;
    mark.spread.rods[0].isByHand = true;
    EXPECT_EQ(wording::laidByHand(mark), "bow anchor, stern anchor, baits laid by hand");
    EXPECT_EQ(wording::laidByHand(markAtOne(30.0)), "");
}

TEST(LieWords, OfAWaypointAreItsCautionsItsWindItsRopesAndItsRods) {
    marks::Mark mark = markBetweenTwo();
    mark.cautions = {marks::GuessedHere{}};
    mark.anchors.cautions = {anchoring::TooSteep{anchoring::LiePart::bowAnchor, 1.5, 2.0}};
    marks::DayStop stop;
    stop.wind = {Bearing::degrees(240.0), units::Speed::metresPerSecond(5.0)};
    const auto told = wording::told({});
    const QString text = QString::fromStdString(told.lieOf(mark, &stop));
    const QStringList lines = text.split('\n');
    ASSERT_EQ(lines.size(), 7);
    EXPECT_EQ(lines[0], "Caution: The depth here is a guess: sound it before you anchor.");
    EXPECT_TRUE(lines[1].startsWith("Caution: Laid by hand: the bow anchor is too near to hold"));
    EXPECT_EQ(lines[2], "Laid for wind " + metric.wind(stop.wind));
    EXPECT_EQ(lines[3], wording::howToLie(mark, metric));
    EXPECT_EQ(lines[4],
              QStringLiteral("bow anchor in %1, rope %2, laid by hand")
                  .arg(metric.depth(Depth::metres(6.2)), metric.length(Length::metres(20.4))));
    EXPECT_EQ(lines[5],
              QStringLiteral("stern anchor in %1, rope %2")
                  .arg(metric.depth(Depth::metres(4.8)), metric.length(Length::metres(8.2))));
    EXPECT_EQ(lines[6],
              QStringLiteral("rod 1: %1, %2, in %3, stop knot %4")
                  .arg(Words::bearing(Bearing::degrees(45.0)), metric.length(Length::metres(22.0)),
                       metric.depth(Depth::metres(6.1)), metric.depth(Depth::metres(6.4))));
    EXPECT_FALSE(QString::fromStdString(told.lieOf(mark, nullptr)).contains("Laid for wind"));
}

TEST(WindsOfStops, AreALineForEachRunOfStopsInOneWindAndNoneOnADayOfOne) {
    water::PlannedDay day;
    const logbook::Wind first{Bearing::degrees(225.0), units::Speed::metresPerSecond(4.0)};
    const logbook::Wind later{Bearing::degrees(300.0), units::Speed::metresPerSecond(7.0)};
    for (const auto& [rank, wind] :
         {std::pair(3, first), std::pair(1, first), std::pair(2, later)}) {
        marks::DayStop stop;
        stop.rank = rank;
        stop.wind = wind;
        day.day.stops.push_back(stop);
    }
    day.plan.day.wind = first;
    EXPECT_TRUE(wording::windsOfStops(day, metric).isEmpty());
    day.plan.day.windLater = marks::LaterWind{std::chrono::hours(13), later};
    EXPECT_EQ(wording::windsOfStops(day, metric),
              (QStringList{"Anchors of marks 3, 1 are laid for wind " + metric.wind(first) + ".",
                           "Anchors of mark 2 are laid for wind " + metric.wind(later) + "."}));
}

} // namespace
