// SPDX-License-Identifier: GPL-3.0-or-later
// What the acts leave in a water where a hurried hand would lose, double or invent something.
#include "core/acts/facts.h"
#include "core/acts/notes.h"
#include "core/acts/shore.h"
#include "core/acts/stays.h"
#include "core/acts/survey_days.h"
#include "core/acts/verdicts.h"
#include "core/water/document/swap_parts.h"

#include "tests/support/full_water.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using base::ErrorKind;
using soundings::SurveyDay;
using soundings::SurveyDayId;
using testing::ElementsAre;
using testing::HasSubstr;
using water::Part;
using water::Water;

Water full() {
    return support::fullWater();
}

TEST(Acts, LeaveTheWaterThatTheyWereGivenAsItWas) {
    const Water given = full();
    ASSERT_TRUE(acts::removeStay(given, logbook::StayId(31)));
    ASSERT_TRUE(acts::removeSurveyDays(given));
    ASSERT_TRUE(acts::setAsideSoundings(given, {{1}}));
    ASSERT_TRUE(acts::setShoreline(given, {}));
    EXPECT_EQ(given, full());
}

TEST(Acts, TouchNoPartButTheirOwn) {
    const auto touched = [](const base::Result<Water>& after) {
        return water::differingParts(full(), after.value());
    };
    EXPECT_THAT(touched(acts::setAsideSoundings(full(), {{1}})), ElementsAre(Part::days));
    EXPECT_THAT(touched(acts::setShoreline(full(), {})), ElementsAre(Part::shoreline));
    EXPECT_THAT(touched(acts::removeWeedNote(full(), weed::WeedNoteId(21))),
                ElementsAre(Part::weedNotes));
    EXPECT_THAT(touched(acts::changeFacts(full(),
                                          [](Water& w) {
                                              w.name = "Other";
                                              w.log = {}; // no fact
                                          })),
                ElementsAre(Part::facts));
}

/// Three of each, with ids below and above that of the one in the middle, which is taken away.
TEST(Acts, TakeAwayNoOtherThanTheOneThatIsNamed) {
    Water three = full();
    auto& days = three.days;
    auto& leads = three.leadLine.edit();
    auto& weed = three.weedNotes.edit();
    days.assign(3, days.front());
    three.log.push_back(three.log[0]);
    three.log.push_back(three.log[0]);
    ASSERT_EQ(three.log.size(), 3U);
    leads.assign(3, leads.front());
    weed.assign(3, weed.front());
    for (std::size_t k = 0; k < 3; ++k) {
        const std::int64_t id = 50 + 10 * static_cast<std::int64_t>(k);
        days[k].id = SurveyDayId(id);
        three.log.edit(k).id = logbook::StayId(id + 1);
        leads[k].id = soundings::LeadLineId(id + 2);
        weed[k].id = weed::WeedNoteId(id + 3);
    }
    const auto idsOf = [](const auto& things) {
        std::vector<std::int64_t> ids;
        for (const auto& thing : things) {
            ids.push_back(thing.id.number());
        }
        return ids;
    };
    EXPECT_THAT(idsOf(acts::removeSurveyDay(three, SurveyDayId(60)).value().days),
                ElementsAre(50, 70));
    EXPECT_THAT(idsOf(acts::removeStay(three, logbook::StayId(61)).value().log),
                ElementsAre(51, 71));
    EXPECT_THAT(idsOf(acts::removeLeadLine(three, soundings::LeadLineId(62)).value().leadLine),
                ElementsAre(52, 72));
    EXPECT_THAT(idsOf(acts::removeWeedNote(three, weed::WeedNoteId(63)).value().weedNotes),
                ElementsAre(53, 73));
}

TEST(AddedDays, GetAnIdAndAreRefusedTheSecondTime) {
    SurveyDay day = full().days[1];
    day.id = {};
    day.soundings.edit().pop_back();
    day.source = "again.nmea";
    const auto once = acts::addSurveyDay(full(), day);
    ASSERT_TRUE(once) << once.error().sentence();
    EXPECT_EQ(once->days.back().id, SurveyDayId(33));
    const auto twice = acts::addSurveyDay(*once, day);
    ASSERT_FALSE(twice);
    EXPECT_EQ(twice.error().kind, ErrorKind::unusableInput);
    EXPECT_EQ(twice.error().where, "again.nmea");
    EXPECT_THAT(twice.error().what, HasSubstr("2026-09-05"));
    day.soundings.edit()[0].shown = units::Depth::metres(7.0);
    EXPECT_TRUE(acts::addSurveyDay(*once, day)) << "one depth differs: another day";
}

TEST(AddedDays, KeepAnIdOfTheirOwnAndNeverTakeThatOfAnother) {
    SurveyDay day = full().days[1];
    day.soundings.edit().pop_back();
    EXPECT_EQ(acts::addSurveyDay(full(), day)->days.back().id, SurveyDayId(33)) << "2 is taken";
    day.id = SurveyDayId(77);
    EXPECT_EQ(acts::addSurveyDay(full(), day)->days.back().id, SurveyDayId(77));
}

TEST(AddedDays, LayTheFrameRoundTheShoreAndElseRoundThemselves) {
    Water bare;
    SurveyDay day = full().days[0];
    const auto added = acts::addSurveyDay(bare, day);
    ASSERT_TRUE(added) << added.error().sentence();
    ASSERT_TRUE(added->frame);
    EXPECT_NEAR(added->frame->centre().lon_deg, 3.1, 0.01);
    day.soundings = {};
    EXPECT_FALSE(acts::addSurveyDay(bare, day)) << "nothing to lay it round";
}

TEST(DaysReadAnew, KeepWhatTheUserSaidOfTheirSoundings) {
    SurveyDay again = full().days[1];
    again.id = {};
    again.setAsideByHand = {};
    again.keptByHand = {};
    again.sounder.draft = units::Depth::metres(0.6); // said anew
    again.soundings = again.soundings.all();         // a list of its own, as read from the file
    EXPECT_TRUE(acts::takeOverVerdicts(full().days, again));
    EXPECT_EQ(again.id, SurveyDayId(2));
    EXPECT_THAT(again.setAsideByHand, ElementsAre(5));
    EXPECT_THAT(again.keptByHand, ElementsAre(40));
    EXPECT_EQ(again.sounder.draft, units::Depth::metres(0.6));
    SurveyDay other = again;
    other.setAsideByHand = {};
    other.soundings.edit().pop_back();
    EXPECT_FALSE(acts::takeOverVerdicts(full().days, other));
    EXPECT_TRUE(other.setAsideByHand.empty()) << "positions mean other soundings there";
}

TEST(ChangedDays, KeepTheirIdWhateverTheChangeSays) {
    const auto changed = acts::changeSurveyDay(full(), SurveyDayId(2), [](SurveyDay& day) {
        day.id = SurveyDayId(1);
        day.name = "other";
    });
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->days[1].id, SurveyDayId(2));
    EXPECT_EQ(changed->days[1].name, "other");
    EXPECT_EQ(changed->days[0], full().days[0]);
}

TEST(Notes, BroughtInTwiceDoubleNothingAndAddToThoseThereAre) {
    const std::vector<weed::WeedNote> file{{{}, {3.0991, 55.2001}, weed::Growth::thin, {}},
                                           {{}, {3.0992, 55.2001}, weed::Growth::thick, {}}};
    const auto once = acts::addWeedNotes(full(), file);
    ASSERT_TRUE(once);
    EXPECT_EQ(once->weedNotes.size(), full().weedNotes.size() + 2);
    EXPECT_EQ(once->weedNotes[2].id, weed::WeedNoteId(33));
    EXPECT_EQ(once->weedNotes[3].id, weed::WeedNoteId(34));
    const auto twice = acts::addWeedNotes(*once, file);
    ASSERT_TRUE(twice);
    EXPECT_EQ(*twice, *once);
    EXPECT_TRUE(twice->weedNotes.isSameAs(once->weedNotes)) << "not even the list is another";
}

TEST(Notes, ThatAreNoLongerThereAreNotSaidToBeChanged) {
    soundings::LeadLineSounding lead = full().leadLine.at(0);
    lead.id = soundings::LeadLineId(999);
    for (const auto& after : {acts::changeLeadLine(full(), lead),
                              acts::removeLeadLine(full(), soundings::LeadLineId(999)),
                              acts::removeWeedNote(full(), weed::WeedNoteId(999))}) {
        ASSERT_FALSE(after);
        EXPECT_EQ(after.error().kind, base::ErrorKind::wrongUse);
    }
}

TEST(Stays, BroughtInTwiceDoubleNoCatch) {
    logbook::Stay early = support::fullStay();
    early.start -= std::chrono::hours(48);
    early.end -= std::chrono::hours(48);
    const logbook::Log file{support::fullStay(), early, early};
    const auto once = acts::addStays(full(), file);
    ASSERT_TRUE(once);
    ASSERT_EQ(once->log.size(), 2U) << "one is known, one stands twice";
    EXPECT_EQ(once->log[0].start, early.start) << "by start";
    EXPECT_EQ(once->log[0].id, logbook::StayId(33));
    EXPECT_EQ(once->log[0].runs[0].id, logbook::FishId(34));
    EXPECT_EQ(acts::addStays(*once, file).value(), *once);
    early.runs[0].weight = units::Weight::pounds(6.0);
    early.conditions.waterTemperature.reset();
    const auto more = acts::addStays(*once, {early});
    ASSERT_EQ(more->log.size(), 2U) << "one time and place: one stay";
    logbook::Stay updated = once->log[0];
    updated.runs[0].weight = units::Weight::pounds(6.0);
    EXPECT_EQ(more->log[0], updated) << "what is left open stays as it was noted";
    early.runs.clear();
    EXPECT_EQ(acts::addStays(*once, {early})->log, once->log) << "nor does a blank take a fish";
}

TEST(Stays, OfOneFileUpdateEachOtherAndThoseInDoubtAreLeftOut) {
    logbook::Stay first = support::fullStay();
    first.start += std::chrono::hours(48);
    first.end += std::chrono::hours(48);
    for (logbook::Fish& run : first.runs) {
        *run.time += std::chrono::hours(48);
    }
    logbook::Stay more = first;
    more.runs.resize(1);
    more.runs[0].time = first.start + std::chrono::minutes(7);
    more.runs[0].species = "ide";
    logbook::Stay elsewhere = first;
    elsewhere.place.lat_deg += 0.01; // a kilometre off at the same time
    const auto after = acts::addStays(full(), {first, more, elsewhere});
    ASSERT_TRUE(after);
    ASSERT_EQ(after->log.size(), 2U);
    EXPECT_EQ(after->log[1].runs.size(), first.runs.size() + 1);
    EXPECT_EQ(after->log[1].place, first.place);
    std::set<std::int64_t> ids;
    for (const logbook::Fish& run : after->log[1].runs) {
        EXPECT_TRUE(run.id.isGiven());
        EXPECT_TRUE(ids.insert(run.id.number()).second) << "each fish has a number of its own";
    }
}

TEST(Shore, KeepsTheFrameUnlessItLiesOutOfItsReach) {
    const auto shoreAt = [](double lon_deg) {
        return std::vector<geo::LonLatPiece>{
            {{{lon_deg, 55.2}, {lon_deg + 0.01, 55.2}, {lon_deg + 0.01, 55.21}}, {}}};
    };
    EXPECT_EQ(acts::setShoreline(full(), shoreAt(3.3))->frame, full().frame) << "13 km";
    const auto far = acts::setShoreline(full(), shoreAt(3.5)); // 25 km
    ASSERT_TRUE(far);
    EXPECT_NEAR(far->frame->centre().lon_deg, 3.505, 0.011);
    EXPECT_EQ(acts::setShoreline(full(), {})->frame, full().frame);
}

TEST(Verdicts, NameSoundingsThatTheDayHas) {
    EXPECT_TRUE(acts::setAsideSoundings(full(), {{}, {89}}));
    EXPECT_EQ(acts::setAsideSoundings(full(), {{}, {90}}).error().kind, ErrorKind::wrongUse);
    EXPECT_EQ(acts::setAsideSoundings(full(), {{}, {}, {0}}).error().kind, ErrorKind::wrongUse);
}

TEST(Verdicts, ShareAllButTheDayThatIsMeant) {
    const Water before = full();
    const auto after = acts::setAsideSoundings(before, {{}, {7}});
    ASSERT_TRUE(after);
    EXPECT_THAT(after->days[1].setAsideByHand, ElementsAre(5, 7));
    EXPECT_TRUE(after->days[1].soundings.isSameAs(before.days[1].soundings));
    EXPECT_TRUE(after->days[1].keptByHand.isSameAs(before.days[1].keptByHand));
    EXPECT_TRUE(after->days[0].setAsideByHand.isSameAs(before.days[0].setAsideByHand));
}

TEST(Verdicts, AreNotTakenBackByTheVerdictsOfAnotherSurvey) {
    reduction::ReducedSurvey judged;
    judged.days.resize(2);
    judged.days[0].verdicts.resize(full().days[0].soundings.size());
    judged.days[1].verdicts.resize(90);
    judged.days[1].verdicts[12] = soundings::Verdict::spike;
    const auto back = acts::takeBackSoundings(full(), {{}, {5, 12, 13}}, judged);
    ASSERT_TRUE(back) << back.error().sentence();
    EXPECT_TRUE(back->days[1].setAsideByHand.empty());
    EXPECT_THAT(back->days[1].keptByHand, ElementsAre(12, 40)) << "13 was never set aside";
    judged.days[1].verdicts.resize(89);
    EXPECT_FALSE(acts::takeBackSoundings(full(), {{}, {12}}, judged));
}

TEST(Facts, OutOfTheirRangeAreRefused) {
    water::Settings settings = full().settings;
    settings.weedLeft = 1.5;
    EXPECT_EQ(acts::setSettings(full(), settings).error().kind, ErrorKind::wrongUse);
    const auto wrong = acts::changeFacts(full(), [](Water& w) { w.settings.weedLeft = -0.1; });
    EXPECT_EQ(wrong.error().kind, ErrorKind::wrongUse);
}

TEST(Acts, AnotherLevelDropsWhatWasAgreedWithTheOneBefore) {
    Water given = full();
    const SurveyDayId id = given.days[0].id;
    given.days[0].agreedOffset = units::Length::metres(0.34);
    given.days[0].agreedDelay_s = 1.5;
    const auto changed = [&](const std::function<void(SurveyDay&)>& change) {
        return acts::changeSurveyDay(given, id, change).value().days[0];
    };
    const SurveyDay read = changed([](SurveyDay& day) {
        day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(7.77));
    });
    EXPECT_FALSE(read.agreedOffset);
    EXPECT_FALSE(read.agreedDelay_s);
    const SurveyDay table = changed([](SurveyDay& day) {
        day.gauge = soundings::Gauge::table(
            {{units::Moment(), units::WaterLevel::metresOnGauge(7.0)},
             {units::Moment(std::chrono::hours(1)), units::WaterLevel::metresOnGauge(7.1)}});
    });
    EXPECT_FALSE(table.agreedOffset);
    // Nothing else takes them away, and what is agreed with the new level stands.
    const SurveyDay warm =
        changed([](SurveyDay& day) { day.waterTemperature = units::Temperature::celsius(11.0); });
    EXPECT_EQ(warm.agreedOffset, given.days[0].agreedOffset);
    EXPECT_EQ(warm.agreedDelay_s, given.days[0].agreedDelay_s);
    const SurveyDay both = changed([](SurveyDay& day) {
        day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(7.77));
        day.agreedOffset = units::Length::metres(0.1);
    });
    EXPECT_EQ(both.agreedOffset, units::Length::metres(0.1));
}

} // namespace
