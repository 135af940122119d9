// SPDX-License-Identifier: GPL-3.0-or-later
// What the bottom has done since an earlier survey, as it is painted.
#include "app/chart/chart_painter.h"
#include "tests/app/support/recorded.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using chart::ChartContent;
using chart::LayerKind;
using chart::Palette;
using support::Drawn;
using support::Recorded;

const QSize page(900, 700);

/// Silt of `rise_m` in the west of the star and as much lost in the east; within ±0.3 m.
ChartContent changed(double rise_m) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::change};
    water::YearsCompared years;
    const grid::GridFrame& frame = content.derived.drawn->depth.frame();
    years.change = {grid::Grid<float>(frame, NAN), grid::Grid<float>(frame, 0.3F)};
    for (std::size_t i = 0; i < frame.size(); ++i) {
        if (content.derived.drawn->depth.has(i)) {
            const double west = frame.centre(frame.cellAt(i)).x_m < 0.0 ? 1.0 : -1.0;
            years.change.rise_m[i] = static_cast<float>(west * rise_m);
        }
    }
    content.years = std::make_shared<const water::YearsCompared>(years);
    return content;
}

struct Signs {
    std::vector<Drawn> risen;
    std::vector<Drawn> fallen;
};

Signs signsOn(const ChartContent& content) {
    Recorded drawn(page);
    const chart::ViewFrame view = chart::wholeWater(content, page);
    support::paintOn(drawn, content, view);
    const Palette& palette = Palette::screen();
    Signs signs;
    for (const Drawn& each : drawn.all()) {
        const bool isDot = each.brush.style() == Qt::SolidPattern &&
                           each.brush.color().rgb() == palette.rust.rgb();
        const bool isRing =
            each.brush.color().rgb() == palette.card.rgb() && each.isStroke(palette.ink, 1.2);
        (isDot ? signs.risen : signs.fallen).push_back(each);
        if (!isDot && !isRing) {
            signs.fallen.pop_back();
        }
    }
    return signs;
}

TEST(ChangePainted, DotsWhereItHasRisenAndRingsWhereItHasFallen) {
    const ChartContent content = changed(0.5);
    const Signs signs = signsOn(content);
    ASSERT_GT(signs.risen.size(), 50U);
    ASSERT_GT(signs.fallen.size(), 50U);
    const chart::ViewFrame view = chart::wholeWater(content, page);
    for (const Drawn& dot : signs.risen) {
        ASSERT_LT(view.toWater(dot.middle()).x_m, 10.0);
    }
    for (const Drawn& ring : signs.fallen) {
        ASSERT_GT(view.toWater(ring.middle()).x_m, -10.0);
    }
}

TEST(ChangePainted, NothingWhereBothSurveysMayBeOffByAsMuch) {
    const Signs signs = signsOn(changed(0.29));
    EXPECT_TRUE(signs.risen.empty());
    EXPECT_TRUE(signs.fallen.empty());
    ChartContent none = changed(0.5);
    none.years.reset();
    EXPECT_TRUE(signsOn(none).risen.empty());
}

TEST(ChangePainted, TheMoreTheLargerUpToAMetre) {
    const auto sizeOf = [](double rise_m) {
        return signsOn(changed(rise_m)).risen.at(0).path.boundingRect().width();
    };
    EXPECT_LT(sizeOf(0.35), sizeOf(0.7));
    EXPECT_LT(sizeOf(0.7), sizeOf(1.0));
    EXPECT_EQ(sizeOf(1.0), sizeOf(3.0));
}

TEST(ChangePainted, TheKeySaysWhatTheSignsAre) {
    ChartContent content = changed(0.5);
    const auto says = [](const ChartContent& what) {
        Recorded drawn(page);
        support::paintOn(drawn, what, chart::wholeWater(what, page));
        return drawn.says("risen") && drawn.says("fallen") && drawn.says("0.25 m") &&
               drawn.says("surely, since the earlier survey");
    };
    content.shown.insert(LayerKind::furniture);
    EXPECT_TRUE(says(content));
    content.shown.erase(LayerKind::change);
    EXPECT_FALSE(says(content)) << "nor where the layer is switched off";
}

} // namespace
