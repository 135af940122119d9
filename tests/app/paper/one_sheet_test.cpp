// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet for the boat, read back: what it says, on how much paper, in how large a type.
#include "app/paper/day_sheet.h"
#include "app/paper/sheet_layout.h"
#include "core/water/steps/day_cautions.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"
#include "tests/app/support/star_water.h"

#include <QFontMetricsF>

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace {

using paper::SheetForm;
using preferences::UnitSystem;
using support::Drawn;
using support::packed;
using support::RecordedPages;
using support::Said;

QStringList headOf(const Said& said) {
    return {"Skarrow Water",
            "Sat 3 Oct 2026",
            said.either("from 07:40 to 15:05 level −0.35 m against the chart water 5.2 °C",
                        "from 07:40 to 15:05 level −1.1 ft against the chart water 41.4 °F"),
            "first light 06:41 sunrise 07:12 sunset 18:44 dark after 19:16",
            "wind from",
            said.either("WNW 301° 6.2 m/s", "WNW 301° 14 mph")};
}

QStringList anchorRow(const Said& said, const char* name, const anchoring::Anchor& anchor) {
    const auto frame = support::starWater().frame;
    return {name, Said::place(frame->toEarth(anchor.place)), said.depth(anchor.depth),
            said.length(anchor.rope)};
}

/// A card word by word, in the order in which it is read.
QStringList cardOf(const Said& said, const marks::Mark& mark, const QString& title,
                   const QString& when, const QString& why, const QStringList& cautions) {
    QStringList out{title, when, "drop at", "depth", "rope"};
    out += anchorRow(said, "bow", mark.anchors.bow);
    out += anchorRow(said, "stern", *mark.anchors.stern);
    out += QStringList{"boat", Said::place(mark.lonLat),
                       said.depth(mark.depth) + " ±" + said.depth(mark.trust)};
    out << QStringLiteral("Heading %1. Bow down, fall back on %2, stern down, haul the bow rope in "
                          "to %3.")
               .arg(Said::bearing(mark.anchors.lie.heading), said.length(mark.anchors.fallBackRope),
                    said.length(mark.anchors.bow.rope));
    out += QStringList{"rod", "bearing, distance", "depth", "stop knot"};
    for (std::size_t i = 0; i < mark.spread.rods.size(); ++i) {
        const rods::RodPlace& rod = mark.spread.rods[i];
        out += QStringList{QString::number(i + 1),
                           Said::bearing(rod.bearing) + said.length(rod.distance),
                           said.depth(rod.depth), said.depth(rod.stopKnot)};
    }
    return out + QStringList{why} + cautions;
}

QStringList restOf(const Said& said) {
    return {"Cautions",
            "•  The water is cold (below " + said.either("15 °C", "59 °F") +
                "): the shock of falling in can kill within a minute. Wear the lifejacket, do not "
                "stow it. If you fall in, float on your back until your breathing settles.",
            "•  You come home after sunset.",
            "•  Tell somebody ashore where you are and when you will be back.",
            "At every mark",
            "•  The depth here is a guess: sound it before you anchor.",
            "Rules of this water: At most 4 rods in a boat. No engine within 50 m of the dam.",
            "For the fish: Fish: wet hands, a wet mat, unhooked in the water where it can be done, "
            "and a short time in the air.",
            "Of this plan: 3 of 8 marks found. Left out: " + said.either("12.3 ha", "30.5 ac") +
                " deeper than the limit. There is no time or no way for mark 3 with stays of 30 "
                "minutes.",
            "Moves, back to the launch included: " + said.either("2.5 km", "1.5 mi") +
                ". Left out, no time or no way: mark 3.",
            "All times by the clock of Europe/London. Ropes are worked out from depth plus bow "
            "height. Depths carry the ± given, 95 times "
            "in 100. Drawn from your own soundings: not for navigation.",
            "Catches and blanks: every stay, also the blank ones",
            "mark",
            "anchored",
            "rods, bait",
            "run, time",
            "species",
            "weight",
            "bait depth"};
}

void expectSheet(UnitSystem units) {
    const chart::ChartContent content = support::contentToRead(units);
    const Said said(units);
    RecordedPages pages;
    ASSERT_TRUE(paper::paintDaySheet(pages, content, SheetForm::oneSheet));
    QStringList body = pages.lines();
    body.removeIf([](const QString& line) {
        return line == "Skarrow Water, Sat 3 Oct 2026" || line.startsWith("page ");
    });
    const auto& marks = content.planned->marks;
    const QStringList expected =
        headOf(said) +
        cardOf(said, marks[1], "2  Stream Arm",
               "move " + said.either("312 m", "1024 ft") + ", 07:55 to 10:05",
               said.either("Why: 67 % of the water within a cast can be fished, 1.3 to 4.7 m deep",
                           "Why: 67 % of the water within a cast can be fished, 4.3 to 15.4 ft "
                           "deep"),
               {}) +
        cardOf(said, marks[0], "1  Owl Point",
               "move " + said.either("1.2 km", "4068 ft") + ", 10:26 to 14:38",
               said.either("Why: 94 % of the water within a cast can be fished, 2.2 to 6.1 m deep",
                           "Why: 94 % of the water within a cast can be fished, 7.2 to 20.0 ft "
                           "deep"),
               {"Caution: Waves of about " + said.either("0.4 m", "1.3 ft") + " here.",
                "Caution: Room or rope for scope 2.9 only: take a bearing ashore and watch whether "
                "she drags."}) +
        restOf(said);
    EXPECT_EQ(packed(body).toStdString(), packed(expected).toStdString());
}

TEST(OneSheet, SaysEveryFigureOfTheDayInMetres) {
    expectSheet(UnitSystem::metric);
}

TEST(OneSheet, SaysEveryFigureOfTheDayInFeet) {
    expectSheet(UnitSystem::imperial);
}

/// A day of so many marks with so many rods each, and the cautions of a cold day. All marks share a
/// caution; with `ownCautions` each has another, a line long.
chart::ChartContent dayOf(int marks, int rods, bool ownCautions = false) {
    chart::ChartContent content = support::contentToRead(UnitSystem::metric);
    water::PlannedDay planned = *content.planned;
    marks::Mark model = planned.marks.front();
    model.anchors.cautions.clear();
    while (std::ssize(model.spread.rods) < rods) {
        model.spread.rods.push_back(model.spread.rods.front());
    }
    const marks::DayStop turn = planned.day.stops.front();
    planned.marks.clear();
    planned.day.stops.clear();
    planned.day.leftOut.clear();
    for (int rank = 1; rank <= marks; ++rank) {
        model.rank = rank;
        model.cautions = {marks::GuessedHere{}};
        if (ownCautions) {
            model.cautions.emplace_back(marks::WavesHere{units::Length::metres(0.3 + 0.1 * rank)});
        }
        model.name = "Place number " + std::to_string(rank);
        planned.marks.push_back(model);
        planned.day.stops.push_back(turn);
        planned.day.stops.back().rank = rank;
    }
    planned.cautions = water::dayCautions(planned);
    planned.rules = {water::RodLimit{3},
                     water::ClosedPart{"Dam strip"},
                     water::HouseNote{"Life jackets are worn in every boat"},
                     water::HouseNote{"Boats are back at the launch before it is dark."},
                     water::HouseNote{"No live baits."},
                     water::LocalRulesFirst{}};
    planned.fishCare = water::fishCare(planned);
    content.planned = std::make_shared<water::PlannedDay>(planned);
    return content;
}

TEST(OneSheet, UpToEightMarksTakeFrontAndBackOfOneSheetAndNoneIsLost) {
    for (const auto& [paper, ownCautions] :
         {std::pair(QPageSize::A4, true), {QPageSize::Letter, false}}) {
        for (const auto& [marks, rods] : {std::pair(1, 2), {4, 4}, {8, 3}, {8, 4}}) {
            RecordedPages pages;
            pages.setPageSize(QPageSize(paper));
            const auto count =
                paper::paintDaySheet(pages, dayOf(marks, rods, ownCautions), SheetForm::oneSheet);
            ASSERT_TRUE(count);
            EXPECT_LE(*count, 2) << marks << " marks, " << rods << " rods, paper " << paper;
            const QStringList lines = pages.lines();
            for (int rank = 1; rank <= marks; ++rank) {
                EXPECT_TRUE(lines.contains(QStringLiteral("%1  Place number %1").arg(rank)));
            }
            EXPECT_EQ(lines.filter("lifejacket, do not stow").size(), 1) << "each once";
        }
    }
}

TEST(OneSheet, TellsOfNoMoveToAFirstMarkWithoutALaunch) {
    chart::ChartContent content = dayOf(2, 2);
    water::PlannedDay planned = *content.planned;
    planned.day.stops.front().move = units::Length();
    content.planned = std::make_shared<water::PlannedDay>(planned);
    RecordedPages pages;
    ASSERT_TRUE(paper::paintDaySheet(pages, content, SheetForm::oneSheet));
    EXPECT_TRUE(pages.lines().contains("07:55 to 10:05"));
    EXPECT_TRUE(pages.lines().contains("move 312 m, 07:55 to 10:05"));
}

TEST(OneSheet, MoreMarksTakeMorePagesAndEachIsThere) {
    RecordedPages pages;
    const auto count = paper::paintDaySheet(pages, dayOf(20, 6), SheetForm::oneSheet);
    ASSERT_TRUE(count);
    EXPECT_GT(*count, 2);
    for (int rank = 1; rank <= 20; ++rank) {
        EXPECT_TRUE(pages.lines().contains(QStringLiteral("%1  Place number %1").arg(rank)));
    }
}

/// Points of a letter's size as it is printed.
double pointsOf(const QFont& font) {
    constexpr double pointsPerMillimetre = 72.0 / 25.4;
    return font.pixelSize() / paper::unitsPerMillimetre * pointsPerMillimetre;
}

TEST(OneSheet, WhatHasToBeReadInTheBoatIsAtLeastElevenPoints) {
    const QStringList small{"drop at",   "depth",  "rope",      "rod",      "bearing, distance",
                            "stop knot", "mark",   "species",   "anchored", "rods, bait",
                            "run, time", "weight", "bait depth"};
    RecordedPages pages;
    ASSERT_TRUE(paper::paintDaySheet(pages, dayOf(8, 4), SheetForm::oneSheet));
    int figures = 0;
    for (const Drawn& drawn : pages.all(Drawn::Kind::text)) {
        const bool isCard = drawn.text.contains("rope in") || drawn.text.contains(" m") ||
                            drawn.text.startsWith(QStringLiteral("•")) ||
                            drawn.text.startsWith("Why:");
        const bool isElsewhere =
            small.contains(drawn.text) || drawn.text.contains("against the chart") ||
            drawn.text.startsWith("Ropes are") || drawn.text.startsWith("page") ||
            drawn.text.startsWith("Skarrow") || drawn.text.startsWith("WNW");
        if (isCard && !isElsewhere) {
            ++figures;
            EXPECT_GE(pointsOf(drawn.font), 11.0) << drawn.text.toStdString();
        }
    }
    EXPECT_GT(figures, 8 * 10);
}

TEST(OneSheet, RopesAndStopKnotsAreBold) {
    RecordedPages pages;
    const chart::ChartContent content = support::contentToRead(UnitSystem::metric);
    ASSERT_TRUE(paper::paintDaySheet(pages, content, SheetForm::oneSheet));
    const Said said(UnitSystem::metric);
    const marks::Mark& mark = content.planned->marks.front();
    for (const QString& figure :
         {said.length(mark.anchors.bow.rope), said.length(mark.anchors.stern->rope),
          said.depth(mark.spread.rods[0].stopKnot), said.depth(mark.spread.rods[2].stopKnot)}) {
        const auto texts = pages.all(Drawn::Kind::text);
        EXPECT_TRUE(std::ranges::any_of(texts, [&](const Drawn& drawn) {
            return drawn.text == figure && drawn.font.bold();
        })) << figure.toStdString();
    }
}

TEST(OneSheet, FromForceSixTheFirstThingIsToStayAshoreAndItIsSaidOnce) {
    chart::ChartContent content = dayOf(3, 3);
    water::PlannedDay planned = *content.planned;
    planned.plan.day.wind.speed = units::Speed::knots(30.0);
    planned.cautions = water::dayCautions(planned);
    content.planned = std::make_shared<water::PlannedDay>(planned);
    RecordedPages pages;
    ASSERT_TRUE(paper::paintDaySheet(pages, content, SheetForm::oneSheet));
    const QString sheet = pages.lines().join('\n');
    // Before it stands the foot of the page, which is drawn first.
    EXPECT_TRUE(sheet.section("page 1\n", 1)
                    .startsWith("Force 7 is no weather for a small open boat: stay ashore."))
        << sheet.left(200).toStdString();
    EXPECT_EQ(sheet.count("stay ashore"), 1);
}

TEST(OneSheet, OnPocketPaperTheRodsStandUnderTheAnchorsAndNothingLeavesThePage) {
    RecordedPages pages;
    pages.setPageSize(QPageSize(QPageSize::A5));
    ASSERT_TRUE(paper::paintDaySheet(pages, dayOf(4, 4), SheetForm::oneSheet));
    EXPECT_EQ(pages.pageLayout().pageSize().id(), QPageSize::A5);
    const double perMillimetre = pages.width() / 148.0;
    double rope_mm = 0.0;
    double knot_mm = 0.0;
    for (const Drawn& drawn : pages.all(Drawn::Kind::text)) {
        const QPointF at = drawn.points[0] / perMillimetre;
        const double width_mm =
            QFontMetricsF(drawn.font).horizontalAdvance(drawn.text) / paper::unitsPerMillimetre;
        EXPECT_LE(at.x() + width_mm, 148.0 - 6.0) << drawn.text.toStdString();
        EXPECT_LT(at.y(), 210.0 - 4.0);
        if (drawn.page == 2 && drawn.text == "rope" && rope_mm == 0.0) {
            rope_mm = at.y();
        }
        if (drawn.page == 2 && drawn.text == "stop knot" && knot_mm == 0.0) {
            knot_mm = at.y();
        }
    }
    EXPECT_GT(knot_mm, rope_mm + 15.0);
}

TEST(OneSheet, ACardIsNeverBrokenOverTwoPages) {
    RecordedPages pages;
    ASSERT_TRUE(paper::paintDaySheet(pages, dayOf(12, 4), SheetForm::oneSheet));
    std::map<int, int> page; // of the title, by rank
    int rank = 0;
    for (const Drawn& drawn : pages.all(Drawn::Kind::text)) {
        if (drawn.text.contains("Place number")) {
            page[++rank] = drawn.page;
        } else if (drawn.text.startsWith("Why:")) {
            EXPECT_EQ(drawn.page, page[rank]) << rank;
        }
    }
    EXPECT_EQ(rank, 12);
    EXPECT_GT(page[12], page[1]);
}

} // namespace
