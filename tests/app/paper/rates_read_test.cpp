// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/lettering.h"
#include "app/paper/picture.h"
#include "app/paper/rates_picture.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using support::Drawn;
using support::RecordedPages;

/// Three sections of which one was never fished; rates that a hand can check.
rates::RateTable threeSections() {
    rates::RateTable table;
    const auto add = [&](const char* name, int fish, double hours, int stays, int blanks,
                         std::optional<rates::Rate> rate) {
        rates::RateRow row;
        row.name = name;
        row.fish = fish;
        row.rodHours = hours;
        row.stays = stays;
        row.blanks = blanks;
        row.rate = rate;
        table.rows.push_back(row);
    };
    add("Kiln Bay", 8, 40.4, 9, 4, rates::Rate{2.0, 0.9, 3.9});
    add("Long Bar", 3, 61.0, 12, 10, rates::Rate{0.5, 0.1, 1.4});
    add("Sluice", 0, 0.0, 0, 0, std::nullopt);
    table.overall.rate = rates::Rate{1.1, 0.6, 1.9};
    table.notes = {"Few stays: read with care."};
    return table;
}

class RatesOnPaper : public testing::Test {
protected:
    void paint(const rates::RateTable& table, QRectF box = {0, 0, 1200, 600}) {
        QPainter painter(&pages_);
        paper::paintRates(painter, box, table, "Fish by section");
    }
    QPointF placeOf(const QString& text) const {
        for (const Drawn& drawn : pages_.all(Drawn::Kind::text)) {
            if (drawn.text == text) {
                return drawn.points[0];
            }
        }
        ADD_FAILURE() << "no " << text.toStdString();
        return {};
    }
    RecordedPages pages_;
};

TEST_F(RatesOnPaper, SaysEveryRowWithItsIntervalFishEffortAndBlanks) {
    paint(threeSections());
    const QStringList lines = pages_.lines();
    for (const char* line :
         {"Fish by section", "fish per 10 rod-hours; the line is the 95 % interval", "Kiln Bay",
          "2.0 (0.9 to 3.9)   8 fish in 40 rod-hours, 4 of 9 stays blank", "Long Bar",
          "0.5 (0.1 to 1.4)   3 fish in 61 rod-hours, 10 of 12 stays blank", "Sluice", "not fished",
          "all: 1.1", "Few stays: read with care."}) {
        EXPECT_TRUE(lines.contains(line)) << line << "\n" << lines.join('\n').toStdString();
    }
    // Each in the row of its own name.
    EXPECT_NEAR(placeOf("Kiln Bay").y(),
                placeOf("2.0 (0.9 to 3.9)   8 fish in 40 rod-hours, 4 of 9 stays blank").y(), 0.5);
    EXPECT_NEAR(placeOf("Sluice").y(), placeOf("not fished").y(), 0.5);
    EXPECT_LT(placeOf("Kiln Bay").y(), placeOf("Long Bar").y());
}

TEST_F(RatesOnPaper, BarsAndIntervalsStandOnTheAxisThatIsWritten) {
    paint(threeSections());
    // The axis: a light line at each of its figures, from nought on.
    std::vector<QLineF> grid;
    for (const Drawn& line : pages_.all(Drawn::Kind::line)) {
        if (line.pen.color() == chart::withAlpha(chart::Palette::screen().ink, 0.15)) {
            grid.emplace_back(line.points[0], line.points[1]);
        }
    }
    ASSERT_GE(grid.size(), 3U);
    // The most is the larger of 1.3 times the best rate and what holds most intervals: 1.08 x 3.9.
    // Its step is half a unit.
    const double nought = grid[0].x1();
    const double unit = (grid[2].x1() - nought) / 1.0;
    EXPECT_GT(unit, 50.0);
    EXPECT_TRUE(pages_.lines().contains("0.5")) << "the second figure of the axis";
    EXPECT_TRUE(pages_.lines().contains("1"));
    std::vector<QRectF> bars;
    for (const Drawn& box : pages_.all(Drawn::Kind::polygon)) {
        if (box.brush.color() == chart::Palette::screen().depthAt(0.62)) {
            bars.push_back(box.points.boundingRect());
        }
    }
    ASSERT_EQ(bars.size(), 2U);
    EXPECT_NEAR(bars[0].left(), nought, 0.01);
    EXPECT_NEAR(bars[0].right(), nought + 2.0 * unit, 0.01);
    EXPECT_NEAR(bars[1].right(), nought + 0.5 * unit, 0.01);
    std::vector<QLineF> intervals;
    for (const Drawn& line : pages_.all(Drawn::Kind::line)) {
        const QLineF drawn(line.points[0], line.points[1]);
        if (line.pen.color() == chart::Palette::screen().ink && drawn.dy() == 0.0) {
            intervals.push_back(drawn);
        }
    }
    ASSERT_EQ(intervals.size(), 2U);
    EXPECT_NEAR(intervals[0].x1(), nought + 0.9 * unit, 0.01);
    EXPECT_NEAR(intervals[0].x2(), nought + 3.9 * unit, 0.01);
    EXPECT_NEAR(intervals[1].x1(), nought + 0.1 * unit, 0.01);
    EXPECT_NEAR(intervals[1].x2(), nought + 1.4 * unit, 0.01);
    for (const Drawn& line : pages_.all(Drawn::Kind::line)) {
        if (line.pen.style() == Qt::DashLine) {
            EXPECT_NEAR(line.points[0].x(), nought + 1.1 * unit, 0.01) << "the whole water's";
        }
    }
}

TEST_F(RatesOnPaper, AnIntervalThatGoesOffThePageIsCutWithAnArrow) {
    rates::RateTable table = threeSections();
    table.rows[1].rate = rates::Rate{0.5, 0.1, 40.0};
    paint(table);
    int slanted = 0;
    for (const Drawn& line : pages_.all(Drawn::Kind::line)) {
        const QLineF drawn(line.points[0], line.points[1]);
        slanted += drawn.dx() != 0.0 && drawn.dy() != 0.0 ? 1 : 0;
    }
    EXPECT_EQ(slanted, 2);
}

TEST_F(RatesOnPaper, RowsThatDoNotFitAreCounted) {
    rates::RateTable table = threeSections();
    for (int i = 0; i < 40; ++i) {
        table.rows.push_back(table.rows[0]);
        table.rows.back().name = "Section " + std::to_string(i);
    }
    paint(table, {0, 0, 1200, 400});
    int named = 0;
    int more = 0;
    for (const QString& line : pages_.lines()) {
        named += line.startsWith("Section ") || line == "Kiln Bay" || line == "Long Bar" ||
                         line == "Sluice"
                     ? 1
                     : 0;
        if (line.endsWith(" more rows are not shown.")) {
            more = line.section(' ', 0, 0).toInt();
        }
    }
    EXPECT_GT(named, 3);
    EXPECT_GT(more, 3);
    EXPECT_EQ(named + more, 43);
}

/// What the picture's head ought to look like, with these facts.
QImage headWith(const QString& facts, QSize size) {
    QImage head(size, QImage::Format_RGB32);
    const chart::Palette& palette = chart::Palette::screen();
    head.fill(palette.card);
    QPainter painter(&head);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setRenderHint(QPainter::TextAntialiasing, true);
    double left = 16.0;
    for (const auto& [font, text, colour] :
         {std::tuple(chart::typeface(chart::TypeSize::normal, 1.35, chart::TypeStyle::bold),
                     QStringLiteral("Skarrow Water"), palette.ink),
          std::tuple(chart::typeface(chart::TypeSize::small, 1.0), facts, palette.faintInk)}) {
        const double length = chart::boxOf(font, text, {}).width();
        chart::drawText(painter, font, {left + 0.5 * length, 23.0}, text, {colour, palette.card},
                        0.0);
        left += length + 22.0;
    }
    return head;
}

TEST(PictureRead, ItsHeadSaysAreaDepthsDayLevelAndThatItIsNotForNavigation) {
    for (const auto& [units, facts] :
         {std::pair(preferences::UnitSystem::metric,
                    "57.0 ha   deepest 20.0 m   mean 10.0 m   marks for Sat 3 Oct 2026   depths at "
                    "chart level   not for navigation"),
          {preferences::UnitSystem::imperial,
           "141 ac   deepest 65.6 ft   mean 32.8 ft   marks for Sat 3 Oct 2026   depths at chart "
           "level   not for navigation"}}) {
        const QImage picture = paper::renderPicture(support::contentToRead(units), {1280, 800});
        const QSize size(1280, 44); // Without the line below it.
        EXPECT_EQ(picture.copy(QRect(QPoint(), size)), headWith(facts, size)) << facts;
    }
}

} // namespace
