// SPDX-License-Identifier: GPL-3.0-or-later
// Each act does the same to a water whether it is done at the desk, through app/edits, or by the
// function of core that meremark-batch calls.
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
#include "app/edits/change_sections.h"
#include "app/edits/change_settings.h"
#include "app/edits/change_stay.h"
#include "app/edits/change_survey_day.h"
#include "app/edits/change_water.h"
#include "app/edits/lay_by_hand.h"
#include "app/edits/name_section.h"
#include "app/edits/order_day.h"
#include "app/edits/pin_mark.h"
#include "app/edits/remove_lead_line.h"
#include "app/edits/remove_stay.h"
#include "app/edits/remove_survey_day.h"
#include "app/edits/remove_weed_note.h"
#include "app/edits/reshape_shore.h"
#include "app/edits/set_aside_soundings.h"
#include "app/edits/set_house_rules.h"
#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "app/edits/take_back_soundings.h"
#include "app/edits/unpin_mark.h"
#include "core/acts/bans.h"
#include "core/acts/day_by_hand.h"
#include "core/acts/facts.h"
#include "core/acts/notes.h"
#include "core/acts/plan.h"
#include "core/acts/profiles.h"
#include "core/acts/sections.h"
#include "core/acts/shore.h"
#include "core/acts/stays.h"
#include "core/acts/survey_days.h"
#include "core/acts/verdicts.h"

#include "tests/app/edits/edit_case.h"
#include "tests/support/desk_bowl.h"

namespace {

using base::Result;
using edit_case::Edits;
using edit_case::OpenWater;
using edit_case::Water;
using logbook::StayId;
using soundings::SurveyDayId;

/// One act, both ways.
struct Pair {
    const char* name;
    std::function<void(OpenWater&)> atTheDesk;
    std::function<Result<Water>(const Water&)> inCore;
};

class BothWays : public Edits {
protected:
    /// \param isDone false for an act that cannot be done: then the desk says why and changes
    /// nothing.
    void compare(const Pair& act, bool isDone = true) {
        SCOPED_TRACE(act.name);
        std::vector<base::Error> told;
        const auto listening =
            QObject::connect(&open_, &OpenWater::failed,
                             [&told](const base::Error& error) { told.push_back(error); });
        const Water before = *open_.water();
        const Result<Water> after = act.inCore(before);
        ASSERT_EQ(after.has_value(), isDone);
        act.atTheDesk(open_);
        QObject::disconnect(listening);
        EXPECT_TRUE(*open_.water() == after.value_or(before));
        if (isDone) {
            EXPECT_FALSE(*after == before) << "an act that does nothing proves nothing";
            EXPECT_TRUE(told.empty());
        } else {
            EXPECT_FALSE(after.error().whatToDo.empty());
            ASSERT_EQ(told.size(), 1U);
            EXPECT_EQ(told[0].sentence(), after.error().sentence());
        }
        while (open_.undoStack().canUndo()) {
            open_.undoStack().undo();
        }
        open_.undoStack().clear();
        EXPECT_TRUE(*open_.water() == before);
    }
};

const geo::LonLat newPlace{3.108, 55.204};

TEST_F(BothWays, OfSurveyDays) {
    soundings::SurveyDay third;
    third.name = "third";
    third.soundings.edit().assign(3, {{3.105, 55.203}, units::Depth::metres(4.5), std::nullopt});
    compare({"add",
             [&](OpenWater& open) { EXPECT_TRUE(edits::addSurveyDay(open, third).has_value()); },
             [&](const Water& water) { return acts::addSurveyDay(water, third); }});
    compare({"remove", [](OpenWater& open) { edits::removeSurveyDay(open, SurveyDayId(8)); },
             [](const Water& water) { return acts::removeSurveyDay(water, SurveyDayId(8)); }});
    const auto deepen = [](soundings::SurveyDay& day) {
        day.sounder.draft = units::Depth::metres(0.4);
    };
    compare(
        {"change",
         [&](OpenWater& open) { edits::changeSurveyDay(open, "x", SurveyDayId(3), deepen); },
         [&](const Water& water) { return acts::changeSurveyDay(water, SurveyDayId(3), deepen); }});
    compare({"offset",
             [](OpenWater& open) {
                 edits::agreeOffset(open, SurveyDayId(3), units::Length::metres(0.2));
             },
             [](const Water& water) {
                 return acts::agreeOffset(water, SurveyDayId(3), units::Length::metres(0.2));
             }});
    compare({"delay", [](OpenWater& open) { edits::agreeDelay(open, SurveyDayId(8), 1.5); },
             [](const Water& water) { return acts::agreeDelay(water, SurveyDayId(8), 1.5); }});
    const water::SoundingChoice choice{{0}, {2, 3}};
    compare({"set aside", [&](OpenWater& open) { edits::setAsideSoundings(open, choice); },
             [&](const Water& water) { return acts::setAsideSoundings(water, choice); }});
}

TEST_F(BothWays, OfTheShore) {
    const auto at = [](geo::LonLat place) {
        return geo::WaterFrame::centredOn({3.1, 55.2}).value().toWater(place);
    };
    const std::vector<geo::LonLatPiece> other{
        {{{3.101, 55.199}, {3.112, 55.199}, {3.112, 55.208}, {3.101, 55.208}}, {}}};
    compare({"set",
             [&](OpenWater& open) { EXPECT_TRUE(edits::setShoreline(open, other).has_value()); },
             [&](const Water& water) { return acts::setShoreline(water, other); }});
    const geo::WaterPoint to = at({3.112, 55.207});
    compare({"move",
             [&](OpenWater& open) {
                 EXPECT_TRUE(edits::moveShoreCorner(open, {0, 0, 2}, to).has_value());
             },
             [&](const Water& water) {
                 return acts::moveShoreCorner(water, {0, 0, 2}, to);
             }});
    compare({"add",
             [&](OpenWater& open) {
                 EXPECT_TRUE(edits::addShoreCorner(open, {0, 0, 1}, to).has_value());
             },
             [&](const Water& water) {
                 return acts::addShoreCorner(water, {0, 0, 1}, to);
             }});
    compare({"remove",
             [](OpenWater& open) {
                 EXPECT_TRUE(edits::removeShoreCorner(open, {0, 0, 1}).has_value());
             },
             [](const Water& water) {
                 return acts::removeShoreCorner(water, {0, 0, 1});
             }});
    const geo::Ring island{at({3.106, 55.201}), at({3.107, 55.201}), at({3.107, 55.202})};
    compare({"island",
             [&](OpenWater& open) { EXPECT_TRUE(edits::addIsland(open, island).has_value()); },
             [&](const Water& water) { return acts::addIsland(water, island); }});
    const geo::WaterPoint inside = at({3.1038, 55.2043});
    compare({"no island",
             [&](OpenWater& open) { EXPECT_TRUE(edits::removeIslandAt(open, inside).has_value()); },
             [&](const Water& water) { return acts::removeIslandAt(water, inside); }});
    const geo::Ring ring{at({3.09, 55.19}), at({3.12, 55.19}), at({3.12, 55.21})};
    compare({"trace",
             [&](OpenWater& open) { EXPECT_TRUE(edits::traceShore(open, ring).has_value()); },
             [&](const Water& water) { return acts::traceShore(water, ring); }});
}

TEST_F(BothWays, OfNotes) {
    const std::vector<soundings::LeadLineSounding> lead{
        {{}, newPlace, units::Depth::metres(5.0), soundings::Bottom::gravel},
        open_.water()->leadLine[0]};
    compare({"add lead line", [&](OpenWater& open) { edits::addLeadLine(open, lead); },
             [&](const Water& water) { return acts::addLeadLine(water, lead); }});
    soundings::LeadLineSounding deeper = open_.water()->leadLine[1];
    deeper.depth = units::Depth::metres(3.5);
    compare({"change lead line", [&](OpenWater& open) { edits::changeLeadLine(open, deeper); },
             [&](const Water& water) { return acts::changeLeadLine(water, deeper); }});
    compare({"remove lead line", [&](OpenWater& open) { edits::removeLeadLine(open, deeper.id); },
             [&](const Water& water) { return acts::removeLeadLine(water, deeper.id); }});
    const std::vector<weed::WeedNote> notes{{{}, newPlace, weed::Growth::thick, {}},
                                            open_.water()->weedNotes[0]};
    compare({"add weed", [&](OpenWater& open) { edits::addWeedNotes(open, notes); },
             [&](const Water& water) { return acts::addWeedNotes(water, notes); }});
    compare({"remove weed", [&](OpenWater& open) { edits::removeWeedNote(open, notes[1].id); },
             [&](const Water& water) { return acts::removeWeedNote(water, notes[1].id); }});
}

TEST_F(BothWays, OfTheLog) {
    logbook::Stay stay;
    stay.start = units::Moment(std::chrono::hours(15));
    stay.end = stay.start + std::chrono::hours(1);
    stay.runs.resize(1);
    const logbook::Log stays{stay, open_.water()->log[0]};
    compare({"add",
             [&](OpenWater& open) { EXPECT_TRUE(edits::addStays(open, "x", stays).isGiven()); },
             [&](const Water& water) { return acts::addStays(water, stays); }});
    const auto change = [](logbook::Stay& one) {
        one.start -= std::chrono::hours(30);
        one.runs.emplace_back().time = one.start;
    };
    compare({"change", [&](OpenWater& open) { edits::changeStay(open, "x", StayId(42), change); },
             [&](const Water& water) { return acts::changeStay(water, StayId(42), change); }});
    compare({"remove", [](OpenWater& open) { edits::removeStay(open, StayId(42)); },
             [](const Water& water) { return acts::removeStay(water, StayId(42)); }});
}

TEST_F(BothWays, OfWhatIsLaidByHand) {
    const geo::LonLat pinned = open_.water()->pinnedMarks[1].place;
    const water::PinnedMark laid{"laid", newPlace, {newPlace, {}, {newPlace}, {}}};
    compare({"lay by hand",
             [&](OpenWater& open) { edits::layByHand(open, "Lay bait", pinned, laid); },
             [&](const Water& water) { return acts::layByHand(water, pinned, laid); }});
    compare({"nothing is laid", [&](OpenWater& open) { edits::freeLie(open, pinned); },
             [&](const Water& water) { return acts::freeLie(water, pinned); }},
            false);
    edits::layByHand(open_, "Lay bait", pinned, laid);
    open_.undoStack().clear();
    compare({"free the lie", [](OpenWater& open) { edits::freeLie(open, newPlace); },
             [](const Water& water) { return acts::freeLie(water, newPlace); }});
}

TEST_F(BothWays, OfPlanFactsAndRules) {
    marks::Plan plan = open_.water()->plan;
    plan.tackle.scope = 4.5;
    compare({"plan",
             [&](OpenWater& open) {
                 edits::setPlan(open, "x", [](marks::Plan& p) { p.tackle.scope = 4.5; });
             },
             [&](const Water& water) { return acts::setPlan(water, plan); }});
    const geo::LonLat pinned = open_.water()->pinnedMarks[1].place;
    compare({"pin",
             [&](OpenWater& open) {
                 edits::pinMark(open, pinned, {"moved", newPlace});
             },
             [&](const Water& water) {
                 return acts::pinMark(water, pinned, {"moved", newPlace});
             }});
    compare({"unpin", [&](OpenWater& open) { edits::unpinMark(open, pinned); },
             [&](const Water& water) { return acts::unpinMark(water, pinned); }});
    const units::Length radius = units::Length::metres(60.0);
    compare({"ban a mark", [&](OpenWater& open) { edits::banRound(open, pinned, radius, "Snags"); },
             [&](const Water& water) { return acts::banRound(water, pinned, radius, "Snags"); }});
    const water::BannedWater area{"roots", {{3.101, 55.201}, {3.102, 55.201}, {3.102, 55.202}}};
    compare({"ban an area", [&](OpenWater& open) { edits::banWater(open, area); },
             [&](const Water& water) { return acts::banWater(water, area); }});
    compare({"lift a ban", [](OpenWater& open) { edits::liftBan(open, 0); },
             [](const Water& water) { return acts::liftBan(water, 0); }});
    compare({"name a ban", [](OpenWater& open) { edits::nameBan(open, 1, "roots"); },
             [](const Water& water) { return acts::nameBan(water, 1, "roots"); }});
    compare({"save beliefs", [](OpenWater& open) { edits::saveProfile(open, "summer"); },
             [](const Water& water) { return acts::saveProfile(water, "summer"); }});
    compare({"take beliefs", [](OpenWater& open) { edits::takeProfile(open, "spring"); },
             [](const Water& water) { return acts::takeProfile(water, "spring"); }});
    compare({"name beliefs", [](OpenWater& open) { edits::nameProfile(open, "spring", "May"); },
             [](const Water& water) { return acts::nameProfile(water, "spring", "May"); }});
    compare({"remove beliefs", [](OpenWater& open) { edits::removeProfile(open, "autumn"); },
             [](const Water& water) { return acts::removeProfile(water, "autumn"); }});
    const std::vector<geo::LonLat> order{{3.107, 55.202}, {3.106, 55.202}};
    compare({"order", [&](OpenWater& open) { edits::orderDay(open, order); },
             [&](const Water& water) { return acts::orderDay(water, order); }});
    compare({"give back", [](OpenWater& open) { edits::freeOrder(open); },
             [](const Water& water) { return acts::freeOrder(water); }});
    compare({"stay",
             [&](OpenWater& open) { edits::setStayAt(open, pinned, std::chrono::minutes(35)); },
             [&](const Water& water) {
                 return acts::setStayAt(water, pinned, std::chrono::minutes(35));
             }});
    water::Settings settings = open_.water()->settings;
    settings.cell = units::Length::metres(2.5);
    compare({"settings",
             [&](OpenWater& open) {
                 EXPECT_TRUE(edits::changeSettings(open, "x", [&](water::Settings& s) {
                                 s = settings;
                             }).has_value());
             },
             [&](const Water& water) { return acts::setSettings(water, settings); }});
    const auto level = [](Water& w) { w.chartLevel = units::WaterLevel::metresOnGauge(1.5); };
    compare({"facts", [&](OpenWater& open) { edits::changeFacts(open, "x", level); },
             [&](const Water& water) { return acts::changeFacts(water, level); }});
    logbook::HouseRules rules;
    rules.rodLimit = 2;
    compare({"rules", [&](OpenWater& open) { edits::setHouseRules(open, rules); },
             [&](const Water& water) { return acts::setHouseRules(water, rules); }});
}

TEST_F(BothWays, WhatCannotBeDoneIsSaidByBoth) {
    compare({"no such stay", [](OpenWater& open) { edits::removeStay(open, StayId(99)); },
             [](const Water& water) { return acts::removeStay(water, StayId(99)); }},
            false);
    compare({"no such day", [](OpenWater& open) { edits::removeSurveyDay(open, SurveyDayId(99)); },
             [](const Water& water) { return acts::removeSurveyDay(water, SurveyDayId(99)); }},
            false);
    compare({"no such pin", [](OpenWater& open) { edits::unpinMark(open, newPlace); },
             [](const Water& water) { return acts::unpinMark(water, newPlace); }},
            false);
    compare({"no such ban", [](OpenWater& open) { edits::liftBan(open, 2); },
             [](const Water& water) { return acts::liftBan(water, 2); }},
            false);
    const water::BannedWater bow{"", {{3.1, 55.2}, {3.102, 55.202}, {3.102, 55.2}, {3.1, 55.202}}};
    compare({"a line that crosses itself", [&](OpenWater& open) { edits::banWater(open, bow); },
             [&](const Water& water) { return acts::banWater(water, bow); }},
            false);
    compare({"no such beliefs", [](OpenWater& open) { edits::takeProfile(open, "summer"); },
             [](const Water& water) { return acts::takeProfile(water, "summer"); }},
            false);
    compare({"no order", [](OpenWater& open) { edits::orderDay(open, {}); },
             [](const Water& water) { return acts::orderDay(water, {}); }},
            false);
    compare({"too long a stay",
             [](OpenWater& open) { edits::setStayAt(open, newPlace, std::chrono::hours(13)); },
             [](const Water& water) {
                 return acts::setStayAt(water, newPlace, std::chrono::hours(13));
             }},
            false);
    compare({"no such sounding",
             [](OpenWater& open) {
                 edits::setAsideSoundings(open, {{}, {6}});
             },
             [](const Water& water) {
                 return acts::setAsideSoundings(water, {{}, {6}});
             }},
            false);
    compare({"not looked over", [](OpenWater& open) { edits::takeBackSoundings(open, {{1}}); },
             [](const Water& water) {
                 return acts::takeBackSoundings(water, {{1}}, reduction::ReducedSurvey());
             }},
            false);
    compare({"no section", [](OpenWater& open) { edits::nameSection(open, 0, "Bay"); },
             [](const Water& water) { return acts::nameSection(water, {}, 0, "Bay"); }},
            false);
}

class BothWaysOnAMap : public BothWays {
protected:
    void SetUp() override {
        BothWays::SetUp();
        fillWith(Water());
        ASSERT_TRUE(support::layBowl(open_));
        open_.undoStack().clear();
    }
};

TEST_F(BothWaysOnAMap, OfSections) {
    compare({"name", [](OpenWater& open) { edits::nameSection(open, 0, " Heron Bay "); },
             [this](const Water& water) {
                 return acts::nameSection(water, open_.derived(), 0, " Heron Bay ");
             }});
    // Across the middle of the first, as wide as the water.
    const geo::WaterPoint middle = open_.derived().sections->sections[0].middle;
    const geo::Path line{{middle.x_m - 600.0, middle.y_m}, {middle.x_m + 600.0, middle.y_m}};
    compare({"split",
             [&](OpenWater& open) { EXPECT_TRUE(edits::splitSection(open, line).has_value()); },
             [&](const Water& water) { return acts::splitSection(water, open_.derived(), line); }});
}

TEST_F(BothWaysOnAMap, OfSoundingsTakenBack) {
    const auto checked = open_.derived().checked;
    ASSERT_TRUE(checked);
    compare({"aside, then back",
             [](OpenWater& open) {
                 edits::setAsideSoundings(open, {{3, 5}});
                 edits::takeBackSoundings(open, {{5}});
             },
             [&](const Water& water) {
                 return acts::takeBackSoundings(acts::setAsideSoundings(water, {{3, 5}}).value(),
                                                {{5}}, checked->survey);
             }});
}

class Changes : public BothWays {};

TEST_F(Changes, TakeOnlyThePartsThatTheyName) {
    edits::change(open_, "x", {water::Part::facts}, [](Water& w) {
        w.name = "Other";
        w.log = {};
    });
    EXPECT_EQ(open_.water()->name, "Other");
    EXPECT_EQ(open_.water()->log.size(), 2U);
    EXPECT_EQ(told_, (std::vector<std::set<water::Part>>{{water::Part::facts}}));
}

} // namespace
