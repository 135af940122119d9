// SPDX-License-Identifier: GPL-3.0-or-later
// Every field of the form of a stay and of a run: what it shows, what typing into it changes, in
// both systems of units, and that nothing else changes.
#include "app/days/chart_link.h"
#include "app/days/looking_back/stay_form.h"
#include "app/edits/add_stays.h"
#include "app/widgets/amount_field.h"
#include "core/geo/water_frame.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using preferences::UnitSystem;
using units::Length;
using widgets::AmountField;

namespace {

units::Moment at(const char* text) {
    return units::momentFrom(text, units::Clock()).value_or(units::Moment());
}

geo::LonLat north30(geo::LonLat place) {
    return geo::destination(place, {Length::metres(30), units::Bearing::degrees(0)});
}

/// Two stays; the second has two runs. Everything is known of it and its second run.
logbook::Log twoStays() {
    logbook::Log log(2);
    log[0].start = at("2026-10-03 08:00");
    log[0].end = at("2026-10-03 09:00");
    log[0].place = {3.1, 55.2};
    log[0].rods = 1;
    log[0].bait = "roach";
    logbook::Stay& stay = log[1];
    stay.start = at("2026-10-03 10:05");
    stay.end = at("2026-10-03 12:30");
    stay.place = {3.2, 55.3};
    stay.rods = 3;
    stay.bait = "smelt";
    stay.note = "slow";
    stay.conditions = {units::Bearing::degrees(300), units::Speed::metresPerSecond(6.0),
                       units::Temperature::celsius(8.5), units::WaterLevel::metresOnGauge(0.3048),
                       "overcast"};
    stay.who = "Anna, Ben";
    stay.runs.resize(2);
    stay.runs[0].time = at("2026-10-03 10:30");
    logbook::Fish& fish = stay.runs[1];
    fish.time = at("2026-10-03 11:20");
    fish.species = "pike";
    fish.bait = "lamprey";
    fish.weight = units::Weight::kilograms(5.67);
    fish.length = units::Length::metres(0.78);
    fish.baitDepth = units::Depth::metres(3.6);
    fish.note = "lost the knot";
    fish.hooked = "scissors";
    fish.returned = true;
    fish.who = "Ben";
    fish.photograph = "photographs/pike.jpg";
    stay.baitPlace = north30(stay.place);
    fish.baitPlace =
        geo::destination(stay.place, {Length::metres(25), units::Bearing::degrees(90)});
    return log;
}

class StayForm : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
        edits::addStays(open_, "Add stays", twoStays());
        preferences_.setUnits(UnitSystem::metric);
    }
    void TearDown() override { preferences_.setUnits(UnitSystem::metric); }

    [[nodiscard]] const logbook::Stay& stay() const { return open_.water()->log[1]; }
    void show(bool isRun) { form_.show(stay().id, isRun ? stay().runs[1].id : logbook::FishId()); }
    /// The field of that name in the part that is shown.
    AmountField* field(const QString& name) {
        for (AmountField* one : form_.findChildren<AmountField*>()) {
            if (one->accessibleName() == name && one->isVisibleTo(&form_)) {
                return one;
            }
        }
        ADD_FAILURE() << "no field " << name.toStdString();
        return nullptr;
    }
    static void type(AmountField* field, const QString& text) {
        ASSERT_NE(field, nullptr);
        field->setFocus();
        field->selectAll();
        QTest::keyClick(field, Qt::Key_Delete);
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
    }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::looking_back::StayForm form_{days::DayContext{open_, preferences_, chart_}};
};

struct ShownRow {
    bool isRun;
    const char* name;
    QString metric;
    QString imperial;
};

TEST_F(StayForm, ShowsEveryMemberInItsOwnField) {
    const std::vector<ShownRow> rows{
        {false, "From", "2026-10-03 10:05", "2026-10-03 10:05"},
        {false, "To", "2026-10-03 12:30", "2026-10-03 12:30"},
        {false, "Rods", "3", "3"},
        {false, "Bait", "smelt", "smelt"},
        {false, "Baits at", "000° 30 m", "000° 98 ft"},
        {false, "Wind from", "300°", "300°"},
        {false, "Wind speed", "6 m/s", "13 mph"},
        {false, "Water", "8.5 °C", "47.3 °F"},
        {false, "Level", "+0.30 m", "+1.0 ft"},
        {false, "Sky", "overcast", "overcast"},
        {false, "Who", "Anna, Ben", "Anna, Ben"},
        {false, "Note", "slow", "slow"},
        {true, "Time", "2026-10-03 11:20", "2026-10-03 11:20"},
        {true, "Species", "pike", "pike"},
        {true, "Weight", "5.67 kg", "12 lb 8 oz"},
        {true, "Length", "78 cm", "30.7 in"},
        {true, "Bait depth", "3.6 m", "11.8 ft"},
        {true, "Bait", "lamprey", "lamprey"},
        {true, "Bait at", "090° 25 m", "090° 82 ft"},
        {true, "Hooked", "scissors", "scissors"},
        {true, "Put back", "yes", "yes"},
        {true, "Who", "Ben", "Ben"},
        {true, "Photograph", "photographs/pike.jpg", "photographs/pike.jpg"},
        {true, "Note", "lost the knot", "lost the knot"}};
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        preferences_.setUnits(units);
        for (const ShownRow& row : rows) {
            show(row.isRun);
            AmountField* shown = field(row.name);
            ASSERT_NE(shown, nullptr);
            EXPECT_EQ(shown->text(), units == UnitSystem::metric ? row.metric : row.imperial)
                << row.name;
        }
    }
}

TEST_F(StayForm, ShowsOneRodAsOneAndTheUnknownAsNothing) {
    form_.show(open_.water()->log[0].id, {});
    EXPECT_EQ(field("Rods")->text(), "1");
    for (const char* name :
         {"Baits at", "Wind from", "Wind speed", "Water", "Level", "Sky", "Who", "Note"}) {
        EXPECT_EQ(field(name)->text(), "") << name;
    }
    form_.show(stay().id, stay().runs[0].id);
    for (const char* name :
         {"Species", "Weight", "Length", "Bait depth", "Bait", "Bait at", "Note"}) {
        EXPECT_EQ(field(name)->text(), "") << name;
    }
    EXPECT_EQ(field("Time")->text(), "2026-10-03 10:30");
}

using Change = void (*)(logbook::Stay&);

struct TypedRow {
    bool isRun;
    const char* name;
    const char* metric;
    const char* imperial;
    Change change; ///< What it does to the stay; null where it is refused.
};

std::vector<TypedRow> typedRows() {
    using logbook::Stay;
    return {
        {false, "From", "9:20", "9:20", [](Stay& s) { s.start = at("2026-10-03 09:20"); }},
        {false, "From", "2026-10-02 23:50", "2026-10-02 23:50",
         [](Stay& s) { // onto another day: as long as before, its fish with it
             s.start = at("2026-10-02 23:50");
             s.end = at("2026-10-03 02:15");
             s.runs[0].time = at("2026-10-03 00:15");
             s.runs[1].time = at("2026-10-03 01:05");
         }},
        {false, "To", "2026-10-04 10:05", "2026-10-04 10:05",
         [](Stay& s) { s.end = at("2026-10-04 10:05"); }},
        {false, "To", "2026-10-04 10:06", "2026-10-04 10:06", nullptr}, // over a day
        {false, "From", "10:31", "10:31", nullptr}, // The first run came at half past ten.
        {false, "From", "10:30", "10:30", [](Stay& s) { s.start = at("2026-10-03 10:30"); }},
        {false, "From", "", "", nullptr},
        {false, "To", "11:20", "11:20", [](Stay& s) { s.end = at("2026-10-03 11:20"); }},
        {false, "To", "11:19", "11:19", nullptr},
        {false, "To", "13:00", "13:00", [](Stay& s) { s.end = at("2026-10-03 13:00"); }},
        {false, "To", "soon", "soon", nullptr},
        {false, "Rods", "1", "1", [](Stay& s) { s.rods = 1; }},
        {false, "Rods", "8", "8", [](Stay& s) { s.rods = 8; }},
        {false, "Rods", "9", "9", nullptr},
        {false, "Rods", "0", "0", nullptr},
        {false, "Rods", "1.5", "1.5", nullptr},
        {false, "Rods", "", "", [](Stay& s) { s.rods.reset(); }},
        {false, "Bait", "perch, roach", "perch, roach", [](Stay& s) { s.bait = "perch, roach"; }},
        {false, "Bait", "", "", [](Stay& s) { s.bait.clear(); }},
        {false, "Baits at", "W 40 m", "40 m 270°",
         [](Stay& s) {
             s.baitPlace =
                 geo::destination(s.place, {Length::metres(40), units::Bearing::degrees(270)});
         }},
        {false, "Baits at", "55.3005 N 3.2005 E", "55.3005, 3.2005",
         [](Stay& s) {
             s.baitPlace = {3.2005, 55.3005};
         }},
        {false, "Baits at", "", "", [](Stay& s) { s.baitPlace.reset(); }},
        {false, "Baits at", "NE", "301 m N", nullptr},
        {false, "Baits at", "56.3 N 3.2 E", "over there", nullptr},
        {true, "Bait at", "N 30 m", "n 30m",
         [](Stay& s) { s.runs[1].baitPlace = north30(s.place); }},
        {true, "Bait at", "", "", [](Stay& s) { s.runs[1].baitPlace.reset(); }},
        {false, "Wind from", "45", "45°",
         [](Stay& s) { s.conditions.windFrom = units::Bearing::degrees(45); }},
        {false, "Wind from", "360", "360",
         [](Stay& s) { s.conditions.windFrom = units::Bearing::degrees(360); }},
        {false, "Wind from", "361", "-1", nullptr},
        {false, "Wind from", "", "", [](Stay& s) { s.conditions.windFrom.reset(); }},
        {false, "Wind speed", "7", "15.6585540 mph",
         [](Stay& s) { s.conditions.windSpeed = units::Speed::metresPerSecond(7); }},
        {false, "Wind speed", "", "", [](Stay& s) { s.conditions.windSpeed.reset(); }},
        {false, "Wind speed", "fresh", "-1", nullptr},
        {false, "Wind speed", "0", "0", [](Stay& s) { s.conditions.windSpeed = units::Speed(); }},
        {false, "Water", "10", "50",
         [](Stay& s) { s.conditions.waterTemperature = units::Temperature::celsius(10); }},
        {false, "Water", "-0.5", "31.1",
         [](Stay& s) { s.conditions.waterTemperature = units::Temperature::celsius(-0.5); }},
        {false, "Water", "", "", [](Stay& s) { s.conditions.waterTemperature.reset(); }},
        {false, "Level", "-0.6096", "-2 ft",
         [](Stay& s) { s.conditions.level = units::WaterLevel::metresOnGauge(-0.6096); }},
        {false, "Level", "", "", [](Stay& s) { s.conditions.level.reset(); }},
        {false, "Level", "high", "high", nullptr},
        {false, "Sky", "rain", "rain", [](Stay& s) { s.conditions.sky = "rain"; }},
        {false, "Who", "Ben", "Ben", [](Stay& s) { s.who = "Ben"; }},
        {false, "Note", "dour", "dour", [](Stay& s) { s.note = "dour"; }},
        {true, "Time", "", "",
         [](Stay& s) {
             s.runs[1].time.reset();
             std::swap(s.runs[0], s.runs[1]); // Those of unknown time first.
         }},
        {true, "Hooked", "throat", "throat", [](Stay& s) { s.runs[1].hooked = "throat"; }},
        {true, "Put back", "n", "No", [](Stay& s) { s.runs[1].returned = false; }},
        {true, "Put back", "", "", [](Stay& s) { s.runs[1].returned.reset(); }},
        {true, "Put back", "maybe", "si", nullptr},
        {true, "Who", "Anna", "Anna", [](Stay& s) { s.runs[1].who = "Anna"; }},
        {true, "Photograph", "p.jpg", "p.jpg", [](Stay& s) { s.runs[1].photograph = "p.jpg"; }},
        {true, "Time", "10:05", "10:05",
         [](Stay& s) {
             s.runs[1].time = at("2026-10-03 10:05");
             std::swap(s.runs[0], s.runs[1]); // By time.
         }},
        {true, "Time", "12:30", "12:30", [](Stay& s) { s.runs[1].time = at("2026-10-03 12:30"); }},
        {true, "Time", "12:31", "10:04", nullptr},
        {true, "Species", "trout", "trout", [](Stay& s) { s.runs[1].species = "trout"; }},
        {true, "Weight", "5.89670081", "13 lb",
         [](Stay& s) { s.runs[1].weight = units::Weight::kilograms(5.89670081); }},
        {true, "Weight", "", "", [](Stay& s) { s.runs[1].weight.reset(); }},
        {true, "Weight", "heavy", "-1 lb", nullptr},
        {true, "Length", "76.2 cm", "30 in",
         [](Stay& s) { s.runs[1].length = units::Length::metres(0.762); }},
        {true, "Length", "-76 cm", "-1 in", nullptr},
        {true, "Length", "", "", [](Stay& s) { s.runs[1].length.reset(); }},
        {true, "Bait depth", "3.6576", "12",
         [](Stay& s) { s.runs[1].baitDepth = units::Depth::metres(3.6576); }},
        {true, "Bait depth", "-0.1", "-1 ft", nullptr},
        {true, "Bait depth", "0", "0", [](Stay& s) { s.runs[1].baitDepth = units::Depth(); }},
        {true, "Bait depth", "", "", [](Stay& s) { s.runs[1].baitDepth.reset(); }},
        {true, "Bait", "eel", "eel", [](Stay& s) { s.runs[1].bait = "eel"; }},
        {true, "Note", "by the reeds", "by the reeds",
         [](Stay& s) { s.runs[1].note = "by the reeds"; }}};
}

template <class Amount>
bool isNear(const std::optional<Amount>& a, const std::optional<Amount>& b,
            double (Amount::*in)() const) {
    return a.has_value() == b.has_value() && (!a || std::abs(((*a).*in)() - ((*b).*in)()) < 1e-4);
}

/// The same but for the last figures of amounts that were typed in another unit.
void expectSame(logbook::Stay found, const logbook::Stay& expected, const std::string& what) {
    EXPECT_TRUE(isNear(found.conditions.windSpeed, expected.conditions.windSpeed,
                       &units::Speed::inMetresPerSecond))
        << what;
    EXPECT_TRUE(isNear(found.conditions.waterTemperature, expected.conditions.waterTemperature,
                       &units::Temperature::inCelsius))
        << what;
    found.conditions.windSpeed = expected.conditions.windSpeed;
    found.conditions.waterTemperature = expected.conditions.waterTemperature;
    ASSERT_EQ(found.runs.size(), expected.runs.size()) << what;
    for (std::size_t i = 0; i < found.runs.size(); ++i) {
        logbook::Fish& run = found.runs[i];
        const logbook::Fish& wanted = expected.runs[i];
        EXPECT_TRUE(isNear(run.weight, wanted.weight, &units::Weight::inKilograms)) << what;
        EXPECT_TRUE(isNear(run.length, wanted.length, &units::Length::inMetres)) << what;
        EXPECT_TRUE(isNear(run.baitDepth, wanted.baitDepth, &units::Depth::inMetres)) << what;
        run.weight = wanted.weight;
        run.length = wanted.length;
        run.baitDepth = wanted.baitDepth;
    }
    EXPECT_EQ(found, expected) << what;
}

TEST_F(StayForm, PutsWhatIsTypedIntoItsMemberAndNoOtherAndCanUndoIt) {
    const logbook::Log before = open_.water()->log.copied();
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        preferences_.setUnits(units);
        for (const TypedRow& row : typedRows()) {
            const char* text = units == UnitSystem::metric ? row.metric : row.imperial;
            const std::string what = std::string(row.name) + " '" + text + "'";
            show(row.isRun);
            AmountField* typed = field(row.name);
            type(typed, text);
            logbook::Log expected = before;
            if (row.change != nullptr) {
                row.change(expected[1]);
            }
            logbook::sortByTime(expected);
            ASSERT_EQ(open_.water()->log.size(), 2U) << what;
            for (std::size_t i = 0; i < 2; ++i) {
                expectSame(open_.water()->log[i], expected[i], what);
            }
            EXPECT_EQ(typed->isWrong(), row.change == nullptr) << what;
            if (row.change != nullptr) {
                EXPECT_TRUE(open_.undoStack().undoText().startsWith("Change ")) << what;
                open_.undoStack().undo();
            }
            ASSERT_EQ(open_.water()->log, before) << what;
            QTest::keyClick(typed, Qt::Key_Escape);
        }
    }
}

TEST_F(StayForm, ShowsNothingOfAStayThatIsGone) {
    form_.show(logbook::StayId(999), {});
    for (const AmountField* one : form_.findChildren<AmountField*>()) {
        EXPECT_FALSE(one->isVisibleTo(&form_)) << one->accessibleName().toStdString();
    }
    show(false);
    EXPECT_TRUE(field("Rods")->isVisibleTo(&form_));
    show(true);
    EXPECT_TRUE(field("Weight")->isVisibleTo(&form_));
}

} // namespace
