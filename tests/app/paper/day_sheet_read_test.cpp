// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/lettering.h"
#include "app/paper/day_sheet.h"
#include "core/water/steps/day_cautions.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

namespace {

using preferences::UnitSystem;
using support::packed;
using support::RecordedPages;
using support::Said;

/// Everything on the sheet but what stands at the foot of the pages.
QStringList bodyOf(const RecordedPages& pages) {
    QStringList body = pages.lines();
    body.removeIf([](const QString& line) {
        return line == "Skarrow Water, Sat 3 Oct 2026" || line.startsWith("page ");
    });
    return body;
}

QStringList headOf(const Said& said) {
    return {"Skarrow Water",
            "Sat 3 Oct 2026",
            said.either("from 07:40 to 15:05 level −0.35 m against the chart water 5.2 °C",
                        "from 07:40 to 15:05 level −1.1 ft against the chart water 41.4 °F"),
            "first light 06:41 sunrise 07:12 sunset 18:44 dark after 19:16",
            "wind from",
            said.either("WNW 301° 6.2 m/s", "WNW 301° 14 mph")};
}

QStringList overviewRow(const Said& said, const marks::Mark& mark, const QString& when,
                        const QString& move, const QString& name) {
    return {QString::number(mark.rank),
            when,
            move,
            name,
            said.depth(mark.depth) + " ±" + said.depth(mark.trust),
            Said::place(mark.lonLat),
            Said::bearing(mark.anchors.lie.heading)};
}

QStringList overviewOf(const Said& said, const water::PlannedDay& day) {
    return QStringList{"The day", "mark",        "arrive, leave", "move",
                       "place",   "depth today", "position",      "heading"} +
           overviewRow(said, day.marks[1], "07:55 to 10:05", said.either("312 m", "1024 ft"),
                       "Stream Arm") +
           overviewRow(said, day.marks[0], "10:26 to 14:38", said.either("1.2 km", "4068 ft"),
                       "Owl Point") +
           QStringList{"Moves, back to the launch included: " + said.either("2.5 km", "1.5 mi") +
                       ". Left out, no time or no way: mark 3."};
}

QStringList mindOf(const Said& said) {
    return {
        "Of this plan",
        "•  3 of 8 marks found. Left out: " + said.either("12.3 ha", "30.5 ac") +
            " deeper than the limit.",
        "•  There is no time or no way for mark 3 with stays of 30 minutes.",
        "Cautions",
        "•  The water is cold (below " + said.either("15 °C", "59 °F") +
            "): the shock of falling in can kill within a minute. Wear the lifejacket, do not stow "
            "it. If you fall in, float on your back until your breathing settles.",
        "•  You come home after sunset.",
        "•  Tell somebody ashore where you are and when you will be back.",
        "At every mark",
        "•  The depth here is a guess: sound it before you anchor.",
        "Rules of this water",
        "•  At most 4 rods in a boat.",
        "•  No engine within 50 m of the dam.", // The fishery's own words, whatever the unit.
        "For the fish",
        "•  Fish: wet hands, a wet mat, unhooked in the water where it can be done, and a short "
        "time in the air.",
        "All times by the clock of Europe/London. Ropes are worked out from depth plus bow height. "
        "Depths carry the ± given, 95 times in "
        "100. Drawn from your own soundings: not for navigation."};
}

QString anchorOf(const Said& said, const char* name, const anchoring::Anchor& anchor) {
    const auto frame = support::starWater().frame;
    return QStringLiteral("%1 anchor %2 in %3 rope %4")
        .arg(QString::fromLatin1(name), Said::place(frame->toEarth(anchor.place)),
             said.depth(anchor.depth), said.length(anchor.rope));
}

/// What is said of where the boat lies and how it gets there; the rods.
QStringList lieOf(const Said& said, const marks::Mark& mark, const QStringList& over) {
    QStringList lines{
        QStringLiteral("the boat lies at %1, heading %2, in %3 ±%4")
            .arg(Said::place(mark.lonLat), Said::bearing(mark.anchors.lie.heading),
                 said.depth(mark.depth), said.depth(mark.trust)),
        anchorOf(said, "bow", mark.anchors.bow), anchorOf(said, "stern", *mark.anchors.stern),
        QStringLiteral("drop the bow anchor, fall back on %1, lower the stern anchor, haul the bow "
                       "rope in to %2")
            .arg(said.length(mark.anchors.fallBackRope), said.length(mark.anchors.bow.rope))};
    for (std::size_t i = 0; i < mark.spread.rods.size(); ++i) {
        const rods::RodPlace& rod = mark.spread.rods[i];
        lines << QStringLiteral("rod %1 %2 %3 in %4 stop knot %5")
                     .arg(i + 1)
                     .arg(Said::bearing(rod.bearing), said.length(rod.distance),
                          said.depth(rod.depth), said.depth(rod.stopKnot));
        lines << over[static_cast<qsizetype>(i)];
    }
    return lines;
}

QStringList marksOf(const Said& said, const water::PlannedDay& day) {
    const QString runs = QStringLiteral("runs and fish: ………………………………………");
    return QStringList{"Mark 2   Stream Arm   07:55 to 10:05"} +
           lieOf(said, day.marks[1], {"over flat", "over weed bed"}) +
           QStringList{said.either("why: 67 % of the water within a cast can be fished, 1.3 to 4.7 "
                                   "m deep; the wind of 3.2 m/s blows up a slope of 7 %",
                                   "why: 67 % of the water within a cast can be fished, 4.3 to "
                                   "15.4 ft deep; the wind of 7.2 mph blows up a slope of 7 %"),
                       runs, "Mark 1   Owl Point   10:26 to 14:38"} +
           lieOf(said, day.marks[0], {"over drop-off", "over weed edge", ""}) +
           // By how much each brings: value times weight, the three that bring most.
           QStringList{said.either("why: 94 % of the water within a cast can be fished, 2.2 to 6.1 "
                                   "m deep; 58 m of drop-off, 4.0 to 9.0 m, within a cast; waves "
                                   "of 0.13 m after 420 m of open water",
                                   "why: 94 % of the water within a cast can be fished, 7.2 to "
                                   "20.0 ft deep; 190 ft of drop-off, 13.1 to 29.5 ft, within a "
                                   "cast; waves of 0.4 ft after 1378 ft of open water"),
                       "caution: Waves of about " + said.either("0.4 m", "1.3 ft") + " here.",
                       "caution: Room or rope for scope 2.9 only: take a bearing ashore and watch "
                       "whether she drags.",
                       runs};
}

QStringList catchesOf() {
    return {"Catches and blanks: every stay, also the blank ones",
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
    const auto count = paper::paintDaySheet(pages, content, paper::SheetForm::withPictures);
    ASSERT_TRUE(count);
    EXPECT_EQ(*count, pages.pages());
    const QStringList expected = headOf(said) + overviewOf(said, *content.planned) + mindOf(said) +
                                 marksOf(said, *content.planned) + catchesOf();
    EXPECT_EQ(packed(bodyOf(pages)).toStdString(), packed(expected).toStdString());
}

TEST(DaySheetRead, SaysEveryFigureOfTheDayInMetres) {
    expectSheet(UnitSystem::metric);
}

TEST(DaySheetRead, SaysEveryFigureOfTheDayInFeetItsSentencesToo) {
    expectSheet(UnitSystem::imperial);
}

TEST(DaySheetRead, EveryPageBearsWaterDayAndNumber) {
    RecordedPages pages;
    ASSERT_TRUE(paper::paintDaySheet(pages, support::contentToRead(UnitSystem::metric),
                                     paper::SheetForm::withPictures));
    ASSERT_GE(pages.pages(), 2);
    for (int page = 1; page <= pages.pages(); ++page) {
        EXPECT_TRUE(pages.lines(page).contains("Skarrow Water, Sat 3 Oct 2026")) << page;
        EXPECT_TRUE(pages.lines(page).contains(QStringLiteral("page %1").arg(page))) << page;
    }
}

/// The sheet of a day that was changed before it was printed.
QString sheetAfter(const std::function<void(water::PlannedDay&, water::Water&)>& change) {
    chart::ChartContent content = support::contentToRead(UnitSystem::metric);
    water::PlannedDay planned = *content.planned;
    water::Water water = *content.water;
    change(planned, water);
    content.planned = std::make_shared<water::PlannedDay>(planned);
    content.water = std::make_shared<water::Water>(water);
    RecordedPages pages;
    EXPECT_TRUE(paper::paintDaySheet(pages, content, paper::SheetForm::withPictures));
    return pages.lines().join('\n');
}

TEST(DaySheetRead, WhatDoesNotCountIsNoReason) {
    const auto isSaid = [](double weight, double times) {
        // Two reasons count at this mark, and the sheet has room for three.
        const QString sheet = sheetAfter([&](water::PlannedDay& planned, water::Water&) {
            planned.marks[1].factors.push_back({marks::FactorKind::trust, 0.5, weight,
                                                marks::DepthsKnownTo{units::Length::metres(0.8)},
                                                times});
        });
        return sheet.contains("known to ±0.8");
    };
    EXPECT_FALSE(isSaid(0.0, 1.0));
    EXPECT_TRUE(isSaid(0.2, 1.1));
    EXPECT_TRUE(isSaid(0.0, 1.1)) << "the log says that it counts";
}

TEST(DaySheetRead, WithoutAnOrderOfTheDayEveryMarkStandsThereByRank) {
    const QString sheet =
        sheetAfter([](water::PlannedDay& planned, water::Water&) { planned.day = {}; });
    const qsizetype first = sheet.indexOf("Mark 1   Owl Point\n");
    const qsizetype second = sheet.indexOf("Mark 2   Stream Arm\n");
    const qsizetype third = sheet.indexOf("Mark 3   \n");
    EXPECT_GT(first, 0);
    EXPECT_GT(second, first);
    EXPECT_GT(third, second);
    EXPECT_FALSE(sheet.contains("Moves, back")) << "there are none";
    EXPECT_FALSE(sheet.contains("Left out, no time"));
}

TEST(DaySheetRead, EveryMarkLeftOutIsNamed) {
    const QString sheet = sheetAfter([](water::PlannedDay& planned, water::Water&) {
        planned.day.stops = {planned.day.stops.front()};
        planned.day.leftOut = {1, 3};
    });
    EXPECT_TRUE(sheet.contains("mark 1, 3.")) << sheet.toStdString();
    EXPECT_FALSE(sheet.contains("Owl Point"));
}

TEST(DaySheetRead, OneMarksOwnCautionIsNotSaidOfTheWholeDay) {
    const QString sheet = sheetAfter(
        [](water::PlannedDay& planned, water::Water&) { planned.marks[1].cautions.clear(); });
    EXPECT_TRUE(sheet.contains("caution: The depth here is a guess: sound it"));
    EXPECT_FALSE(sheet.contains("•  The depth here is a guess: sound it"));
}

TEST(DaySheetRead, LightThatDoesNotComeIsADashAndUnknownWaterIsNotSaid) {
    const QString sheet = sheetAfter([](water::PlannedDay& planned, water::Water&) {
        planned.light.civilDawn.reset();
        planned.light.civilDusk.reset();
        planned.plan.day.waterTemperature.reset();
    });
    EXPECT_TRUE(sheet.contains("first light -   sunrise 07:12   sunset 18:44   dark after -"));
    EXPECT_TRUE(sheet.contains("level −0.35 m against the chart\n"));
}

/// The sheet of the day in a wind of this force, with its true cautions.
QString sheetInForce(double knots, std::optional<double> celsius = 17.0) {
    return sheetAfter([&](water::PlannedDay& planned, water::Water&) {
        planned.plan.day.wind.speed = units::Speed::knots(knots);
        planned.plan.day.waterTemperature =
            celsius ? std::optional(units::Temperature::celsius(*celsius)) : std::nullopt;
        planned.cautions = water::dayCautions(planned);
    });
}

TEST(DaySheetRead, FromForceSixTheFirstThingOnTheSheetIsToStayAshore) {
    const QString six = sheetInForce(22.0);
    // Before it stands the foot of the page, which is drawn first.
    const auto firstOf = [](const QString& sheet) {
        return sheet.section("page 1\n", 1).section('\n', 0, 0);
    };
    EXPECT_EQ(firstOf(six), "Force 6 is no weather for a small open boat: stay ashore.");
    EXPECT_EQ(six.count("stay ashore"), 1) << "said once";
    EXPECT_EQ(firstOf(sheetInForce(36.0)),
              "Force 8 is no weather for a small open boat: stay ashore.");
    const QString five = sheetInForce(21.0);
    EXPECT_EQ(firstOf(five), "Skarrow Water");
    EXPECT_TRUE(five.contains("Cautions\n•  Force 5: white horses."));
}

TEST(DaySheetRead, AWindThatNobodySaidIsTheFirstThingOnTheSheet) {
    const QString sheet = sheetAfter([](water::PlannedDay& planned, water::Water&) {
        planned.plan.day.wind = {};
        planned.cautions = water::dayCautions(planned);
        planned.basis = {water::NothingCaught{}, water::WavesNotCounted{}};
    });
    const QString first = sheet.section("page 1\n", 1).section('\n', 0, 2).replace('\n', ' ');
    EXPECT_TRUE(first.startsWith(
        "Strength of the wind: not said; waves and shelter are not counted. How strong "
        "the wind will be is not known: look at the forecast before you go out."))
        << first.toStdString();
    EXPECT_EQ(sheet.count("forecast"), 1) << "said once";
    EXPECT_FALSE(sheet.contains("wind from")) << sheet.toStdString();
    EXPECT_TRUE(sheet.contains("wind not said"));
}

TEST(DaySheetRead, NoCautionStandsTwiceAndColdWaterIsTheFirstOnACalmDay) {
    const QString sheet = sheetInForce(8.0, 4.5);
    EXPECT_TRUE(sheet.contains("Cautions\n•  The water is cold (below 15 °C)"));
    QStringList lines;
    for (const QString& line : sheet.split('\n')) {
        if (line.startsWith(QStringLiteral("•  ")) || line.startsWith("caution: ")) {
            const QString said = line.startsWith("caution: ") ? line.mid(9) : line.mid(3);
            EXPECT_FALSE(lines.contains(said) && !line.startsWith("caution: "))
                << said.toStdString();
            lines << said;
        }
    }
    EXPECT_EQ(sheet.count("lifejacket"), 1);
    EXPECT_LT(sheet.indexOf("\nCautions\n"), sheet.indexOf("\nRules of this water\n"));
}

TEST(DaySheetRead, WhatTheListStandsOnIsSaidBeforeWhatBecameOfIt) {
    const QString sheet = sheetAfter([](water::PlannedDay& planned, water::Water&) {
        planned.basis = {water::NothingCaught{}};
    });
    EXPECT_TRUE(sheet.contains("Of this plan\n•  Nothing caught yet: by your beliefs alone.\n•  "
                               "There is no time or no way for mark 3"));
}

/// The star's day with every reason, caution and note that holds an amount; three reasons a mark.
water::PlannedDay dayOfAllAmounts() {
    using units::Depth;
    using units::Length;
    water::PlannedDay planned = support::dayToRead();
    const std::vector<marks::Reason> reasons{
        marks::FishableWater{},
        marks::FishableWater{0.5, Depth::metres(1.0), Depth::metres(5.0), Depth::metres(9.0)},
        marks::DropOffNear{Length::metres(58.0), Depth::metres(4.0), Depth::metres(9.0)},
        marks::WeedEdgeNear{Length::metres(12.0)},
        marks::FeaturesNear{units::Area::squareMetres(310.0), structure::ZoneKind::hump},
        marks::WindOnSlope{units::Speed::metresPerSecond(6.0), marks::WindOnSlope::Way::down, 0.1},
        marks::WaveState{Length::metres(412.0), Length::metres(0.12)},
        marks::DepthsKnownTo{Length::metres(0.4)}};
    for (std::size_t k = 0; k < planned.marks.size(); ++k) {
        planned.marks[k].factors.clear();
        for (std::size_t r = 3 * k; r < std::min(3 * k + 3, reasons.size()); ++r) {
            planned.marks[k].factors.push_back({marks::FactorKind::depth, 1.0, 1.0, reasons[r]});
        }
    }
    planned.day.stops.clear();
    planned.plan.day.waterTemperature = units::Temperature::celsius(22.0);
    planned.cautions.emplace_back(water::FallingIn{water::ColdWater{false}, true});
    planned.fishCare.push_back(water::FishCare::warmWater);
    planned.rules = {water::RodLimit{4}};
    return planned;
}

TEST(DaySheetRead, TheSheetOfSomebodyWhoCountsInFeetHasNoMetreOnIt) {
    static const QRegularExpression metric(
        QStringLiteral(R"(\d\s?(m|cm|km|ha|kg|m²|m³|m/s|°C)(?![\w/²³]))"));
    static const QRegularExpression imperial(QStringLiteral(R"(\d (ft|ft²|mph|ac|°F)(?!\w))"));
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        chart::ChartContent content = support::contentToRead(units);
        content.planned = std::make_shared<water::PlannedDay>(dayOfAllAmounts());
        RecordedPages pages;
        ASSERT_TRUE(paper::paintDaySheet(pages, content, paper::SheetForm::withPictures));
        RecordedPages one;
        ASSERT_TRUE(paper::paintDaySheet(one, content, paper::SheetForm::oneSheet));
        const QString sheet = (pages.lines() + one.lines()).join('\n');
        const bool isMetric = units == UnitSystem::metric;
        const auto wrong = (isMetric ? imperial : metric).match(sheet);
        EXPECT_FALSE(wrong.hasMatch()) << wrong.captured().toStdString();
        auto right = (isMetric ? metric : imperial).globalMatch(sheet);
        int amounts = 0;
        for (; right.hasNext(); right.next()) {
            ++amounts;
        }
        EXPECT_GT(amounts, 50) << "the search finds what is there";
    }
}

/// Marks that get a plan say its scale under it.
int plansOn(int marks) {
    chart::ChartContent content = support::contentToRead(UnitSystem::metric);
    water::PlannedDay planned = *content.planned;
    planned.day = {};
    planned.marks.assign(static_cast<std::size_t>(marks), planned.marks.front());
    content.planned = std::make_shared<water::PlannedDay>(planned);
    RecordedPages pages;
    EXPECT_TRUE(paper::paintDaySheet(pages, content, paper::SheetForm::withPictures));
    // From the bait in the north to that in the south 48.8 m, 1.45 times that on 66 mm: 1 : 1072.
    return static_cast<int>(
        pages.lettered("1 : 1250, north up", chart::typeface(chart::TypeSize::small, 0.8)).size());
}

TEST(DaySheetRead, TheFirstFourMarksAreDrawnToScale) {
    EXPECT_EQ(plansOn(1), 1);
    EXPECT_EQ(plansOn(4), 4);
    EXPECT_EQ(plansOn(6), 4);
}

TEST(DaySheetRead, IsLaidOnThePaperThatIsPutIn) {
    for (const auto& [id, width_mm, height_mm] :
         {std::tuple(QPageSize::A4, 210.0, 297.0), std::tuple(QPageSize::Letter, 215.9, 279.4)}) {
        RecordedPages pages;
        pages.setPageSize(QPageSize(id));
        ASSERT_TRUE(paper::paintDaySheet(pages, support::contentToRead(UnitSystem::metric),
                                         paper::SheetForm::withPictures));
        EXPECT_EQ(pages.pageLayout().pageSize().id(), id);
        // The line above a mark goes from margin to margin.
        const double perMillimetre = pages.width() / width_mm;
        double left_mm = width_mm;
        double right_mm = 0.0;
        double lowest_mm = 0.0;
        for (const support::Drawn& line : pages.all(support::Drawn::Kind::line)) {
            left_mm = std::min(left_mm, line.points[0].x() / perMillimetre);
            right_mm = std::max(right_mm, line.points[1].x() / perMillimetre);
        }
        for (const support::Drawn& text : pages.all(support::Drawn::Kind::text)) {
            lowest_mm = std::max(lowest_mm, text.points[0].y() / perMillimetre);
        }
        EXPECT_NEAR(right_mm, width_mm - 12.0, 0.1);
        EXPECT_LT(lowest_mm, height_mm - 12.0);
        EXPECT_GT(lowest_mm, height_mm - 20.0) << "the page's number stands at its foot";
    }
}

} // namespace
