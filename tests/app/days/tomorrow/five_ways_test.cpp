// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch/marks_report.h"
#include "app/chart/lettering.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/paper/day_sheet.h"
#include "app/side_view/side_scene.h"
#include "app/wording/cautions.h"
#include "app/wording/planned_words.h"
#include "app/wording/reasons.h"
#include "core/outputs/write_gpx.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include <algorithm>

#include <nlohmann/json.hpp>

// One planned day is told in five ways. Each is read back, and all of them have to say the figures
// of the plan for the mark that they are of.
namespace {

using preferences::UnitSystem;
using support::packed;
using support::Said;

const wording::Words metric;

class FiveWays : public testing::TestWithParam<UnitSystem> {
protected:
    const water::PlannedDay& day() const { return *content_.planned; }
    geo::LonLat onEarth(geo::WaterPoint p) const { return content_.water->frame->toEarth(p); }

    chart::ChartContent content_ = support::contentToRead(GetParam());
    Said said_{GetParam()};
};

class OtherWays : public FiveWays {};

/// The part of the sheet that is of one mark.
QString blockOf(const support::RecordedPages& pages, int rank) {
    const QString all = pages.lines().join('\n');
    const qsizetype from = all.indexOf(QStringLiteral("Mark %1   ").arg(rank));
    const qsizetype to = all.indexOf("runs and fish", from);
    return from < 0 ? QString() : packed(all.mid(from, to - from));
}

TEST_P(FiveWays, SheetAndScreenSayTheSameOfEveryMarkOfTheDay) {
    support::RecordedPages pages;
    ASSERT_TRUE(paper::paintDaySheet(pages, content_, paper::SheetForm::withPictures));
    for (const marks::DayStop& stop : day().day.stops) {
        const marks::Mark& mark = day().marks[static_cast<std::size_t>(stop.rank - 1)];
        const QString block = blockOf(pages, mark.rank);
        const auto anchors =
            days::tomorrow::anchorRows(mark, content_.water->frame, content_.words);
        ASSERT_EQ(anchors.size(), 2U);
        for (std::size_t i = 0; i < 2; ++i) {
            // "bow  55.20341 N  3.11272 E": the sheet has the word anchor between.
            const QString name = anchors[i][0].section("  ", 0, 0);
            const QString place = anchors[i][0].section("  ", 1);
            const QString expected = packed(name + " anchor " + place + " in " + anchors[i][1] +
                                            " rope " + anchors[i][2]);
            EXPECT_TRUE(block.contains(expected))
                << expected.toStdString() << " in " << block.toStdString();
        }
        const auto rods = days::tomorrow::rodRows(mark, content_.words);
        for (std::size_t i = 0; i < rods.size(); ++i) {
            const QString expected =
                packed(QStringLiteral("rod%1 %2 %3 in %4 stop knot %5")
                           .arg(i + 1)
                           .arg(rods[i][1], rods[i][2], rods[i][3], rods[i][4]));
            EXPECT_TRUE(block.contains(expected)) << expected.toStdString();
            const QString over = rods[i][0].section("  ", 1);
            EXPECT_TRUE(over.isEmpty() || block.contains(expected + packed("over " + over)));
        }
        const QString all = packed(pages.lines());
        for (const QString& caution : wording::cautionsOf(mark, content_.words)) {
            EXPECT_TRUE(all.contains(packed(caution))) << caution.toStdString();
        }
    }
    const QString all = packed(pages.lines());
    for (const QStringList& list :
         {wording::cautionsOf(day(), content_.words), wording::basisOf(day(), content_.words),
          wording::notesOf(day()), wording::rulesOf(day()),
          wording::fishCareOf(day(), content_.words)}) {
        for (const QString& line : list) {
            EXPECT_EQ(all.count(packed(line)), 1) << line.toStdString();
        }
    }
}

TEST_P(FiveWays, TheCutWritesTheRopesAndKnotsThatTheScreenLists) {
    const QFont font = chart::typeface(chart::TypeSize::small, 1.0);
    for (const marks::Mark& mark : day().marks) {
        support::RecordedPages pages;
        QPainter painter(&pages);
        side_view::paintScene(painter, side_view::sceneOfMark(content_, mark.rank),
                              QRectF(0, 0, 1600, 500));
        const auto anchors =
            days::tomorrow::anchorRows(mark, content_.water->frame, content_.words);
        const QString bow = QStringLiteral("bow rope %1, scope %2")
                                .arg(anchors[0][2])
                                .arg(mark.anchors.bow.scope, 0, 'f', 1);
        EXPECT_EQ(pages.lettered(bow, font).size(), 1U) << bow.toStdString();
        const QString stern = "stern rope " + anchors[1][2];
        EXPECT_EQ(pages.lettered(stern, font).size(), 1U) << stern.toStdString();
        const auto rods = days::tomorrow::rodRows(mark, content_.words);
        for (std::size_t i = 0; i < rods.size(); ++i) {
            const QString knot = QStringLiteral("rod %1  stop knot %2").arg(i + 1).arg(rods[i][4]);
            EXPECT_EQ(pages.lettered(knot, font).size(), 1U) << knot.toStdString();
        }
    }
}

/// The numbers of one element of GPX: "lat", "lon", and what stands in elements of ours.
std::map<QString, double> numbersIn(const QString& text) {
    std::map<QString, double> numbers;
    static const QRegularExpression attribute(QStringLiteral(R"((lat|lon)="([-0-9.]+)\")"));
    static const QRegularExpression element(QStringLiteral("<mm:([a-z_]+)>([-0-9.]+)<"));
    for (const auto& expression : {attribute, element}) {
        auto matches = expression.globalMatch(text);
        while (matches.hasNext()) {
            const auto match = matches.next();
            numbers.emplace(match.captured(1), match.captured(2).toDouble());
        }
    }
    return numbers;
}

QString between(const QString& text, const QString& from, const QString& to) {
    const qsizetype begin = text.indexOf(from);
    return begin < 0 ? QString() : text.mid(begin, text.indexOf(to, begin) - begin);
}

TEST_P(OtherWays, GpxGivesEveryMarkWithBothAnchorsInMetres) {
    const support::ScratchFolder folder;
    const auto path = folder.path() / "marks.gpx";
    ASSERT_TRUE(outputs::writeMarksGpx(path, wording::told(day().marks), *content_.water->frame,
                                       "Skarrow Water"));
    QString text = QString::fromStdString(support::ScratchFolder::textOf(path));
    EXPECT_EQ(text.count("<wpt "), 3);
    for (const marks::Mark& mark : day().marks) {
        const QString waypoint = between(text, "<wpt ", "</wpt>");
        text = text.mid(text.indexOf("</wpt>") + 6);
        const auto expectAnchor = [&](const char* name, const anchoring::Anchor& anchor) {
            const auto numbers = numbersIn(between(waypoint, QStringLiteral("<mm:%1 ").arg(name),
                                                   QStringLiteral("</mm:%1>").arg(name)));
            EXPECT_NEAR(numbers.at("lat"), onEarth(anchor.place).lat_deg, 1e-7) << name;
            EXPECT_NEAR(numbers.at("lon"), onEarth(anchor.place).lon_deg, 1e-7) << name;
            EXPECT_NEAR(numbers.at("depth_m"), anchor.depth.inMetres(), 0.0051) << name;
            EXPECT_NEAR(numbers.at("rope_m"), anchor.rope.inMetres(), 0.0051) << name;
        };
        const auto own = numbersIn(between(waypoint, "<wpt ", "<mm:bow"));
        EXPECT_NEAR(own.at("lat"), mark.lonLat.lat_deg, 1e-7);
        EXPECT_NEAR(own.at("lon"), mark.lonLat.lon_deg, 1e-7);
        EXPECT_NEAR(own.at("depth_m"), mark.depth.inMetres(), 0.0051);
        EXPECT_NEAR(own.at("trust_m"), mark.trust.inMetres(), 0.0051);
        expectAnchor("bow_anchor", mark.anchors.bow);
        expectAnchor("stern_anchor", *mark.anchors.stern);
        EXPECT_TRUE(waypoint.contains(QStringLiteral("<name>%1").arg(mark.rank)));
        for (const marks::Factor& factor : mark.factors) {
            EXPECT_TRUE(waypoint.contains(wording::said(factor.because, metric)));
        }
    }
}

void expectAnchor(const nlohmann::ordered_json& part, const anchoring::Anchor& anchor,
                  geo::LonLat place) {
    EXPECT_NEAR(part["lat"].get<double>(), place.lat_deg, 1e-7);
    EXPECT_NEAR(part["lon"].get<double>(), place.lon_deg, 1e-7);
    EXPECT_NEAR(part["depth_m"].get<double>(), anchor.depth.inMetres(), 0.0051);
    EXPECT_NEAR(part["rope_m"].get<double>(), anchor.rope.inMetres(), 0.051);
    EXPECT_NEAR(part["scope"].get<double>(), anchor.scope, 0.0051);
}

TEST_P(OtherWays, TheReportGivesEveryMarkWithAnchorsAndRodsInMetres) {
    const nlohmann::ordered_json report = batch::marksReport(*content_.water, day());
    ASSERT_EQ(report["marks"].size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        const marks::Mark& mark = day().marks[i];
        const auto& part = report["marks"][i];
        EXPECT_EQ(part["rank"].get<int>(), mark.rank);
        EXPECT_NEAR(part["lat"].get<double>(), mark.lonLat.lat_deg, 1e-7);
        EXPECT_NEAR(part["lon"].get<double>(), mark.lonLat.lon_deg, 1e-7);
        EXPECT_NEAR(part["depth_m"].get<double>(), mark.depth.inMetres(), 0.0051);
        EXPECT_NEAR(part["trust_m"].get<double>(), mark.trust.inMetres(), 0.0051);
        EXPECT_NEAR(part["score"].get<double>(), mark.score, 1e-4);
        EXPECT_NEAR(part["anchors"]["heading_deg"].get<double>(),
                    mark.anchors.lie.heading.inDegrees(), 0.051);
        expectAnchor(part["anchors"]["bow"], mark.anchors.bow, onEarth(mark.anchors.bow.place));
        expectAnchor(part["anchors"]["stern"], *mark.anchors.stern,
                     onEarth(mark.anchors.stern->place));
        ASSERT_EQ(part["rods"].size(), mark.spread.rods.size());
        for (std::size_t k = 0; k < mark.spread.rods.size(); ++k) {
            const rods::RodPlace& rod = mark.spread.rods[k];
            const auto& given = part["rods"][k];
            EXPECT_NEAR(given["bearing_deg"].get<double>(), rod.bearing.inDegrees(), 0.051);
            EXPECT_NEAR(given["distance_m"].get<double>(), rod.distance.inMetres(), 0.051);
            EXPECT_NEAR(given["lat"].get<double>(), onEarth(rod.place).lat_deg, 1e-7);
            EXPECT_NEAR(given["lon"].get<double>(), onEarth(rod.place).lon_deg, 1e-7);
            EXPECT_NEAR(given["depth_m"].get<double>(), rod.depth.inMetres(), 0.0051);
            EXPECT_NEAR(given["stop_knot_m"].get<double>(), rod.stopKnot.inMetres(), 0.0051);
            EXPECT_EQ(given["over"].is_null(), !rod.over.has_value());
            if (rod.over) {
                EXPECT_EQ(given["over"].get<std::string>(), structure::nameOf(*rod.over));
            }
        }
        const auto cautions = part["cautions"].get<std::vector<std::string>>();
        for (const QString& caution : wording::cautionsOf(mark, metric)) {
            EXPECT_EQ(std::ranges::count(cautions, caution.toStdString()), 1);
        }
    }
}

QStringList linesIn(const nlohmann::ordered_json& sentences) {
    QStringList lines;
    for (const auto& sentence : sentences) {
        lines += QString::fromStdString(sentence.get<std::string>());
    }
    return lines;
}

TEST_P(OtherWays, TheReportGivesTheDayWithItsTimesAndCautions) {
    const nlohmann::ordered_json report = batch::marksReport(*content_.water, day());
    EXPECT_EQ(report["date"].get<std::string>(), "2026-10-03");
    EXPECT_DOUBLE_EQ(report["wind"]["from_deg"].get<double>(), 301.0);
    EXPECT_DOUBLE_EQ(report["wind"]["speed_m_s"].get<double>(), 6.2);
    EXPECT_DOUBLE_EQ(report["level_change_m"].get<double>(), -0.35);
    ASSERT_EQ(report["day"].size(), 2U);
    EXPECT_EQ(report["day"][0]["rank"].get<int>(), 2);
    EXPECT_EQ(report["day"][0]["arrive"].get<std::string>(), "2026-10-03T07:55:00+01:00");
    EXPECT_EQ(report["day"][0]["leave"].get<std::string>(), "2026-10-03T10:05:00+01:00");
    EXPECT_DOUBLE_EQ(report["day"][0]["move_m"].get<double>(), 312.0);
    EXPECT_EQ(report["day"][1]["rank"].get<int>(), 1);
    EXPECT_EQ(report["day"][1]["arrive"].get<std::string>(), "2026-10-03T10:26:00+01:00");
    EXPECT_EQ(report["light"]["sunrise"].get<std::string>(), "2026-10-03T07:12:00+01:00");
    EXPECT_EQ(report["light"]["sunset"].get<std::string>(), "2026-10-03T18:44:00+01:00");
    EXPECT_EQ(report["light"]["civil_dusk"].get<std::string>(), "2026-10-03T19:16:00+01:00");
    EXPECT_EQ(linesIn(report["cautions"]), wording::cautionsOf(day(), metric));
    EXPECT_EQ(linesIn(report["rules"]), wording::rulesOf(day()));
    EXPECT_EQ(linesIn(report["fish_care"]), wording::fishCareOf(day(), metric));
    EXPECT_EQ(linesIn(report["notes"]), wording::basisOf(day(), metric) + wording::notesOf(day()));
}

const auto bothUnits = testing::Values(UnitSystem::metric, UnitSystem::imperial);
INSTANTIATE_TEST_SUITE_P(Units, FiveWays, bothUnits);
INSTANTIATE_TEST_SUITE_P(Metres, OtherWays, testing::Values(UnitSystem::imperial));

} // namespace
