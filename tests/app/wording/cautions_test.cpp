// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/cautions.h"
#include "app/wording/planned_words.h"
#include "app/wording/section_words.h"
#include "app/wording/survey_words.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using anchoring::LiePart;
using preferences::UnitSystem;
using units::Length;
using wording::said;

const wording::Words metric;
const wording::Words imperial(UnitSystem::imperial);

const QString lifejacket =
    "Wear the lifejacket, do not stow it. If you fall in, float on your back until your breathing "
    "settles.";
const QString shock = ": the shock of falling in can kill within a minute. ";
const QString ice = " Where there is ice, stay ashore: never break out through it.";
const QString engine =
    "Engine in neutral before you fall back: a rope in the propeller holds the boat by the stern.";

TEST(Cautions, OfAnchorsSayEachInItsSentence) {
    const std::vector<std::pair<anchoring::Caution, QString>> rows{
        {anchoring::HighWaves{}, "High waves for an open boat at anchor: look for a lee."},
        {anchoring::ShortForTheWind{5.94},
         "Scope 5.9 is short for this wind: courses teach 6 to 10, and more is safer."},
        {anchoring::ShortOfRoom{2.94},
         "Room or rope for scope 2.9 only: take a bearing ashore and watch whether she drags."},
        {anchoring::TurnedOffTheWind{25.0},
         "Turned 25° off the wind so that neither anchor lands ashore."},
        {anchoring::BowToOpenWater{},
         "Where the wind will come from is not known: anchors are drawn with the bow to the "
         "longest open water. Lay her to the wind that blows."},
        {anchoring::LiesInClosedWater{LiePart::sternAnchor},
         "Laid by hand: the stern anchor or its rope comes into closed water."},
        {anchoring::LiesAshore{LiePart::boat},
         "Laid by hand: the boat comes ashore, or where she does not float."},
        {anchoring::RopeTooShort{LiePart::bowAnchor, Length::metres(61.0), Length::metres(50.0)},
         "Laid by hand: the bow rope is too short: 61.0 m to lie there and fall back on, 50.0 m on "
         "board."},
        {anchoring::TooSteep{LiePart::sternAnchor, 1.04, 1.2},
         "Laid by hand: the stern anchor is too near to hold, scope 1.0 and not 1.2."},
        {anchoring::LaidOffTheWind{25.0, false}, "Laid by hand: the bow points 25° off the wind."},
        {anchoring::WindChangedSince{80.0},
         "Laid by hand for a wind 80° from this one: see whether the anchors still fit it."},
        {anchoring::LiesOffTheMark{Length::metres(18.0)},
         "Laid by hand: in this wind the boat lies 18.0 m from where you put her."}};
    ASSERT_EQ(rows.size(), std::variant_size_v<anchoring::Caution>);
    for (const auto& [caution, sentence] : rows) {
        EXPECT_EQ(said(caution, metric), sentence);
    }
    EXPECT_EQ(said(anchoring::LaidOffTheWind{85.0, true}, metric),
              "Laid by hand: 85° off the wind, which comes over her side and can fill her. Lay the "
              "anchors anew.");
    EXPECT_EQ(said(anchoring::LiesInClosedWater{LiePart::swing}, metric),
              "Laid by hand: closed water reaches into the circle that she swings in.");
    EXPECT_EQ(said(anchoring::LiesAshore{LiePart::swing}, metric),
              "Laid by hand: the shore, or water too shallow for her, reaches into the circle that "
              "she swings in.");
    EXPECT_EQ(said(anchoring::RopeTooShort{LiePart::sternAnchor, Length::metres(30.48),
                                           Length::metres(15.24)},
                   imperial),
              "Laid by hand: the stern rope is too short: 100 ft to lie there and fall back on, 50 "
              "ft on board.");
}

TEST(Cautions, OfBaitsLaidByHandNameTheRodAndTheRuleAndFollowThoseOfTheAnchors) {
    using rods::BaitRule;
    marks::Mark mark;
    mark.anchors.cautions = {anchoring::LiesAshore{LiePart::boat}};
    mark.spread.cautions = {{1, BaitRule::inClosedWater}, {2, BaitRule::onLand},
                            {3, BaitRule::belowLimit},    {1, BaitRule::tooShallow},
                            {2, BaitRule::tooFar},        {3, BaitRule::tooNear},
                            {1, BaitRule::foulOfRope},    {1, BaitRule::nearAnotherLine, 3}};
    mark.spread.laidTooMany = 2;
    EXPECT_EQ(cautionsOf(mark, metric),
              (QStringList{"Laid by hand: the boat comes ashore, or where she does not float.",
                           "Rod 1, laid by hand: bait or line lies in closed water.",
                           "Rod 2, laid by hand: bait or line lies over land.",
                           "Rod 3, laid by hand: deeper than the limit.",
                           "Rod 1, laid by hand: hardly any water for a bait.",
                           "Rod 2, laid by hand: farther than the cast.",
                           "Rod 3, laid by hand: too near to the boat and her ropes.",
                           "Rod 1, laid by hand: its line leads along an anchor rope.",
                           "Rods 1 and 3, laid by hand: too near to each other.",
                           "2 of the baits laid by hand have no rod and are left out."}));
}

TEST(Cautions, OfAPlaceSayEachInItsSentence) {
    const std::vector<std::pair<marks::Caution, QString>> rows{
        {marks::InClosedWater{}, "Your mark lies in closed water."},
        {marks::InBannedWater{"Snags"}, "Your mark lies in water that you banned: Snags."},
        {marks::DeeperThanLimit{}, "Your mark is deeper than the limit."},
        {marks::ClosedWaterNear{}, "Closed water lies within a cast."},
        {marks::GuessedHere{}, "The depth here is a guess: sound it before you anchor."},
        {marks::GuessedAround{},
         "Most depths within a cast are guesses: sound round the boat first."},
        {marks::WavesHere{Length::metres(0.74)}, "Waves of about 0.7 m here."},
        {marks::RoomForRods{3, 4}, "Room for 3 of 4 rods."},
        {marks::WindTurnsHere{std::chrono::minutes(13 * 60 + 5), true},
         "The wind turns or gets up at 13:05, while you lie here; anchors are laid for the wind "
         "after it. Lay them anew, or move on, when it does."},
        {marks::SteepAtAnchor{marks::AnchorEnd::bow, 0.22, true},
         "The bow anchor lands on a slope of 22 % that falls towards the boat, so that the pull "
         "lifts it: pay out more rope, and watch whether it drags."},
        {marks::FoulAtAnchor{marks::AnchorEnd::stern, soundings::Bottom::rock},
         "Rock was felt near the stern anchor: it may slip, or jam. Have a line on its crown, or "
         "be ready to leave it."}};
    ASSERT_EQ(rows.size(), std::variant_size_v<marks::Caution>);
    for (const auto& [caution, sentence] : rows) {
        EXPECT_EQ(said(caution, metric), sentence);
    }
    EXPECT_EQ(said(marks::SteepAtAnchor{marks::AnchorEnd::stern, 0.31, false}, metric),
              "The stern anchor lands on a slope of 31 %: watch whether it slides.");
    EXPECT_EQ(said(marks::FoulAtAnchor{marks::AnchorEnd::bow, soundings::Bottom::weed}, metric),
              "The lead brought up weed near the bow anchor: it may slide on it. Watch whether it "
              "drags.");
    EXPECT_EQ(said(marks::InBannedWater{}, metric), "Your mark lies in water that you banned.");
    EXPECT_EQ(said(marks::RoomForRods{0, 4}, metric), "No room for a rod within the cast.");
    EXPECT_EQ(said(marks::WavesHere{Length::metres(0.74)}, imperial),
              "Waves of about 2.4 ft here.");
}

TEST(Cautions, OfTheDaySayEachInItsSentence) {
    using Home = marks::DarkHours::Home;
    using water::ColdWater;
    using water::FallingIn;
    const std::vector<std::pair<water::DayCaution, QString>> rows{
        {water::StayAshore{8}, "Force 8 is no weather for a small open boat: stay ashore."},
        {water::WhiteHorses{5}, "Force 5: white horses. Keep to sheltered water, pay out more "
                                "rope, and go in if it freshens."},
        {water::WindNotSaid{},
         "How strong the wind will be is not known: look at the forecast before you go out."},
        {FallingIn{}, lifejacket},
        {FallingIn{ColdWater{true}, false}, "The water is cold (below 15 °C)" + shock + lifejacket},
        {FallingIn{ColdWater{true}, true},
         "The water is cold (below 15 °C)" + shock + lifejacket + ice},
        {FallingIn{ColdWater{false}, true}, "Water below 15 °C is cold" + shock + lifejacket + ice},
        {water::Thunder{},
         "At the first thunder go ashore: a boat is the highest thing on the water."},
        {marks::DarkHours{true, Home::inTheLight},
         "You start before it is light: carry a white light."},
        {marks::DarkHours{false, Home::inTheDark},
         "You come home in the dark: carry a white light."},
        {marks::DarkHours{true, Home::afterSunset},
         "You start before it is light: carry a white light. You come home after sunset."},
        {water::WindOnTheBeam{},
         "Wind on the beam of a boat held at both ends can fill her: when it goes round, slip the "
         "stern rope and let her swing to the bow. Make both ropes fast so that they slip at once, "
         "a knife within reach; never lie to the stern anchor alone."},
        {water::SwingsToOneAnchor{},
         "To one anchor she swings with the wind: keep her circle clear of other boats, reel in "
         "when she goes round, and anchor by the bow, never by the stern."},
        {water::Ropes{}, engine},
        {water::Ropes{5.9},
         engine + " Rope at 5.9 times depth and bow height is for settled weather only: courses "
                  "teach 6 to 10, and more is safer."},
        {water::TellSomebody{}, "Tell somebody ashore where you are and when you will be back."}};
    std::set<std::size_t> kinds;
    for (const auto& [caution, sentence] : rows) {
        kinds.insert(caution.index());
        EXPECT_EQ(said(caution, metric), sentence);
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<water::DayCaution>) << "every kind is here";
    EXPECT_EQ(said(ColdWater{true}, metric),
              "The water is cold (below 15 °C)" + shock + lifejacket);
    EXPECT_EQ(said(ColdWater{false}, imperial), "Water below 59 °F is cold" + shock + lifejacket);
}

TEST(Cautions, RulesAreTheFisherysOwnWordsAndWhatTheyMean) {
    const std::vector<std::pair<water::DayRule, QString>> rows{
        {water::OutsideSeason{}, "That day lies outside the season."},
        {water::RodLimit{3}, "At most 3 rods in a boat."},
        {water::ClosedPart{"Reserve %1"}, "Closed water: Reserve %1."},
        {water::HouseNote{"No engines within 50 m."}, "No engines within 50 m."},
        {water::LocalRulesFirst{}, "Local rules and the fishery's staff go first."}};
    ASSERT_EQ(rows.size(), std::variant_size_v<water::DayRule>);
    for (const auto& [rule, sentence] : rows) {
        EXPECT_EQ(said(rule), sentence);
    }
}

TEST(Cautions, OfTheFishAreInTheUsersUnits) {
    EXPECT_EQ(said(water::FishCare::warmWater, metric),
              "Above 20 °C pike often die after capture in water this warm: consider not fishing "
              "for them, or for any species that dies of it.");
    EXPECT_TRUE(said(water::FishCare::warmWater, imperial).startsWith("Above 68 °F pike"));
    EXPECT_EQ(said(water::FishCare::handling, metric),
              "Fish: wet hands, a wet mat, unhooked in the water where it can be done, and a short "
              "time in the air.");
}

TEST(Cautions, OfAMarkAreThoseOfThePlaceThenThoseOfTheAnchorsEachOnce) {
    marks::Mark mark;
    mark.cautions = {marks::WavesHere{Length::metres(0.5)}, marks::GuessedHere{},
                     marks::GuessedHere{}};
    mark.anchors.cautions = {anchoring::HighWaves{}};
    EXPECT_EQ(wording::cautionsOf(mark, metric),
              (QStringList{"Waves of about 0.5 m here.",
                           "The depth here is a guess: sound it before you anchor.",
                           "High waves for an open boat at anchor: look for a lee."}));
    EXPECT_EQ(wording::cautionsOf(mark, imperial).front(), "Waves of about 1.6 ft here.");
}

TEST(PlannedWords, SayWhatTheListStandsOn) {
    water::PlannedDay day;
    day.basis = {water::NothingCaught{},
                 water::NoStayCounts{7},
                 water::StaysElsewhere{2, 7},
                 water::StaysWithoutEffort{3, 7},
                 water::WaterLeftOut{2,
                                     8,
                                     {{marks::Exclusion::closed, units::Area::hectares(0.06)},
                                      {marks::Exclusion::tooShallow, units::Area::hectares(1.0)},
                                      {marks::Exclusion::tooDeep, units::Area::hectares(120.06)},
                                      {marks::Exclusion::noRoom, units::Area::hectares(2.0)},
                                      {marks::Exclusion::ropesTooShort, units::Area::hectares(3.0)},
                                      {marks::Exclusion::tooRough, units::Area::hectares(4.0)},
                                      {marks::Exclusion::banned, units::Area::hectares(5.0)},
                                      {marks::Exclusion::tooSteep, units::Area::hectares(6.0)},
                                      {marks::Exclusion::noAnchors, units::Area::hectares(7.0)}}},
                 water::TooRoughWater{units::Area::hectares(4.04), Length::metres(0.35)},
                 water::DaysDiffer{Length::metres(0.468)},
                 water::DaysWithoutLevel{2},
                 water::WavesNotCounted{}};
    ASSERT_EQ(day.basis.size(), std::variant_size_v<water::PlanNote>);
    EXPECT_EQ(
        wording::basisOf(day, metric),
        (QStringList{
            "Nothing caught yet: by your beliefs alone.",
            "None of the 7 stays of the log counts: by your beliefs alone.",
            "2 of 7 stays of the log lie on no water of this chart today and say nothing of "
            "it.",
            "3 of 7 stays of the log count in no rate: nobody noted their rods, or they lasted no "
            "time, or longer than any can.",
            "2 of 8 marks found. Left out: 0.1 ha closed, 1.0 ha too shallow, 120.1 ha deeper "
            "than the limit, 2.0 ha too near the bank to swing, 3.0 ha too deep for the "
            "ropes, 4.0 ha too rough for an open boat at anchor, 5.0 ha that you banned, "
            "6.0 ha too steep for an anchor, 7.0 ha without room or rope for the anchors.",
            "4.0 ha of water left out: waves of more than 0.35 m there, too rough for an open boat "
            "at anchor.",
            "Two survey days differ by 0.47 m where they cross: agree the offset under Check the "
            "soundings.",
            "The water level of 2 survey days is not known: their depths may stand too high or too "
            "low.",
            "Strength of the wind: not said; waves and shelter are not counted."}));
    EXPECT_TRUE(wording::basisOf(day, imperial)[4].contains("296.7 ac deeper"));
    EXPECT_TRUE(wording::basisOf(day, imperial)[6].contains("differ by 1.54 ft"));
    EXPECT_TRUE(wording::daysWithoutLevel(1).contains("of 1 survey day is not known: its depths"));
    EXPECT_EQ(wording::windNotSaid(day, metric),
              "Strength of the wind: not said; waves and shelter are not counted. How strong the "
              "wind will be is not "
              "known: look at the forecast before you go out.");
    EXPECT_EQ(wording::toMindFirst(day, metric),
              (QStringList{wording::windNotSaid(day, metric), wording::basisOf(day, metric)[6]}));
    day.basis.pop_back();
    EXPECT_EQ(wording::windNotSaid(day, metric), "");
    EXPECT_EQ(wording::toMindFirst(day, metric), QStringList{wording::basisOf(day, metric)[6]});
    day.basis = {water::DaysWithoutLevel{2}};
    EXPECT_EQ(wording::toMindFirst(day, metric), QStringList());
}

TEST(SurveyWords, SayWhatFellAwayWithTheLevelItWasAgreedOn) {
    soundings::SurveyDay before;
    before.name = "5 September";
    before.agreedOffset = Length::metres(0.17);
    before.agreedDelay_s = 1.26;
    soundings::SurveyDay after = before;
    EXPECT_EQ(wording::agreementDropped(before, after, metric), "") << "nothing did";
    after.agreedOffset.reset();
    EXPECT_EQ(wording::agreementDropped(before, after, metric),
              "5 September: the level is another now, so the offset of +0.17 m agreed before no "
              "longer counts; see Check the soundings.");
    after.agreedDelay_s.reset();
    EXPECT_TRUE(wording::agreementDropped(before, after, metric)
                    .contains("the offset of +0.17 m and the delay of 1.3 s agreed"));
    EXPECT_EQ(wording::agreementDropped(after, before, metric), "") << "both are new";
}

TEST(SectionWords, SayThePlaceAndTheWayFromIt) {
    EXPECT_EQ(wording::sectionName({"Gannick Bar", {}}), "Gannick Bar");
    EXPECT_EQ(wording::sectionName({"Gannick Bar", units::Bearing::degrees(0.0)}),
              "Gannick Bar north");
    EXPECT_EQ(wording::sectionName({"Gannick Bar", units::Bearing::degrees(315.0)}),
              "Gannick Bar north-west");
}

TEST(PlannedWords, SayWhoseOrderTheDayHas) {
    water::PlannedDay day;
    day.day.isOrderByHand = true;
    EXPECT_EQ(wording::notesOf(day), QStringList{"The order of the day is yours."});
    day.day.isOrderByHand = false;
    day.isOrderOfOtherMarks = true;
    EXPECT_EQ(wording::notesOf(day),
              QStringList{"The order that you gave is for other marks: this is the program's."});
}

TEST(PlannedWords, SayOnWhichMarksTheUserSetTheStay) {
    water::PlannedDay day;
    day.day.stops.resize(3);
    for (std::size_t k = 0; k < 3; ++k) {
        day.day.stops[k].rank = static_cast<int>(3 - k);
    }
    day.day.stops[0].isStayByHand = true;
    EXPECT_EQ(wording::notesOf(day), QStringList{"Stays that you set: on mark 3."});
    day.day.stops[2].isStayByHand = true;
    EXPECT_EQ(wording::notesOf(day), QStringList{"Stays that you set: on marks 3, 1."});
}

TEST(PlannedWords, SayWhatBecameOfOwnMarksAndOfThoseWithoutTime) {
    water::PlannedDay day;
    EXPECT_TRUE(wording::notesOf(day).isEmpty());
    day.refused = {
        {"Hole",
         {base::ErrorKind::unusableInput, "the ropes are too short for the depth here", {}, {}}},
        {"",
         {base::ErrorKind::unusableInput, "it lies on no water of this chart today", {}, {}},
         {3.1, 55.2}}};
    day.day.leftOut = {2};
    day.day.leastStay = std::chrono::minutes(30);
    EXPECT_EQ(
        wording::notesOf(day),
        (QStringList{
            "your mark Hole cannot be anchored on: the ropes are too short for the depth here",
            "your mark at 55.20000 N  3.10000 E cannot be anchored on: it lies on no water of this "
            "chart today",
            "There is no time or no way for mark 2 with stays of 30 minutes."}));
    day.day.leftOut = {1, 2};
    day.day.leastStay = std::chrono::hours(3);
    EXPECT_EQ(wording::notesOf(day).back(),
              "There is no time or no way for marks 1, 2 with stays of 180 minutes.");
    day.day.tooRough = {2};
    EXPECT_EQ(wording::notesOf(day)[2],
              "There is no time or no way for mark 1 with stays of 180 minutes.");
    EXPECT_EQ(wording::notesOf(day)[3],
              "In the hours that the day has for mark 2 the water there is too rough for an open "
              "boat at anchor.");
    day.day.tooRough = {1, 2};
    EXPECT_EQ(wording::notesOf(day).size(), 3) << "time and way there are";
}

} // namespace
