// SPDX-License-Identifier: GPL-3.0-or-later
// Every field of the survey day: what is typed reaches the member that it names and no other, in
// both unit systems, is shown again, refused beyond its range, and undone.
#include "app/edits/add_lead_line.h"
#include "app/edits/add_survey_day.h"
#include "app/edits/add_weed_notes.h"
#include "app/edits/change_settings.h"
#include "app/edits/set_shoreline.h"
#include "tests/app/days/desk.h"
#include "tests/support/bowl.h"

#include <QSlider>

#include <cmath>
#include <functional>
#include <limits>

namespace {

using preferences::UnitSystem;
using water::Water;

/// One field: where it is, what is typed, and what of the water it changes.
struct Typed {
    int step;
    const char* field;
    UnitSystem units;
    const char* text;
    const char* shown;
    std::function<double(const Water&)> member;
    double value;
};

class SurveyFields : public support::Desk {
protected:
    void SetUp() override {
        Desk::SetUp();
        ASSERT_TRUE(edits::changeSettings(open_, "cell", [](water::Settings& settings) {
            settings.cell = units::Length::metres(20.0); // quickly drawn
        }));
        soundings::SurveyDay day = support::bowlDay();
        for (std::size_t i = 0; i < 25; ++i) {
            day.soundings.edit()[i] = day.soundings[36 * i]; // few are quickly drawn
        }
        day.soundings.edit().resize(25);
        day.name = "first";
        ASSERT_TRUE(edits::addSurveyDay(open_, day));
        day.name = "second";
        day.soundings.edit()[0].shown += units::Depth::metres(0.1); // Else they are the same again.
        ASSERT_TRUE(edits::addSurveyDay(open_, day));
        open_.jobs().finishAll();
    }
    /// The numbers of the sections are noted with every map, by no edit.
    static Water withoutNumbers(Water water) {
        water.numbering = {};
        return water;
    }
    /// The water with what these fields may change taken out, to see that nothing else changed.
    static Water without(Water water) {
        water = withoutNumbers(std::move(water));
        water.settings = {};
        water.plan.day.levelChange = {};
        water.plan.tackle.boatSpeed = {};
        water.chartLevel = {};
        for (auto& day : water.days) {
            day.gauge = {};
            day.waterTemperature.reset();
            day.sounder = {};
        }
        return water;
    }
};

double gaugeOf(const Water& water, std::size_t day) {
    const auto level = water.days.at(day).gauge.constantLevel();
    return level ? (*level - units::WaterLevel()).inMetres()
                 : std::numeric_limits<double>::quiet_NaN();
}

std::vector<Typed> allFields() {
    const auto metric = UnitSystem::metric;
    const auto imperial = UnitSystem::imperial;
    const auto level = [](const Water& w) { return gaugeOf(w, 1); };
    const auto warm = [](const Water& w) { return w.days[1].waterTemperature.value().inCelsius(); };
    const auto draft = [](const Water& w) { return w.days[1].sounder.draft.inMetres(); };
    const auto sound = [](const Water& w) {
        return w.days[1].sounder.assumedSoundSpeed.inMetresPerSecond();
    };
    const auto chart = [](const Water& w) {
        return (w.chartLevel - units::WaterLevel()).inMetres();
    };
    const auto cell = [](const Water& w) { return w.settings.cell.value().inMetres(); };
    const auto today = [](const Water& w) { return w.plan.day.levelChange.inMetres(); };
    const auto edge = [](std::size_t k) {
        return [k](const Water& w) { return w.settings.bands->edges().at(k).inMetres(); };
    };
    const auto limit = [](const Water& w) { return w.settings.limit.value().inMetres(); };
    const auto steep = [](const Water& w) {
        return w.settings.structure.dropOffFrom_percent.value();
    };
    const auto high = [](const Water& w) {
        return w.settings.structure.highGround.value().inMetres();
    };
    const auto least = [](const Water& w) {
        return w.settings.structure.leastArea.value().inHectares();
    };
    const auto fine = [](const Water& w) {
        return w.settings.structure.fineScale.value().inMetres();
    };
    const auto broad = [](const Water& w) {
        return w.settings.structure.broadScale.value().inMetres();
    };
    const auto clear = [](const Water& w) { return w.settings.secchi.value().inMetres(); };
    const auto size = [](const Water& w) { return w.settings.sectionArea->inHectares(); };
    const auto boat = [](const Water& w) { return w.plan.tackle.boatSpeed.inMetresPerSecond(); };
    return {
        {0, "Level", metric, "0.35", "+0.35 m", level, 0.35},
        {0, "Level", metric, "-1.2 m", "−1.20 m", level, -1.2},
        {0, "Level", imperial, "2", "+2.0 ft", level, 0.6096},
        {0, "Water", metric, "12.5", "12.5 °C", warm, 12.5},
        {0, "Water", imperial, "54", "54.0 °F", warm, 220.0 / 18.0},
        {0, "Draft", metric, "0.25", "0.25 m", draft, 0.25},
        {0, "Draft", imperial, "1", "1.00 ft", draft, 0.3048},
        {0, "Sound speed set in the sounder", metric, "1463", "1463 m/s", sound, 1463.0},
        {0, "Sound speed set in the sounder", imperial, "4800", "4800 ft/s", sound,
         4800.0 * 0.3048},
        {0, "Sound speed set in the sounder", imperial, "1450 m/s", "4757 ft/s", sound, 1450.0},
        {1, "Chart level", metric, "12.3", "+12.30 m", chart, 12.3},
        {1, "Chart level", imperial, "10", "+10.0 ft", chart, 3.048},
        {3, "Cell", metric, "6", "6.0 m", cell, 6.0},
        {3, "Cell", imperial, "20", "20 ft", cell, 6.096},
        {3, "Level today", metric, "-0.4", "−0.40 m", today, -0.4},
        {3, "Level today", imperial, "1", "+1.0 ft", today, 0.3048},
        {4, "Band edges", metric, "1, 3", "1, 3 m", edge(1), 3.0},
        {4, "Band edges", imperial, "10 20", "10, 20 ft", edge(0), 3.048},
        {4, "Limit", metric, "7.5", "7.5 m", limit, 7.5},
        {4, "Limit", imperial, "25", "25 ft", limit, 7.62},
        {4, "Drop-off from", metric, "14", "14 %", steep, 14.0},
        {4, "High ground from", metric, "0.6", "0.60 m", high, 0.6},
        {4, "High ground from", imperial, "2", "2.00 ft", high, 0.6096},
        {4, "Least size", metric, "0.2", "0.2 ha", least, 0.2},
        {4, "Least size", imperial, "1", "1.0 ac", least, 0.40468564224},
        {4, "Fine scale", metric, "12", "12.0 m", fine, 12.0},
        {4, "Fine scale", imperial, "40", "40 ft", fine, 12.192},
        {4, "Broad scale", metric, "80", "80.0 m", broad, 80.0},
        {4, "Broad scale", imperial, "200", "200 ft", broad, 60.96},
        {5, "Clarity", metric, "2.5", "2.5 m", clear, 2.5},
        {5, "Clarity", imperial, "8", "8.0 ft", clear, 2.4384},
        {6, "Wanted size", metric, "2.5", "2.5 ha", size, 2.5},
        {6, "Wanted size", imperial, "10", "10.0 ac", size, 4.0468564224},
        {7, "Boat speed", metric, "2.5", "2.5 m/s", boat, 2.5},
        {7, "Boat speed", imperial, "4", "4 mph", boat, 1.78816},
    };
}

TEST_F(SurveyFields, ReachExactlyTheMemberThatTheyNameShowItAndCanBeUndone) {
    for (const Typed& typed : allFields()) {
        SCOPED_TRACE(QStringLiteral("%1: %2").arg(typed.field, typed.text).toStdString());
        preferences_.setUnits(typed.units);
        openStep(typed.step);
        if (typed.step == 0) {
            named<widgets::PlainTable>("").selectRow(1);
        }
        const Water before = water();
        type(typed.field, typed.text);
        open_.jobs().finishAll();
        EXPECT_FALSE(field(typed.field).isWrong());
        EXPECT_NO_THROW(EXPECT_NEAR(typed.member(water()), typed.value, 1e-9));
        EXPECT_EQ(field(typed.field).text(), QString::fromUtf8(typed.shown));
        EXPECT_EQ(without(water()), without(before));
        EXPECT_EQ(water().days[0], before.days[0]) << "the other day";
        open_.undoStack().undo();
        EXPECT_EQ(withoutNumbers(water()), withoutNumbers(before));
        open_.jobs().finishAll();
    }
}

TEST_F(SurveyFields, LeaveEveryOtherMemberAlone) {
    // Typed one after the other, each is there at the end.
    preferences_.setUnits(UnitSystem::metric);
    std::vector<Typed> last;
    for (const Typed& typed : allFields()) {
        if (typed.units != UnitSystem::metric || QString(typed.text) == "0.35") {
            continue;
        }
        openStep(typed.step);
        if (typed.step == 0) {
            named<widgets::PlainTable>("").selectRow(1);
        }
        type(typed.field, typed.text);
        last.push_back(typed);
    }
    for (const Typed& typed : last) {
        EXPECT_NO_THROW(EXPECT_NEAR(typed.member(water()), typed.value, 1e-9)) << typed.field;
    }
    open_.jobs().finishAll();
}

TEST_F(SurveyFields, RefuseWhatIsOutOfRangeAndTakeWhatIsJustWithin) {
    struct Case {
        int step;
        const char* field;
        const char* wrong;
        const char* right;
    };
    preferences_.setUnits(UnitSystem::metric);
    for (const Case& c : {Case{0, "Draft", "3.01", "3"},
                          Case{0, "Draft", "-0.01", "0"},
                          Case{0, "Sound speed set in the sounder", "1299", "1300"},
                          Case{0, "Sound speed set in the sounder", "1701", "1700"},
                          Case{0, "Level", "high", "0"},
                          Case{0, "Water", "warm", "4"},
                          Case{4, "Band edges", "4, 2", "2, 4"},
                          Case{4, "Limit", "0", "0.1"},
                          Case{4, "Drop-off from", "0.9", "1"},
                          Case{4, "Drop-off from", "201", "200"},
                          Case{4, "High ground from", "21", "20"},
                          Case{4, "Least size", "10.1", "10"},
                          Case{4, "Fine scale", "2.9", "3"},
                          Case{4, "Broad scale", "501", "500"},
                          Case{5, "Clarity", "0.09", "0.1"},
                          Case{5, "Clarity", "40.1", "40"},
                          Case{6, "Wanted size", "0.09", "0.1"},
                          Case{6, "Wanted size", "1001", "1000"},
                          Case{7, "Boat speed", "0.2", "0.3"},
                          Case{7, "Boat speed", "8.1", "8"}}) {
        SCOPED_TRACE(c.field);
        openStep(c.step);
        if (c.step == 0) {
            named<widgets::PlainTable>("").selectRow(1);
        }
        const Water before = water();
        type(c.field, c.wrong);
        EXPECT_TRUE(field(c.field).isWrong()) << c.wrong;
        EXPECT_EQ(water(), before) << c.wrong;
        type(c.field, c.right);
        EXPECT_FALSE(field(c.field).isWrong()) << c.right;
    }
    open_.jobs().finishAll();
}

TEST_F(SurveyFields, EmptyMeansNotKnownWhereThatMayBe) {
    preferences_.setUnits(UnitSystem::metric);
    const auto typedAndCleared = [&](int step, const char* name, const char* text) {
        openStep(step);
        if (step == 0) {
            named<widgets::PlainTable>("").selectRow(1);
        }
        type(name, text);
        type(name, "");
        EXPECT_FALSE(field(name).isWrong()) << name;
        EXPECT_EQ(field(name).text(), "") << name;
    };
    typedAndCleared(0, "Level", "0.35");
    EXPECT_FALSE(water().days[1].gauge.isKnown());
    typedAndCleared(0, "Water", "12");
    EXPECT_FALSE(water().days[1].waterTemperature);
    typedAndCleared(3, "Cell", "6");
    EXPECT_FALSE(water().settings.cell);
    typedAndCleared(4, "Drop-off from", "20");
    EXPECT_FALSE(water().settings.structure.dropOffFrom_percent);
    typedAndCleared(4, "Limit", "7 m");
    EXPECT_FALSE(water().settings.limit);
    typedAndCleared(4, "Band edges", "1 m, 5 m");
    EXPECT_FALSE(water().settings.bands);
    typedAndCleared(6, "Wanted size", "2 ha");
    EXPECT_FALSE(water().settings.sectionArea);
    typedAndCleared(5, "Clarity", "2");
    EXPECT_FALSE(water().settings.secchi);
    openStep(1);
    type("Chart level", "");
    EXPECT_TRUE(field("Chart level").isWrong()) << "there is always one";
    open_.jobs().finishAll();
}

TEST_F(SurveyFields, TheBandEdgesKeepTheLimitAndTheLimitTheEdges) {
    openStep(4);
    type("Limit", "8 m");
    EXPECT_FALSE(water().settings.bands) << "steps are chosen for it";
    EXPECT_EQ(water().settings.limit, units::Depth::metres(8.0));
    open_.jobs().finishAll();
    type("Band edges", "1 m, 5 m");
    EXPECT_EQ(water().settings.bands->limit(), units::Depth::metres(8.0));
    const auto edges = water().settings.bands->edges();
    type("Limit", "7 m");
    EXPECT_EQ(water().settings.bands->edges(), edges);
    EXPECT_EQ(water().settings.bands->limit(), units::Depth::metres(7.0));
    type("Band edges", "");
    EXPECT_FALSE(water().settings.bands);
    EXPECT_EQ(water().settings.limit, units::Depth::metres(7.0)) << "it was the user's";
    open_.jobs().finishAll();
}

TEST_F(SurveyFields, HowMuchWeedIsLeftGoesByTheSlider) {
    openStep(5);
    auto& slider = named<QSlider>("Weed still standing");
    slider.setFocus();
    EXPECT_EQ(slider.value(), 100);
    QTest::keyClick(&slider, Qt::Key_PageDown);
    EXPECT_TRUE(QTest::qWaitFor([&] { return water().settings.weedLeft == 0.9; }));
    EXPECT_TRUE(says("90 %"));
    open_.undoStack().undo();
    turn();
    EXPECT_EQ(slider.value(), 100);
    open_.jobs().finishAll();
}

class EmptyDesk : public support::Desk {};

TEST_F(EmptyDesk, CallsNothingOutOfDateBeforeAnythingWasBroughtIn) {
    int heads = 0;
    for (const QAbstractButton* head : day_.findChildren<QAbstractButton*>()) {
        if (!head->accessibleDescription().isEmpty()) {
            EXPECT_FALSE(head->accessibleDescription().contains("out of date"))
                << head->accessibleDescription().toStdString();
            ++heads;
        }
    }
    EXPECT_EQ(heads, day_.steps().count());
}

} // namespace
