// SPDX-License-Identifier: GPL-3.0-or-later
// Every act does what its name says to just the members that it is about, in memory and in the
// file, and can be undone and done again.
#include "app/edits/add_lead_line.h"
#include "app/edits/add_stays.h"
#include "app/edits/add_survey_day.h"
#include "app/edits/add_weed_notes.h"
#include "app/edits/agree_delay.h"
#include "app/edits/agree_offset.h"
#include "app/edits/ban_water.h"
#include "app/edits/belief_profiles.h"
#include "app/edits/change_facts.h"
#include "app/edits/change_lead_line.h"
#include "app/edits/change_settings.h"
#include "app/edits/change_stay.h"
#include "app/edits/change_survey_day.h"
#include "app/edits/lay_by_hand.h"
#include "app/edits/order_day.h"
#include "app/edits/pin_mark.h"
#include "app/edits/remove_lead_line.h"
#include "app/edits/remove_stay.h"
#include "app/edits/remove_survey_day.h"
#include "app/edits/remove_weed_note.h"
#include "app/edits/set_aside_soundings.h"
#include "app/edits/set_house_rules.h"
#include "app/edits/set_plan.h"
#include "app/edits/unpin_mark.h"
#include "tests/app/edits/edit_case.h"

namespace {

using edit_case::Edits;
using edit_case::OpenWater;
using edit_case::Part;
using edit_case::Water;
using logbook::FishId;
using logbook::StayId;
using soundings::LeadLineId;
using soundings::SurveyDayId;
using weed::WeedNoteId;

const geo::LonLat newPlace{3.108, 55.204};

TEST_F(Edits, OfTheLeadLine) {
    const soundings::LeadLineSounding fresh{
        {}, newPlace, units::Depth::metres(5.0), soundings::Bottom::gravel};
    // One that is there already, under another number.
    soundings::LeadLineSounding known = open_.water()->leadLine[1];
    known.id = LeadLineId(77);
    soundings::LeadLineSounding deeper = fresh;
    deeper.depth = units::Depth::metres(5.5);
    check({"Bring in lead line",
           {Part::leadLine},
           [&](OpenWater& open) {
               edits::addLeadLine(open, {fresh, known, fresh, deeper});
           },
           [&](Water& water) {
               water.leadLine.edit().push_back(fresh);
               water.leadLine.edit().back().id = LeadLineId(52);
               water.leadLine.edit().push_back(deeper);
               water.leadLine.edit().back().id = LeadLineId(53);
           }});
    checkIdle("known", [&](OpenWater& open) { edits::addLeadLine(open, {known}); });
    deeper.id = LeadLineId(22);
    check({"Change sounding by lead line",
           {Part::leadLine},
           [&](OpenWater& open) { edits::changeLeadLine(open, deeper); },
           [&](Water& water) { water.leadLine.edit()[1] = deeper; }});
    deeper.id = LeadLineId(99);
    checkIdle("nobody's", [&](OpenWater& open) { edits::changeLeadLine(open, deeper); });
    check({"Remove sounding by lead line",
           {Part::leadLine},
           [](OpenWater& open) { edits::removeLeadLine(open, LeadLineId(21)); },
           [](Water& water) { water.leadLine.edit().erase(water.leadLine.begin()); }});
    checkIdle("none", [](OpenWater& open) { edits::removeLeadLine(open, LeadLineId(31)); });
}

TEST_F(Edits, OfWeedNotes) {
    const weed::WeedNote fresh{{}, newPlace, weed::Growth::thick, units::Length::metres(0.5)};
    weed::WeedNote later = fresh; // At the same place, and yet another note.
    later.growth = weed::Growth::thin;
    weed::WeedNote known = open_.water()->weedNotes[0];
    known.id = WeedNoteId(77);
    check({"Note weed",
           {Part::weedNotes},
           [&](OpenWater& open) {
               edits::addWeedNotes(open, {known, fresh, fresh, later});
           },
           [&](Water& water) {
               water.weedNotes.edit().push_back(fresh);
               water.weedNotes.edit().back().id = WeedNoteId(52);
               water.weedNotes.edit().push_back(later);
               water.weedNotes.edit().back().id = WeedNoteId(53);
           }});
    checkIdle("known", [&](OpenWater& open) { edits::addWeedNotes(open, {known}); });
    check({"Remove weed note",
           {Part::weedNotes},
           [](OpenWater& open) { edits::removeWeedNote(open, WeedNoteId(31)); },
           [](Water& water) { water.weedNotes.edit().clear(); }});
    checkIdle("none", [](OpenWater& open) { edits::removeWeedNote(open, WeedNoteId(21)); });
}

TEST_F(Edits, OfSurveyDays) {
    soundings::SurveyDay third;
    third.name = "third";
    third.soundings.edit().assign(2, {{3.105, 55.203}, units::Depth::metres(4.0), std::nullopt});
    check({"Bring in third",
           {Part::days},
           [&](OpenWater& open) { EXPECT_TRUE(edits::addSurveyDay(open, third).has_value()); },
           [&](Water& water) {
               water.days.push_back(third);
               water.days.back().id = SurveyDayId(52);
           }});
    check({"Remove survey day",
           {Part::days},
           [](OpenWater& open) { edits::removeSurveyDay(open, SurveyDayId(8)); },
           [](Water& water) { water.days.erase(water.days.begin()); }});
    check({"Set draft",
           {Part::days},
           [](OpenWater& open) {
               edits::changeSurveyDay(open, "Set draft", SurveyDayId(3),
                                      [](soundings::SurveyDay& day) {
                                          day.sounder.draft = units::Depth::metres(0.4);
                                      });
           },
           [](Water& water) { water.days[1].sounder.draft = units::Depth::metres(0.4); }});
    checkIdle("none", [](OpenWater& open) {
        edits::changeSurveyDay(open, "Set draft", SurveyDayId(21),
                               [](soundings::SurveyDay& day) { day.name = "other"; });
        edits::removeSurveyDay(open, SurveyDayId(21));
    });
}

TEST_F(Edits, OfOffsetsAndDelaysAgreedAndTakenBack) {
    check({"Take out delay",
           {Part::days},
           [](OpenWater& open) { edits::agreeDelay(open, SurveyDayId(3), -1.5); },
           [](Water& water) { water.days[1].agreedDelay_s = -1.5; }});
    check({"Tie survey day",
           {Part::days},
           [](OpenWater& open) {
               edits::agreeOffset(open, SurveyDayId(8), units::Length::metres(-0.12));
           },
           [](Water& water) { water.days[0].agreedOffset = units::Length::metres(-0.12); }});
    Water agreed = full();
    for (soundings::SurveyDay& day : agreed.days) {
        day.agreedDelay_s = 1.0;
        day.agreedOffset = units::Length::metres(0.25);
    }
    fillWith(agreed);
    check({"Take back delay",
           {Part::days},
           [](OpenWater& open) { edits::agreeDelay(open, SurveyDayId(8), std::nullopt); },
           [](Water& water) { water.days[0].agreedDelay_s.reset(); }});
    check({"Untie survey day",
           {Part::days},
           [](OpenWater& open) { edits::agreeOffset(open, SurveyDayId(3), std::nullopt); },
           [](Water& water) { water.days[1].agreedOffset.reset(); }});
}

TEST_F(Edits, OfSoundingsSetAside) {
    using Positions = std::vector<std::size_t>;
    check({"Set soundings aside",
           {Part::days},
           [](OpenWater& open) {
               edits::setAsideSoundings(open, {{}, {0, 2, 4}});
           },
           [](Water& water) {
               water.days[1].setAsideByHand = Positions{0, 1, 2, 4};
               water.days[1].keptByHand = Positions{5};
           }});
    check({"Set soundings aside",
           {Part::days},
           [](OpenWater& open) { edits::setAsideSoundings(open, {{5}}); },
           [](Water& water) {
               water.days[0].setAsideByHand = Positions{1, 4, 5};
               water.days[0].keptByHand = Positions{2};
           }});
    checkIdle("aside already", [](OpenWater& open) {
        edits::setAsideSoundings(open, {{1, 4}, {4}, {0}});
    });
}

TEST_F(Edits, OfTheLog) {
    logbook::Stay between;
    between.start = units::Moment(std::chrono::hours(15));
    between.end = between.start + std::chrono::hours(1);
    between.runs.resize(2);
    between.runs[1].time = between.start;
    logbook::Stay first = between;
    first.start = units::Moment(std::chrono::hours(5));
    first.end = first.start + std::chrono::hours(1);
    first.runs.resize(1);
    const logbook::Log brought{between, first}; // without numbers yet
    check({"Bring in log",
           {Part::log},
           [&](OpenWater& open) {
               EXPECT_EQ(edits::addStays(open, "Bring in log", brought), StayId(52));
           },
           [&](Water& water) {
               between.id = StayId(52);
               between.runs[0].id = FishId(53);
               between.runs[1].id = FishId(54);
               first.id = StayId(55);
               first.runs[0].id = FishId(56);
               water.log = {first, water.log[0], between, water.log[1]};
           }});
    checkIdle("none", [](OpenWater& open) {
        EXPECT_FALSE(edits::addStays(open, "Bring in log", {}).isGiven());
        edits::removeStay(open, StayId(51));
        edits::changeStay(open, "Change stay", StayId(51),
                          [](logbook::Stay& stay) { stay.rods = 3; });
    });
    check({"Set bait",
           {Part::log},
           [](OpenWater& open) {
               edits::changeStay(open, "Set bait", StayId(41),
                                 [](logbook::Stay& stay) { stay.bait = "roach"; });
           },
           [](Water& water) { water.log.edit(0).bait = "roach"; }});
    check({"Remove stay",
           {Part::log},
           [](OpenWater& open) { edits::removeStay(open, StayId(41)); },
           [](Water& water) { water.log.erase(0); }});
}

TEST_F(Edits, OfOneStayGiveItsNewFishNumbersAndKeepTheOrderOfTime) {
    check({"Add fish",
           {Part::log},
           [](OpenWater& open) {
               edits::changeStay(open, "Add fish", StayId(42), [](logbook::Stay& stay) {
                   logbook::Fish later;
                   later.time = stay.start + std::chrono::minutes(90);
                   logbook::Fish earlier;
                   earlier.time = stay.start + std::chrono::minutes(30);
                   stay.runs.push_back(later);
                   stay.runs.push_back(earlier);
               });
           },
           [](Water& water) {
               logbook::Stay& stay = water.log.edit(1);
               const logbook::Fish known = stay.runs[0];
               stay.runs.assign(3, logbook::Fish());
               stay.runs[0].id = FishId(53);
               stay.runs[0].time = stay.start + std::chrono::minutes(30);
               stay.runs[1] = known;
               stay.runs[2].id = FishId(52);
               stay.runs[2].time = stay.start + std::chrono::minutes(90);
           }});
    check({"Change times",
           {Part::log},
           [](OpenWater& open) {
               edits::changeStay(open, "Change times", StayId(42), [](logbook::Stay& stay) {
                   stay.start = units::Moment(std::chrono::hours(1));
               });
           },
           [](Water& water) {
               water.log = {water.log[1], water.log[0]};
               water.log.edit(0).start = units::Moment(std::chrono::hours(1));
           }});
}

TEST_F(Edits, OfFactsSettingsRulesAndPlan) {
    check({"Set level",
           {Part::facts, Part::plan},
           [](OpenWater& open) {
               edits::changeFacts(open, "Set level", [](Water& water) {
                   water.chartLevel = units::WaterLevel::metresOnGauge(1.5);
                   water.plan.day.levelChange = units::Length::metres(0.25);
                   water.name = "Other";
                   water.places.push_back({"jetty", newPlace});
               });
           },
           [](Water& water) {
               water.chartLevel = units::WaterLevel::metresOnGauge(1.5);
               water.plan.day.levelChange = units::Length::metres(0.25);
               water.name = "Other";
               water.places.push_back({"jetty", newPlace});
           }});
    check({"Set cell",
           {Part::facts},
           [](OpenWater& open) {
               EXPECT_TRUE(edits::changeSettings(open, "Set cell", [](water::Settings& settings) {
                               settings.cell = units::Length::metres(2.5);
                           }).has_value());
           },
           [](Water& water) { water.settings.cell = units::Length::metres(2.5); }});
    logbook::HouseRules rules;
    rules.rodLimit = 2;
    rules.notes = {"barbless"};
    check({"Set house rules",
           {Part::houseRules},
           [&](OpenWater& open) { edits::setHouseRules(open, rules); },
           [&](Water& water) { water.houseRules = rules; }});
    check({"Set wind",
           {Part::plan},
           [](OpenWater& open) {
               edits::setPlan(open, "Set wind", [](marks::Plan& plan) {
                   plan.day.wind.from = units::Bearing::degrees(240.0);
               });
           },
           [](Water& water) { water.plan.day.wind.from = units::Bearing::degrees(240.0); }});
    checkIdle("out of range", [](OpenWater& open) {
        const auto set = edits::changeSettings(open, "Set cell", [](water::Settings& settings) {
            settings.cell = units::Length::metres(0.4);
        });
        ASSERT_FALSE(set.has_value());
        EXPECT_EQ(set.error().kind, base::ErrorKind::wrongUse);
        water::Settings wrong;
        wrong.cell = units::Length::metres(0.4);
        EXPECT_EQ(set.error().what, water::problemsIn(wrong).front());
    });
}

TEST_F(Edits, OfPinnedMarks) {
    const geo::LonLat second = open_.water()->pinnedMarks[1].place;
    check({"Keep mark",
           {Part::plan},
           [](OpenWater& open) {
               edits::pinMark(open, newPlace, {"third", newPlace});
           },
           [](Water& water) {
               water.pinnedMarks.push_back({"third", newPlace});
           }});
    check({"Keep mark",
           {Part::plan},
           [&](OpenWater& open) {
               edits::pinMark(open, second, {"moved", newPlace});
           },
           [second](Water& water) {
               water.pinnedMarks[1] = {"moved", newPlace};
               std::ranges::replace(water.dayByHand.order, second, newPlace);
               for (water::DayByHand::Stay& stay : water.dayByHand.stays) {
                   stay.place = stay.place == second ? newPlace : stay.place;
               }
           }});
    check({"Let mark go",
           {Part::plan},
           [&](OpenWater& open) { edits::unpinMark(open, second); },
           [](Water& water) { water.pinnedMarks.pop_back(); }});
    checkIdle("none", [](OpenWater& open) { edits::unpinMark(open, newPlace); });
    const water::PinnedMark laid{"third", newPlace, {second, {}, {second}, {}}};
    check({"Lay bow anchor",
           {Part::plan},
           [&](OpenWater& open) { edits::layByHand(open, "Lay bow anchor", newPlace, laid); },
           [&](Water& water) { water.pinnedMarks.push_back(laid); }});
    checkIdle("nothing laid", [](OpenWater& open) {
        edits::layByHand(open, "Lay bow anchor", newPlace, {"third", newPlace});
    });
}

TEST_F(Edits, OfBannedWater) {
    const geo::LonLat second = open_.water()->pinnedMarks[1].place;
    const units::Length radius = units::Length::metres(60.0);
    check({"Ban mark",
           {Part::plan},
           [&](OpenWater& open) { edits::banRound(open, newPlace, radius, "Snags"); },
           [&](Water& water) {
               water.banned.push_back(water::bannedRound(newPlace, radius, "Snags"));
           }});
    check({"Ban mark",
           {Part::plan},
           [&](OpenWater& open) { edits::banRound(open, second, radius, {}); },
           [&](Water& water) {
               water.banned.push_back(water::bannedRound(second, radius, {}));
               water.pinnedMarks.pop_back();
           }});
    const geo::LonLatRing ring{{3.101, 55.201}, {3.102, 55.201}, {3.102, 55.202}};
    check({"Ban water",
           {Part::plan},
           [&](OpenWater& open) {
               edits::banWater(open, {"roots", ring});
           },
           [&](Water& water) {
               water.banned.push_back({"roots", ring});
           }});
    check({"Lift ban",
           {Part::plan},
           [](OpenWater& open) { edits::liftBan(open, 0); },
           [](Water& water) { water.banned.erase(water.banned.begin()); }});
    check({"Name banned water",
           {Part::plan},
           [](OpenWater& open) { edits::nameBan(open, 1, "roots"); },
           [](Water& water) { water.banned[1].name = "roots"; }});
    checkIdle("none", [](OpenWater& open) { edits::liftBan(open, 2); });
    checkIdle("none to name", [](OpenWater& open) { edits::nameBan(open, 2, "roots"); });
    checkIdle("too wide", [](OpenWater& open) {
        edits::banRound(open, newPlace, units::Length::kilometres(2.1), {});
    });
}

TEST_F(Edits, OfProfilesOfBeliefs) {
    check({"Save beliefs",
           {Part::plan},
           [](OpenWater& open) { edits::saveProfile(open, "summer"); },
           [](Water& water) {
               water.beliefProfiles.push_back({"summer", water.plan.weights});
           }});
    check({"Use saved beliefs",
           {Part::plan},
           [](OpenWater& open) { edits::takeProfile(open, "spring"); },
           [](Water& water) { water.plan.weights.set(marks::FactorKind::shelter, 1.75); }});
    check({"Name saved beliefs",
           {Part::plan},
           [](OpenWater& open) { edits::nameProfile(open, "spring", "May"); },
           [](Water& water) { water.beliefProfiles[1].name = "May"; }});
    check({"Remove saved beliefs",
           {Part::plan},
           [](OpenWater& open) { edits::removeProfile(open, "autumn"); },
           [](Water& water) { water.beliefProfiles.erase(water.beliefProfiles.begin()); }});
    checkIdle("as it is", [](OpenWater& open) { edits::takeProfile(open, "autumn"); });
    checkIdle("none", [](OpenWater& open) { edits::takeProfile(open, "summer"); });
}

TEST_F(Edits, OfTheDayByHand) {
    const geo::LonLat a{3.106, 55.202};
    const geo::LonLat b{3.107, 55.202};
    check({"Order the day",
           {Part::plan},
           [&](OpenWater& open) {
               edits::orderDay(open, {b, a});
           },
           [&](Water& water) {
               water.dayByHand.order = {b, a};
           }});
    check({"Give the order back",
           {Part::plan},
           [](OpenWater& open) { edits::freeOrder(open); },
           [](Water& water) { water.dayByHand.order.clear(); }});
    check({"Set stay",
           {Part::plan},
           [&](OpenWater& open) { edits::setStayAt(open, a, std::chrono::minutes(25)); },
           [&](Water& water) {
               water.dayByHand.stays.push_back({a, std::chrono::minutes(25)});
           }});
    check({"Set stay",
           {Part::plan},
           [&](OpenWater& open) { edits::setStayAt(open, b, std::nullopt); },
           [](Water& water) { water.dayByHand.stays.clear(); }});
    checkIdle("the same order", [&](OpenWater& open) { edits::orderDay(open, {a, b}); });
}

TEST_F(Edits, OfOneGestureAreUndoneAsOneAndOfAnotherAreNot) {
    const Water before = *open_.water();
    const int steps = open_.undoStack().index();
    const auto weigh = [this](double weight, edits::Gesture gesture) {
        edits::setPlan(
            open_, "Weigh",
            [weight](marks::Plan& plan) { plan.weights.set(marks::FactorKind::depth, weight); },
            gesture);
    };
    const edits::Gesture first = edits::newGesture();
    weigh(1.1, first);
    weigh(1.2, first);
    weigh(1.3, first);
    EXPECT_EQ(open_.undoStack().index(), steps + 1);
    const edits::Gesture second = edits::newGesture();
    weigh(1.4, second);
    weigh(1.5, second);
    weigh(1.6, edits::Gesture::none);
    weigh(1.7, edits::Gesture::none);
    EXPECT_EQ(open_.undoStack().index(), steps + 4);
    for (const double weight : {1.6, 1.5, 1.3}) {
        open_.undoStack().undo();
        EXPECT_EQ(open_.water()->plan.weights.of(marks::FactorKind::depth), weight);
    }
    open_.undoStack().undo();
    EXPECT_TRUE(*open_.water() == before);
    open_.undoStack().redo();
    EXPECT_EQ(open_.water()->plan.weights.of(marks::FactorKind::depth), 1.3);
    open_.undoStack().undo();
    EXPECT_TRUE(inFile() == before);
}

TEST_F(Edits, OfAGestureThatCameBackToItsStartLeaveNothingToUndo) {
    const Water before = *open_.water();
    const int steps = open_.undoStack().index();
    const edits::Gesture gesture = edits::newGesture();
    for (const double tryNew : {0.7, 0.9, before.plan.tryNew}) {
        edits::setPlan(
            open_, "Weigh", [tryNew](marks::Plan& plan) { plan.tryNew = tryNew; }, gesture);
    }
    EXPECT_EQ(open_.undoStack().index(), steps);
    EXPECT_TRUE(*open_.water() == before);
    EXPECT_TRUE(inFile() == before);
}

TEST_F(Edits, AreUndoneOneByOneInTheOrderInWhichTheyWereMade) {
    const Water before = *open_.water();
    edits::unpinMark(open_, before.pinnedMarks[0].place);
    const Water between = *open_.water();
    edits::removeStay(open_, StayId(42));
    open_.undoStack().undo();
    EXPECT_TRUE(*open_.water() == between);
    open_.undoStack().undo();
    EXPECT_TRUE(*open_.water() == before);
    EXPECT_TRUE(inFile() == before);
}

} // namespace
