// SPDX-License-Identifier: GPL-3.0-or-later
// Places shaded by their rates, and stays that are asked about, as they are painted.
#include "app/chart/layers/layer.h"
#include "app/chart/picking.h"
#include "app/chart/rate_shade.h"
#include "tests/app/support/recorded.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

namespace {

using chart::ChartContent;
using chart::LayerKind;
using chart::Palette;
using chart::Sureness;
using support::Drawn;
using support::Recorded;

const QSize page(900, 700);

rates::RateRow rowOf(const std::string& name, rates::Rate steadied, bool isTried) {
    rates::RateRow row;
    row.name = name;
    row.shrunk = steadied;
    if (isTried) {
        row.rate = rates::Rate{9.9, 0.0, 99.0}; // not what is to be seen
    }
    return row;
}

ChartContent shaded(const std::vector<rates::RateRow>& rows) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::rates};
    chart::ShownRates rates;
    rates.table.rows = rows;
    content.rates = std::make_shared<const chart::ShownRates>(rates);
    return content;
}

std::vector<Drawn> fillsOf(const ChartContent& content, const QColor& colour) {
    Recorded drawn(page);
    support::paintOn(drawn, content, chart::wholeWater(content, page));
    std::vector<Drawn> fills;
    for (const Drawn& each : drawn.all()) {
        if (each.isFill(colour)) {
            fills.push_back(each);
        }
    }
    return fills;
}

TEST(RateShade, GoesSteadilyAwayFromThePaperWithTheRateInAllThemes) {
    for (const chart::Inks inks : chart::allInks) {
        const Palette& palette = Palette::of(inks);
        // Darker on light paper, lighter on dark.
        const float away = inks == chart::Inks::dark ? 1.0F : -1.0F;
        float before = -2.0F;
        for (const double rate : {0.0, 0.5, 1.0, 1.5, 2.0}) {
            const float lightness = away * chart::shadeOf(palette, rate, 2.0).lightnessF();
            EXPECT_GT(lightness, before + 0.02F) << rate << ' ' << static_cast<int>(inks);
            before = lightness;
        }
        EXPECT_EQ(chart::shadeOf(palette, 9.0, 2.0), chart::shadeOf(palette, 2.0, 2.0));
        EXPECT_EQ(chart::shadeOf(palette, 0.0, 0.0), chart::shadeOf(palette, 0.0, 2.0));
    }
}

TEST(RateShade, IsAsSureAsHalfItsIntervalIsNarrow) {
    const auto of = [](double half) { return chart::surenessOf({2.0, 2.0 - half, 2.0 + half}); };
    EXPECT_EQ(of(0.5), Sureness::sure);
    EXPECT_EQ(of(1.0), Sureness::sure);
    EXPECT_EQ(of(1.01), Sureness::rough);
    EXPECT_EQ(of(2.0), Sureness::rough);
    EXPECT_EQ(of(2.01), Sureness::hardly);
}

TEST(RatesPainted, EachSectionInItsShadeAndTheUntriedInNone) {
    const auto sections = support::starContent().derived.sections->sections;
    ASSERT_GE(sections.size(), 3U);
    const auto content = shaded({rowOf(sections[0].name, {2.0, 1.5, 2.5}, true),
                                 rowOf(sections[1].name, {1.0, 0.1, 4.0}, true),
                                 rowOf(sections[2].name, {1.7, 0.1, 4.0}, false)});
    const Palette& screen = Palette::screen();
    const auto view = chart::wholeWater(content, page);
    for (const auto& [i, rate] : {std::pair<std::size_t, double>(0, 2.0), {1, 1.0}}) {
        const auto fills = fillsOf(content, chart::shadeOf(screen, rate, 2.0));
        ASSERT_EQ(fills.size(), 1U) << i;
        EXPECT_TRUE(fills[0].path.contains(view.toScreen(sections[i].middle))) << i;
    }
    EXPECT_TRUE(fillsOf(content, chart::shadeOf(screen, 1.7, 2.0)).empty())
        << "nobody fished there: what is expected is no record";
    // The sure one is whole, of the other the shade is broken up; untried ones are blank.
    const auto blank = fillsOf(content, screen.card);
    const auto holes = std::ranges::count_if(
        blank, [](const Drawn& each) { return each.path.elementCount() > 100; });
    EXPECT_EQ(holes, 1);
}

TEST(RatesPainted, AreNotThereUnlessTheyAreToBeSeen) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::rates};
    Recorded drawn(page);
    support::paintOn(drawn, content, chart::wholeWater(content, page));
    EXPECT_LE(drawn.all().size(), 1U) << "but for the paper";
}

TEST(RatesPainted, TheKeySaysWhatTheShadesMean) {
    const auto sections = support::starContent().derived.sections->sections;
    ChartContent content = shaded({rowOf(sections[0].name, {2.4, 1.5, 2.5}, true)});
    content.shown.insert(LayerKind::furniture);
    Recorded drawn(QSize(1400, 900));
    support::paintOn(drawn, content, chart::wholeWater(content, QSize(1400, 900)));
    for (const char* words : {"fish per 10 rod-hours, steadied", "2.4", "1.2", "0.0",
                              "sure to within itself", "hardly known", "not tried"}) {
        EXPECT_EQ(drawn.texts(words).size(), 1U) << words;
    }
}

TEST(StaysPainted, OnlyThoseThatAreAskedAboutAndOnlyTheyCanBePicked) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::log};
    const auto view = chart::wholeWater(content, page);
    const logbook::Stay stay = content.water->log[0];
    const QPointF at = view.toScreen(content.water->frame->toWater(stay.place));
    ASSERT_EQ(chart::stayAt(content, view, at), stay.id);
    water::ReviewQuestion question;
    question.from = content.water->clock.dayOf(stay.start);
    content.logAsked = question;
    EXPECT_EQ(chart::stayAt(content, view, at), stay.id);
    question.from = units::Day(std::chrono::sys_days(*question.from) + std::chrono::days(4000));
    content.logAsked = question;
    EXPECT_FALSE(chart::stayAt(content, view, at));
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    EXPECT_LE(drawn.all().size(), 1U);
}

TEST(StaysPainted, ShowTheFishOfTheKindAskedAlone) {
    logbook::Stay stay;
    stay.runs.resize(3);
    stay.runs[0].species = "pike";
    stay.runs[1].species = "perch";
    stay.runs[2].landed = false;
    EXPECT_EQ(chart::runsSeen(stay, std::nullopt).size(), 3U);
    water::ReviewQuestion question;
    EXPECT_EQ(chart::runsSeen(stay, question).size(), 3U) << "a day asked for is no kind of fish";
    question.species = "perch";
    EXPECT_EQ(chart::runsSeen(stay, question), std::vector<const logbook::Fish*>{&stay.runs[1]});
}

} // namespace
