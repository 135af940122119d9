// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/tomorrow_view.h"
#include "core/wind/beaufort.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace tomorrow = days::tomorrow;

namespace {

using marks::FactorKind;
using preferences::UnitSystem;
using support::Said;
using Rows = std::vector<QStringList>;

const wording::Words metric(UnitSystem::metric);
const wording::Words imperial(UnitSystem::imperial);

const water::PlannedDay& day() {
    static const water::PlannedDay made = support::dayToRead();
    return made;
}

units::Clock clockAtTheWater() {
    return *units::Clock::inZone("Europe/London");
}

/// Each row as one text, so that a failing case can be read.
QStringList joined(const Rows& rows) {
    QStringList lines;
    for (const QStringList& row : rows) {
        lines << row.join(" | ");
    }
    return lines;
}

TEST(TomorrowRead, ConditionsInOneLine) {
    EXPECT_EQ(tomorrow::conditionsLine(day().plan.day, metric),
              "WNW 301° 6.2 m/s, Sat 3 Oct 2026, 07:40 to 15:05");
    EXPECT_EQ(tomorrow::conditionsLine(day().plan.day, imperial),
              "WNW 301° 14 mph, Sat 3 Oct 2026, 07:40 to 15:05");
    EXPECT_EQ(tomorrow::timeOfDay(std::chrono::seconds(0)), "00:00");
    EXPECT_EQ(tomorrow::timeOfDay(std::chrono::seconds(86340)), "23:59");
}

TEST(TomorrowRead, TheForceOfTheWindWithItsNameAndLook) {
    EXPECT_EQ(tomorrow::beaufortWords(units::Speed::metresPerSecond(6.2)),
              "Force 4, moderate breeze: small waves, some white horses");
    EXPECT_EQ(tomorrow::beaufortWords(units::Speed()), "Force 0, calm: flat");
}

TEST(TomorrowRead, RodsAreThoseWantedHeldToTheHouseRules) {
    marks::Tackle tackle;
    tackle.scope = 3.25;
    tackle.cast = units::Length::metres(28.6);
    logbook::HouseRules rules;
    for (const auto& [wanted, limit, allowed] :
         {std::tuple(6, 4, 4), std::tuple(4, 4, 4), std::tuple(3, 4, 3), std::tuple(2, 1, 1)}) {
        tackle.rods = wanted;
        rules.rodLimit = limit;
        EXPECT_EQ(tomorrow::rodsAllowed(tackle, rules), allowed);
        EXPECT_EQ(tomorrow::tackleLine(tackle, rules, metric),
                  QStringLiteral("%1 rod%2, scope 3.25, cast 28.6 m")
                      .arg(allowed)
                      .arg(allowed == 1 ? "" : "s"));
        const QString over = QStringLiteral(" Planned with %1, not %2.").arg(limit).arg(wanted);
        EXPECT_EQ(tomorrow::rodLimitWords(tackle, rules),
                  QStringLiteral("House rules: at most %1 rods a boat.").arg(limit) +
                      (wanted > limit ? over : QString()));
    }
    EXPECT_EQ(tomorrow::tackleLine(tackle, {}, imperial), "2 rods, scope 3.25, cast 94 ft");
    EXPECT_EQ(tomorrow::rodLimitWords(tackle, {}), "");
}

TEST(TomorrowRead, EveryReasonHasItsOwnTitleAndMeaning) {
    const std::vector<std::tuple<FactorKind, QString, QString>> table{
        {FactorKind::depth, "depth in your bands",
         "How much of the water within a cast has a depth you want to fish."},
        {FactorKind::dropOff, "drop-off in reach",
         "How much edge of a drop-off lies within a cast."},
        {FactorKind::weedEdge, "weed edge in reach", "How much edge of weed lies within a cast."},
        {FactorKind::feature, "humps and holes", "Humps, holes, spurs and saddles within a cast."},
        {FactorKind::windward, "wind blows on to it",
         "Rippled water goes before calm, the more the farther right; against the liking for calm "
         "it says which waves you like best."},
        {FactorKind::shelter, "waves",
         "Calm water goes before rippled, the more the farther right; against the liking for "
         "ripple it says which waves you like best."},
        {FactorKind::record, "catches here",
         "What your log says of the place: fish and blanks alike."},
        {FactorKind::lessTried, "seldom fished",
         "Places of which the log knows little, so that you learn more."},
        {FactorKind::trust, "depth well known",
         "Places where the depth is sounded rather than guessed."}};
    EXPECT_EQ(table.size(), marks::allFactorKinds.size());
    for (const auto& [kind, title, meaning] : table) {
        EXPECT_EQ(tomorrow::factorTitle(kind), title);
        EXPECT_EQ(tomorrow::factorMeaning(kind), meaning);
    }
}

TEST(TomorrowRead, TheWavesThatAreLikedAreThoseOfTheBalanceOfBothWeights) {
    marks::Weights weights;
    EXPECT_EQ(tomorrow::likedWavesWords(weights, metric), "You like waves of about 0.10 m best.");
    EXPECT_EQ(tomorrow::likedWavesWords(weights, imperial), "You like waves of about 0.3 ft best.");
    weights.set(FactorKind::windward, 0.0);
    EXPECT_EQ(tomorrow::likedWavesWords(weights, metric), "You like it as calm as can be.");
    weights.set(FactorKind::shelter, 0.0);
    EXPECT_EQ(tomorrow::likedWavesWords(weights, metric),
              "Waves do not count for you, while they are not too rough.");
    EXPECT_EQ(tomorrow::weightTitle(FactorKind::windward), "liking for ripple");
    EXPECT_EQ(tomorrow::weightTitle(FactorKind::shelter), "liking for calm");
    EXPECT_EQ(tomorrow::weightTitle(FactorKind::depth), "depth in your bands");
}

TEST(TomorrowRead, TheWeightsThatCountMostHeaviestFirst) {
    marks::Weights weights;
    for (const FactorKind kind : marks::allFactorKinds) {
        weights.set(kind, 0.0);
    }
    weights.set(FactorKind::trust, 0.4);
    weights.set(FactorKind::weedEdge, 1.3);
    EXPECT_EQ(tomorrow::weightsLine(weights), "weed edge, trust");
    weights.set(FactorKind::lessTried, 0.9);
    weights.set(FactorKind::dropOff, 2.0);
    EXPECT_EQ(tomorrow::weightsLine(weights), "drop-off, weed edge, less tried");
}

TEST(TomorrowRead, TheListOfMarksSaysRankNameDepthTrustScoreAndPin) {
    EXPECT_EQ(
        joined(tomorrow::markRows(day(), metric)),
        QStringList({"1  Owl Point, own | 4.3 m ±0.2 m | ×0.77",
                     "2  Stream Arm | 3.4 m ±0.2 m | ×0.69", "3  Mark 3 | 5.9 m ±0.3 m | ×0.41"}));
    EXPECT_EQ(joined(tomorrow::markRows(day(), imperial)),
              QStringList({"1  Owl Point, own | 14.0 ft ±0.6 ft | ×0.77",
                           "2  Stream Arm | 11.2 ft ±0.8 ft | ×0.69",
                           "3  Mark 3 | 19.3 ft ±1.0 ft | ×0.41"}));
}

TEST(TomorrowRead, TheCatchThatIsExpectedIsSaidWithItsIntervalOrThatNobodyKnows) {
    marks::Mark mark;
    mark.score = 1.376;
    EXPECT_EQ(tomorrow::scoreWords(mark), "×1.38");
    EXPECT_EQ(tomorrow::expectedWords(mark),
              "1.38 times what the water gives on average, by your beliefs alone.");
    mark.expected = marks::ExpectedCatch{2.24, 0.96, 4.12};
    EXPECT_EQ(tomorrow::scoreWords(mark), "2.2  ×1.38");
    const QString words =
        "2.2 fish in 10 rod-hours to be expected, between 1.0 and 4.1 (80 %); 1.38 "
        "times the water's mean.";
    EXPECT_EQ(tomorrow::expectedWords(mark), words);
    mark.toLearn = true;
    EXPECT_EQ(tomorrow::expectedWords(mark), words + " On the list in order to learn.");
    water::PlannedDay one;
    one.marks = {mark};
    EXPECT_EQ(tomorrow::markRows(one, metric).front().front(), "0  Mark 0, to learn");
}

TEST(TomorrowRead, ReasonsComeInTheOrderOfWhatTheyChange) {
    marks::Mark mark = day().marks[0];
    std::vector<marks::FactorKind> kinds;
    for (const marks::Factor& factor : tomorrow::weighty(mark)) {
        kinds.push_back(factor.kind);
    }
    using enum marks::FactorKind;
    EXPECT_EQ(kinds, std::vector({depth, dropOff, record, shelter, feature}));
    // Half as many fish say more than a quarter more.
    mark.factors = {
        {depth, 1.0, 1.0, {}, 1.25}, {shelter, 1.0, 1.0, {}, 0.5}, {trust, 1.0, 1.0, {}, 1.04}};
    EXPECT_EQ(tomorrow::weighty(mark).front().kind, shelter);
    EXPECT_EQ(tomorrow::weighty(mark).size(), 2U) << "what hardly changes anything has no bar";
}

TEST(TomorrowRead, FurtherReasonsAreThoseThatMatterAndHardlyChangeAnything) {
    marks::Mark mark = day().marks[0];
    EXPECT_EQ(tomorrow::furtherReasons(mark, metric), QStringList());
    for (marks::Factor& factor : mark.factors) {
        factor.times = 1.0;
    }
    EXPECT_EQ(tomorrow::furtherReasons(mark, metric),
              QStringList({"waves of 0.13 m after 420 m of open water",
                           "310 m² of hump, hole, spur or saddle within a cast, most of it hump",
                           "58 m of drop-off, 4.0 to 9.0 m, within a cast",
                           "94 % of the water within a cast can be fished, 2.2 to 6.1 m deep"}));
    EXPECT_EQ(tomorrow::furtherReasons(mark, imperial),
              QStringList({"waves of 0.4 ft after 1378 ft of open water",
                           "3337 ft² of hump, hole, spur or saddle within a cast, most of it hump",
                           "190 ft of drop-off, 13.1 to 29.5 ft, within a cast",
                           "94 % of the water within a cast can be fished, 7.2 to 20.0 ft deep"}));
}

TEST(TomorrowRead, BothAnchorsWithTheirOwnPlaceDepthAndRope) {
    const auto frame = support::starWater().frame;
    for (const auto units : {UnitSystem::metric, UnitSystem::imperial}) {
        const Said said(units);
        for (const marks::Mark& mark : day().marks) {
            const auto row = [&](const char* name, const anchoring::Anchor& anchor) {
                return QStringLiteral("%1  %2 | %3 | %4")
                    .arg(QString::fromLatin1(name), Said::place(frame->toEarth(anchor.place)),
                         said.depth(anchor.depth), said.length(anchor.rope));
            };
            EXPECT_EQ(
                joined(tomorrow::anchorRows(mark, frame, wording::Words(units))),
                QStringList({row("bow", mark.anchors.bow), row("stern", *mark.anchors.stern)}));
            EXPECT_EQ(
                tomorrow::lieWords(mark, wording::Words(units)),
                QStringLiteral("Bow to %1. Drop the bow anchor, fall back on %2 of rope, "
                               "lower the stern anchor, haul in to %3. Ropes are worked out from "
                               "depth plus bow height.")
                    .arg(Said::bearing(mark.anchors.lie.heading),
                         said.length(mark.anchors.fallBackRope),
                         said.length(mark.anchors.bow.rope)));
        }
    }
    EXPECT_EQ(tomorrow::anchorRows(day().marks[0], {}, metric)[1][0], "stern");
}

TEST(TomorrowRead, EveryRodWithBearingDistanceDepthAndKnot) {
    EXPECT_EQ(joined(tomorrow::rodRows(day().marks[0], metric)),
              QStringList({"1  drop-off | 322° | 24.3 m | 5.3 m | 5.6 m",
                           "2  weed edge | 045° | 18.7 m | 3.9 m | 4.2 m",
                           "3 | 187° | 29.9 m | 7.8 m | 8.4 m"}));
    EXPECT_EQ(joined(tomorrow::rodRows(day().marks[0], imperial)),
              QStringList({"1  drop-off | 322° | 80 ft | 17.3 ft | 18.4 ft",
                           "2  weed edge | 045° | 61 ft | 12.8 ft | 13.7 ft",
                           "3 | 187° | 98 ft | 25.7 ft | 27.7 ft"}));
}

TEST(TomorrowRead, TheOrderOfTheDayByTheClockAtTheWater) {
    EXPECT_EQ(joined(tomorrow::dayRows(day(), clockAtTheWater(), metric)),
              QStringList({"2  Stream Arm | 07:55 | 10:05 | 2 h 00 | 312 m",
                           "1  Owl Point | 10:26 | 14:38 | 4 h 02 | 1.2 km"}));
    EXPECT_EQ(joined(tomorrow::dayRows(day(), clockAtTheWater(), imperial)),
              QStringList({"2  Stream Arm | 07:55 | 10:05 | 2 h 00 | 1024 ft",
                           "1  Owl Point | 10:26 | 14:38 | 4 h 02 | 4068 ft"}));
    EXPECT_EQ(tomorrow::dayLine(day(), metric), "2 marks, 6 h 43, 2.5 km");
    EXPECT_EQ(tomorrow::dayLine(day(), imperial), "2 marks, 6 h 43, 1.5 mi");
    water::PlannedDay one = day();
    one.day.stops.pop_back();
    EXPECT_EQ(tomorrow::dayLine(one, metric), "1 mark, 2 h 10, 2.5 km");
    EXPECT_EQ(tomorrow::dayLine({}, metric), "no stops");
}

TEST(TomorrowRead, LightByTheClockAtTheWaterAndWhereItDoesNotCome) {
    EXPECT_EQ(tomorrow::lightWords(day().light, clockAtTheWater()),
              "First light 06:41, sunrise 07:12, sunset 18:44, dark 19:16.");
    EXPECT_EQ(tomorrow::lightWords({}, clockAtTheWater()),
              "First light none, sunrise none, sunset none, dark none.");
}

} // namespace
