// SPDX-License-Identifier: GPL-3.0-or-later
// Every kind of file that is dropped on the window: what of the water it changes, in which order
// files are taken, what is asked, and that a refused one changes nothing.
#include "app/days/chart_link.h"
#include "app/days/survey_day/column_dialog.h"
#include "app/days/survey_day/file_taker.h"
#include "app/edits/set_shoreline.h"
#include "tests/support/bowl.h"

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>

#include <gtest/gtest.h>

namespace {

using days::survey_day::ColumnDialog;

class FileKinds : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    }
    QString file(const QString& name, const QByteArray& text) {
        QFile file(folder_.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    /// Twenty soundings east of 3.1 E on 55.2 N, `depth` deep.
    QString track(const QString& name, const QByteArray& depthColumn = "depth_m",
                  const QByteArray& depth = "4.0") {
        QByteArray text = "lon,lat," + depthColumn + "\n";
        for (int i = 0; i < 20; ++i) {
            text += QByteArray::number(3.1 + 1e-4 * i, 'f', 4) + ",55.2," + depth + "\n";
        }
        return file(name, text);
    }
    /// Takes the files and waits. \return what was said.
    QStringList taken(const QStringList& paths) {
        QSignalSpy said(&open_, &open_water::OpenWater::happened);
        taker_.take(paths);
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return !taker_.isBusy() && !open_.jobs().isBusy(); }, 30000));
        QStringList sentences;
        for (const auto& one : said) {
            sentences << one[0].toString();
        }
        return sentences;
    }
    const water::Water& water() { return *open_.water(); }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    QWidget window_;
    days::survey_day::FileTaker taker_{{open_, preferences_, chart_}, &window_};
};

const QByteArray shore = R"({"type": "Polygon", "coordinates":
    [[[3.096, 55.198], [3.104, 55.198], [3.104, 55.202], [3.096, 55.202], [3.096, 55.198]]]})";

TEST_F(FileKinds, SoundingsBecomeADayOfTheirOwnAndAreCounted) {
    EXPECT_EQ(taken({track("a.csv")}), (QStringList{"20 soundings from a.csv."}));
    ASSERT_EQ(water().days.size(), 1U);
    const auto& day = water().days[0];
    EXPECT_EQ(day.source, "a.csv");
    ASSERT_EQ(day.soundings.size(), 20U);
    EXPECT_NEAR(day.soundings[3].place.lon_deg, 3.1003, 1e-9);
    EXPECT_NEAR(day.soundings[3].place.lat_deg, 55.2, 1e-9);
    EXPECT_NEAR(day.soundings[3].shown.inMetres(), 4.0, 1e-9);
    open_.undoStack().undo();
    EXPECT_TRUE(water().days.empty());
    open_.jobs().finishAll();
}

TEST_F(FileKinds, AShorelineNotesLeadsAndHouseRulesReachTheirOwnParts) {
    EXPECT_EQ(taken({file("shore.geojson", shore)}),
              (QStringList{"Shoreline from shore.geojson."}));
    ASSERT_EQ(water().shoreline.size(), 1U);
    EXPECT_NEAR(water().shoreline[0].outer[0].lon_deg, 3.096, 0.009);
    const auto before = water();
    EXPECT_EQ(taken({file("weed.csv", "lon,lat,kind,height_m\n3.1,55.2,thick,1.7\n"
                                      "3.101,55.2,none,\n")}),
              (QStringList{"2 weed notes from weed.csv."}));
    ASSERT_EQ(water().weedNotes.size(), 2U);
    EXPECT_EQ(water().weedNotes[0].growth, weed::Growth::thick);
    EXPECT_NEAR(water().weedNotes[0].height->inMetres(), 1.7, 1e-9);
    EXPECT_EQ(taken({file("lead.csv", "lon,lat,depth_m,bottom\n3.1,55.2,3.6,gravel\n")}),
              (QStringList{"1 soundings by lead line from lead.csv."}));
    ASSERT_EQ(water().leadLine.size(), 1U);
    EXPECT_EQ(water().leadLine[0].bottom, soundings::Bottom::gravel);
    EXPECT_EQ(water().shoreline, before.shoreline);
    EXPECT_EQ(water().houseRules, before.houseRules);
}

TEST_F(FileKinds, ARowOfNotesThatCannotBeUsedIsToldAsAWarning) {
    taken({file("shore.geojson", shore)});
    QSignalSpy failed(&open_, &open_water::OpenWater::failed);
    taken({file("weed.csv", "lon,lat,kind,height_m\n3.1,55.2,thick,1.2\n3.1,551.2,none,\n")});
    ASSERT_EQ(failed.count(), 1);
    EXPECT_EQ(failed[0][0].value<base::Error>().what,
              "1 weed notes from weed.csv. 1 row not used: 1 without a position (line 3: "
              "'3.1,551.2,none,').");
    EXPECT_EQ(water().weedNotes.size(), 1U);
    taken({file("lead.csv", "lon,lat,depth_m,bottom\n3.1,55.2,3.6,gravel\n3.1,55.2,deep,\n")});
    ASSERT_EQ(failed.count(), 2);
    EXPECT_TRUE(failed[1][0].value<base::Error>().what.starts_with(
        "1 soundings by lead line from lead.csv. 1 row not used: 1 "));
    EXPECT_EQ(water().leadLine.size(), 1U);
}

TEST_F(FileKinds, HouseRulesAreKnownByAnyOfTheirEntriesAndNeverTakenForAShore) {
    const QByteArray closed = R"({"name": "nursery", "geometry": )" + shore + "}";
    struct Case {
        const char* name;
        QByteArray text;
    };
    for (const Case& c : {Case{"rods.json", R"({"rods_per_boat": 3})"},
                          Case{"closed.json", R"({"closed_waters": [)" + closed + "]}"},
                          Case{"season.json", R"({"season": {"from": "05-01", "to": "09-30"}})"}}) {
        EXPECT_EQ(taken({file(c.name, c.text)}),
                  (QStringList{QStringLiteral("House rules from %1.").arg(c.name)}));
        EXPECT_TRUE(water().shoreline.empty()) << c.name;
        EXPECT_EQ(water().houseRules.rodLimit.has_value(), QString(c.name) == "rods.json");
        EXPECT_EQ(water().houseRules.closed.size(), QString(c.name) == "closed.json" ? 1U : 0U);
        EXPECT_EQ(water().houseRules.season.has_value(), QString(c.name) == "season.json");
    }
}

TEST_F(FileKinds, FactsOfTheWaterReachTheirMembersAndLeaveTheRest) {
    taken({file("shore.geojson", shore), track("a.csv")});
    const auto before = water();
    EXPECT_EQ(taken({file("water.json", R"({"name": "Bright Tarn", "time_zone": "Europe/London",
            "chart_level_m": 12.3, "secchi_depth_m": 2.2, "launch": {"lon": 3.099, "lat": 55.201},
            "places": [{"name": "Owl Point", "lon": 3.101, "lat": 55.199}]})")}),
              (QStringList{"Facts of the water from water.json."}));
    EXPECT_EQ(water().name, "Bright Tarn");
    EXPECT_EQ(water().chartLevel, units::WaterLevel::metresOnGauge(12.3));
    EXPECT_NEAR(water().settings.secchi->inMetres(), 2.2, 1e-9);
    ASSERT_TRUE(water().plan.launch);
    EXPECT_NEAR(water().plan.launch->lat_deg, 55.201, 1e-9);
    ASSERT_EQ(water().places.size(), 1U);
    EXPECT_EQ(water().places[0].name, "Owl Point");
    EXPECT_NE(water().clock, before.clock);
    EXPECT_EQ(water().days, before.days);
    EXPECT_EQ(water().shoreline, before.shoreline);
    open_.undoStack().undo();
    EXPECT_EQ(water(), before);
    open_.jobs().finishAll();
}

TEST_F(FileKinds, FactsOfDaysReachTheDayOfTheirFileBeforeAndAfter) {
    const QByteArray facts =
        "day,file,water_level_m,water_temperature_c,draft_m,sound_speed_m_s,depth_unit\n"
        "2026-09-05,a.csv,0.35,12.5,0.25,,\n2026-09-06,b.csv,0.5,,,,ft\n";
    taken({track("a.csv")});
    EXPECT_EQ(taken({file("days.csv", facts)}),
              (QStringList{"Facts of 2 survey days; those still to come get theirs as their files "
                           "come in."}));
    ASSERT_EQ(water().days.size(), 1U);
    EXPECT_EQ(water().days[0].gauge.constantLevel(), units::WaterLevel::metresOnGauge(0.35));
    EXPECT_NEAR(water().days[0].waterTemperature->inCelsius(), 12.5, 1e-9);
    EXPECT_NEAR(water().days[0].sounder.draft.inMetres(), 0.25, 1e-9);
    taken({track("b.csv", "depth", "10.0")});
    ASSERT_EQ(water().days.size(), 2U) << "its unit was told: nothing is asked";
    EXPECT_NEAR(water().days[1].soundings[0].shown.inFeet(), 10.0, 1e-6);
    EXPECT_EQ(water().days[1].gauge.constantLevel(), units::WaterLevel::metresOnGauge(0.5));
    // Another water has nothing to do with them.
    ASSERT_TRUE(open_.create(folder_.filePath("other.gpkg"), "Other"));
    taken({track("a.csv")});
    EXPECT_FALSE(water().days[0].gauge.isKnown());
}

TEST_F(FileKinds, TakesFactsBeforeTheShoreAndTheShoreBeforeTheSoundings) {
    const auto said =
        taken({file("weed.csv", "lon,lat,kind,height_m\n3.1,55.2,thick,1.7\n"), track("a.csv"),
               file("shore.geojson", shore), file("water.json", R"({"name": "Bright Tarn"})")});
    ASSERT_EQ(said.size(), 4);
    EXPECT_TRUE(said[0].contains("water.json"));
    EXPECT_TRUE(said[1].contains("shore.geojson"));
    EXPECT_TRUE(said[2].contains("a.csv"));
    EXPECT_TRUE(said[3].contains("weed.csv"));
}

TEST_F(FileKinds, ALogBecomesStaysAndWhatIsThereAlreadyIsCounted) {
    taken({file("shore.geojson", shore)});
    const QByteArray log =
        "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,bait_depth_m,"
        "wind_from_deg,wind_speed_m_s,water_temperature_c,note\n"
        "stay,7,2024-09-18T08:11:00+01:00,2024-09-18T10:09:00+01:00,,3.1,55.2,3,,,,,,,,,\n"
        "fish,7,,,2024-09-18T09:20:00+01:00,,,,,pike,2.34,695,,,,,\n";
    EXPECT_EQ(taken({file("log.csv", log)}), (QStringList{"log.csv: 1 stay brought in."}));
    ASSERT_EQ(water().log.size(), 1U);
    EXPECT_EQ(water().log[0].rods, 3);
    EXPECT_EQ(taken({file("log.csv", log)}),
              (QStringList{"log.csv: 0 stays brought in, 1 known already."}));
    EXPECT_EQ(water().log.size(), 1U);
}

TEST_F(FileKinds, ALineIsTheShoreWhereThereIsNoneElseTheTrackOfADay) {
    QByteArray gpx =
        "<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>";
    for (int i = 0; i <= 40; ++i) {
        const double a = 2.0 * 3.14159265 * (i % 40) / 40.0;
        gpx += QStringLiteral("<trkpt lat=\"%1\" lon=\"%2\"><time>2026-09-05T0%3:%4:00Z</time>"
                              "</trkpt>")
                   .arg(55.2 + 0.002 * std::sin(a), 0, 'f', 6)
                   .arg(3.1 + 0.004 * std::cos(a), 0, 'f', 6)
                   .arg(8 + i / 60)
                   .arg(i % 60, 2, 10, QLatin1Char('0'))
                   .toLatin1();
    }
    gpx += "</trkseg></trk></gpx>";
    QSignalSpy found(&taker_, &days::survey_day::FileTaker::dayTrackFound);
    taken({file("walk.gpx", gpx)});
    EXPECT_EQ(water().shoreline.size(), 1U);
    EXPECT_EQ(found.size(), 0);
    const auto before = water().shoreline;
    taken({file("day.gpx", gpx)});
    EXPECT_EQ(found.size(), 1);
    EXPECT_EQ(water().shoreline, before);
    ASSERT_TRUE(chart_.content().dayTrack);
    EXPECT_EQ(chart_.content().dayTrack->size(), 41U);
}

TEST_F(FileKinds, AnotherWaterIsSaidAndARefusedFileChangesNothingAndLetsTheNextOneIn) {
    QSignalSpy waters(&taker_, &days::survey_day::FileTaker::waterFound);
    QSignalSpy failed(&open_, &open_water::OpenWater::failed);
    taken({folder_.filePath("small.gpkg")});
    ASSERT_EQ(waters.size(), 1);
    EXPECT_EQ(waters[0][0].toString(), folder_.filePath("small.gpkg"));
    const auto before = water();
    taken({file("weed.csv", "lon,lat,kind\nx,y,thick\n"),
           file("lead.csv", "lon,lat,depth_m,bottom\nx,55.2,3.6,gravel\n"),
           file("rules.json", R"({"season": 4})"), file("water.json", "{nothing"),
           file("days.csv", "day,file,draft_m\n2026-09-05,a.csv,99\n"),
           file("shore.geojson", R"({"type": "Polygon", "coordinates": [[[3.1, 55.2]]]})"),
           folder_.filePath("missing.csv"), file("empty.csv", "")});
    EXPECT_EQ(failed.size(), 8);
    EXPECT_EQ(water(), before);
    EXPECT_EQ(open_.undoStack().count(), 0);
    taken({track("a.csv")});
    EXPECT_EQ(water().days.size(), 1U);
}

TEST_F(FileKinds, WhatIsAnsweredAboutColumnsAndUnitIsHowTheFileIsRead) {
    taker_.take({track("unsure.csv", "depth", "12.0")});
    auto* dialog = window_.findChild<ColumnDialog*>();
    ASSERT_NE(dialog, nullptr);
    for (auto* box : dialog->findChildren<QComboBox*>()) {
        if (box->currentText() == "metres") {
            box->setCurrentText("feet");
        }
    }
    dialog->accept();
    ASSERT_TRUE(
        QTest::qWaitFor([this] { return !taker_.isBusy() && !open_.jobs().isBusy(); }, 30000));
    ASSERT_EQ(water().days.size(), 1U);
    EXPECT_NEAR(water().days[0].soundings[0].shown.inFeet(), 12.0, 1e-9);
}

TEST(ColumnRoles, EachGoesToItsOwnColumn) {
    readers::TablePreview preview;
    preview.columns = {"a", "b", "c", "d", "e"};
    using Role = readers::ColumnRole;
    preview.roles = {Role::time, Role::depth, Role::none, Role::y, Role::x};
    preview.unit = readers::DepthUnit::fathoms;
    preview.decimalMark = ',';
    preview.hasHeader = true;
    const ColumnDialog dialog("log.csv", preview, nullptr);
    const auto settings = dialog.settings({});
    EXPECT_EQ(settings.columns.time, "1");
    EXPECT_EQ(settings.columns.depth, "2");
    EXPECT_EQ(settings.columns.y, "4");
    EXPECT_EQ(settings.columns.x, "5");
    EXPECT_EQ(settings.unit, readers::DepthUnit::fathoms);
    EXPECT_EQ(settings.decimalMark, ',');
    EXPECT_EQ(settings.hasHeader, true);
}

} // namespace
