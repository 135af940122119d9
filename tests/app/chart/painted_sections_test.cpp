// SPDX-License-Identifier: GPL-3.0-or-later
// Weed and sections as they are painted, and where.
#include "tests/app/support/recorded.h"
#include "tests/app/support/star_water.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using chart::ChartContent;
using chart::LayerKind;
using chart::Palette;
using chart::ViewFrame;
using geo::WaterPoint;
using support::Drawn;
using support::Recorded;

const QSize page(900, 700);

double apart(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

ChartContent only(LayerKind kind) {
    ChartContent content = support::starContent();
    content.shown = {kind};
    return content;
}

TEST(WeedPainted, ReedsGrowWhereWeedIsMoreLikelyThanNotAndOnlyInTheWater) {
    const ChartContent content = only(LayerKind::weed);
    const ViewFrame view = chart::wholeWater(content, page);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto thick = drawn.strokes(Palette::screen().weed, 1.25);
    ASSERT_GT(thick.size(), 10U);
    EXPECT_TRUE(drawn.strokes(Palette::screen().weed, 0.9).empty()) << "likely at nine in ten";
    for (const Drawn& reed : thick) {
        const auto points = reed.points();
        const WaterPoint foot = view.toWater(points[4]); // of the blade in the middle
        EXPECT_GT(foot.x_m, 245.0);
        EXPECT_TRUE(content.derived.outline->contains(foot));
    }
}

TEST(SectionsPainted, AreNamedWithTheirRatesOrThatTheyWereNotFished) {
    ChartContent content = only(LayerKind::sections);
    auto rates = std::make_shared<chart::ShownRates>();
    rates->table.rows.resize(2);
    rates->table.rows[0].name = "Kiln Bay";
    rates->table.rows[0].rate = rates::Rate{9.9, 8.8, 11.1}; // not this one: it is not steadied
    rates->table.rows[0].shrunk = rates::Rate{1.4, 0.6, 2.9};
    rates->table.rows[1].name = "Long Bar";
    rates->table.rows[1].shrunk = rates::Rate{0.9, 0.1, 4.0};
    content.rates = rates;
    content.selection.section = 2;
    const ViewFrame view = chart::wholeWater(content, page);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto& all = content.derived.sections->sections;
    const auto rate = drawn.texts("1.4 (0.6 to 2.9)");
    ASSERT_EQ(rate.size(), 1U);
    EXPECT_LT(apart(rate[0].at, view.toScreen(all[1].middle)), 45.0);
    EXPECT_EQ(drawn.texts("not fished").size(), all.size() - 1);
    for (const sections::Section& section : all) {
        const auto name = drawn.texts(QString::fromStdString(section.name));
        ASSERT_EQ(name.size(), 1U) << section.name;
        EXPECT_LT(apart(name[0].at, view.toScreen(section.middle)), 35.0) << section.name;
        EXPECT_EQ(name[0].colour.rgb() == Palette::screen().rust.rgb(), section.name == "Long Bar");
    }
    const auto chosen = drawn.strokes(Palette::screen().rust, 2.6);
    ASSERT_EQ(chosen.size(), 1U);
    EXPECT_TRUE(chosen[0].path.contains(view.toScreen(all[2].middle)));
}

/// The sections of the star with their numbers and cells, and short names: as long a name as it has
/// stands along the spine, which is asked for letter by letter.
ChartContent dividedIntoCells() {
    ChartContent content = only(LayerKind::sections);
    auto map = std::make_shared<sections::SectionMap>(*content.derived.sections);
    const grid::GridFrame& frame = map->sectionOfCell.frame();
    for (std::size_t k = 0; k < map->sections.size(); ++k) {
        sections::Section& section = map->sections[k];
        section.number = static_cast<int>(k) + 11;
        section.spine = {section.middle};
        QPolygonF ring;
        for (const geo::WaterPoint corner : section.pieces.front().outer) {
            ring.append({corner.x_m, corner.y_m});
        }
        for (std::size_t i = 0; i < frame.size(); ++i) {
            const geo::WaterPoint p = frame.centre(frame.cellAt(i));
            if (ring.containsPoint({p.x_m, p.y_m}, Qt::OddEvenFill)) {
                map->sectionOfCell[frame.cellAt(i)] = static_cast<int>(k);
            }
        }
    }
    content.derived.sections = map;
    return content;
}

/// True where a text that long, set at `middle`, lies in the section.
bool liesIn(const ChartContent& content, const ViewFrame& view, std::size_t section,
            const QString& words, QPointF at) {
    const QRectF box = chart::boxOf(chart::typeface(chart::TypeSize::small, 1.0), words, at)
                           .adjusted(2.0, 1.0, -2.0, -1.0);
    const auto& of = content.derived.sections->sectionOfCell;
    for (const double x : {box.left(), box.center().x(), box.right()}) {
        for (const double y : {box.top(), box.bottom()}) {
            const grid::Cell cell = of.frame().cellOf(view.toWater({x, y}));
            if (!of.frame().holds(cell) || of[cell] != static_cast<int>(section)) {
                return false;
            }
        }
    }
    return true;
}

TEST(SectionsPainted, NamesStayInTheirOwnWaterAndGiveWayWhereTheyDoNotFit) {
    const ChartContent content = dividedIntoCells();
    const auto& all = content.derived.sections->sections;
    int whole = 0;
    int numbers = 0;
    for (const QSize size : {QSize(1600, 1200), QSize(420, 320), QSize(200, 160), QSize(90, 70)}) {
        const ViewFrame view = chart::wholeWater(content, size);
        Recorded drawn(size);
        support::paintOn(drawn, content, view);
        for (std::size_t i = 0; i < all.size(); ++i) {
            for (const QString& words :
                 {QString::fromStdString(all[i].name), QString::number(all[i].number)}) {
                for (const auto& text : drawn.texts(words)) {
                    EXPECT_TRUE(liesIn(content, view, i, words, text.at))
                        << words.toStdString() << " at " << size.width();
                    ++(words == QString::fromStdString(all[i].name) ? whole : numbers);
                }
            }
        }
    }
    EXPECT_GT(whole, 0);
    EXPECT_GT(numbers, 0) << "a number where the name has no room";
}

} // namespace
