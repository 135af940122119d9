// SPDX-License-Identifier: GPL-3.0-or-later
// The stays of a track: seen on the chart and put right before they are stays of the log.
#include "app/edits/change_stay.h"
#include "tests/app/days/looking_back/back_desk.h"

#include <QFile>
#include <QListWidget>
#include <QTextStream>

#include <algorithm>
#include <cmath>

namespace {

class TrackStays : public support::BackDesk {
protected:
    void SetUp() override {
        BackDesk::SetUp();
        day_->takeTrack(writtenTrack());
        turn();
        list_ = &named<QListWidget>("Stays found");
    }
    /// Two halts of an hour, 08:00 to 09:00 and 09:10 to 10:10, 100 m apart, a point each 10 s.
    QString writtenTrack() {
        const QString path = folder_.filePath("day.gpx");
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        QTextStream text(&file);
        text.setRealNumberPrecision(10);
        text << "<gpx version=\"1.1\" creator=\"test\" "
                "xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>";
        const units::Moment first = at("2026-10-03 08:00");
        for (int second = 0; second <= 7800; second += 10) {
            const double share = std::clamp((second - 3600) / 600.0, 0.0, 1.0);
            // Under way it goes out and back at the same speed, so that no halt is found there.
            const double out_m = 200.0 * (1.0 - std::fabs(2.0 * share - 1.0));
            const geo::LonLat place =
                open_.water()->frame->toEarth({-50.0 + 100.0 * share, out_m - 50.0});
            text << "<trkpt lat=\"" << place.lat_deg << "\" lon=\"" << place.lon_deg << "\"><time>"
                 << QString::fromStdString(units::isoText(first + std::chrono::seconds(second)))
                 << "</time></trkpt>";
        }
        text << "</trkseg></trk></gpx>";
        return path;
    }
    QListWidget* list_ = nullptr;
};

TEST_F(TrackStays, AreOfferedOnTheChartAndInTheListAndAreNotInTheLog) {
    ASSERT_EQ(list_->count(), 2);
    ASSERT_TRUE(chart_.content().offeredStays);
    EXPECT_EQ(chart_.content().offeredStays->size(), 2U);
    EXPECT_TRUE(log().empty());
    list_->item(0)->setCheckState(Qt::Unchecked);
    ASSERT_EQ(chart_.content().offeredStays->size(), 1U);
    named<QPushButton>("Add as blanks").click();
    turn();
    ASSERT_EQ(log().size(), 1U) << "what is not ticked is no stay";
    EXPECT_GE(log()[0].start, at("2026-10-03 09:05"));
    EXPECT_FALSE(chart_.content().offeredStays);
}

TEST_F(TrackStays, CanBeCutAndPutRightBeforeTheyAreConfirmed) {
    list_->setCurrentRow(0);
    const auto typeInto = [this](const char* name, const char* text) {
        auto& field = named<widgets::AmountField>(name);
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, text);
        QTest::keyClick(&field, Qt::Key_Return);
        return field.isWrong();
    };
    EXPECT_TRUE(typeInto("Cut at", "0930")) << "not within it";
    EXPECT_EQ(list_->count(), 2);
    EXPECT_FALSE(typeInto("Cut at", "0830"));
    ASSERT_EQ(list_->count(), 3);
    EXPECT_EQ(chart_.content().offeredStays->at(0).end, at("2026-10-03 08:30"));
    EXPECT_EQ(chart_.content().offeredStays->size(), 3U);
    EXPECT_FALSE(typeInto("To", "0825"));
    EXPECT_TRUE(typeInto("From", "0826")) << "not after its end";
    named<QPushButton>("Add as blanks").click();
    turn();
    const logbook::Log written = log();
    ASSERT_EQ(written.size(), 3U);
    EXPECT_EQ(written[0].end, at("2026-10-03 08:25"));
    EXPECT_EQ(written[1].start, at("2026-10-03 08:30"));
    EXPECT_EQ(written[0].place, written[1].place);
    open_.undoStack().undo();
    EXPECT_TRUE(log().empty());
}

TEST_F(TrackStays, CountWithTheRodsThatSomebodySaidOrWithNone) {
    list_->item(1)->setCheckState(Qt::Unchecked);
    named<QPushButton>("Add as blanks").click();
    turn();
    ASSERT_EQ(log().size(), 1U) << "what is not ticked is no stay, whichever it is";
    EXPECT_LT(log()[0].start, at("2026-10-03 08:10"));
    EXPECT_EQ(log()[0].rods, std::nullopt) << "nobody said how many";
}

TEST_F(TrackStays, AreCutWhereTheyLieAndEndAfterTheyBegin) {
    list_->setCurrentRow(1);
    const auto typeInto = [this](const char* name, const char* text) {
        auto& field = named<widgets::AmountField>(name);
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, text);
        QTest::keyClick(&field, Qt::Key_Return);
        return field.isWrong();
    };
    EXPECT_TRUE(typeInto("To", "0805")) << "before it began";
    EXPECT_FALSE(typeInto("Cut at", "0940"));
    named<QPushButton>("Add as blanks").click();
    turn();
    const logbook::Log written = log();
    ASSERT_EQ(written.size(), 3U);
    EXPECT_EQ(written[1].end, at("2026-10-03 09:40"));
    EXPECT_EQ(written[2].start, at("2026-10-03 09:40"));
    EXPECT_EQ(written[2].place, written[1].place);
    EXPECT_FALSE(written[2].place == written[0].place);
}

TEST_F(TrackStays, ThatTheLogHasOrDoubtsAreSaidAndNotOffered) {
    QStringList told;
    const auto heard = QObject::connect(&open_, &open_water::OpenWater::happened,
                                        [&told](const QString& words) { told += words; });
    list_->item(1)->setCheckState(Qt::Unchecked);
    named<QPushButton>("Add as blanks").click();
    turn();
    day_->takeTrack(writtenTrack());
    turn();
    EXPECT_EQ(list_->count(), 1) << "the other one alone";
    EXPECT_TRUE(told.contains("1 stay of the track stand in the log already.") ||
                told.contains("1 stay of the track stands in the log already."));
    // The boat of the log lay elsewhere at that time.
    edits::changeStay(open_, "x", log()[0].id, [this](logbook::Stay& stay) {
        stay.place = open_.water()->frame->toEarth({150.0, 150.0});
    });
    told.clear();
    day_->takeTrack(writtenTrack());
    turn();
    QObject::disconnect(heard);
    EXPECT_EQ(list_->count(), 1);
    EXPECT_FALSE(told.filter("Which one is right?").isEmpty());
}

TEST_F(TrackStays, OfAnotherWaterAreGone) {
    ASSERT_TRUE(open_.create(folder_.filePath("other.gpkg"), "Other Water"));
    turn();
    EXPECT_EQ(list_->count(), 0);
    EXPECT_FALSE(chart_.content().offeredStays);
}

} // namespace
