// SPDX-License-Identifier: GPL-3.0-or-later
// Each tool of the chart: what it makes of press, move and release, to the metre.
#include "app/chart/chart_content.h"
#include "app/chart/tools/measure_tool.h"
#include "app/chart/tools/tool.h"
#include "tests/app/support/recorded.h"

#include <gtest/gtest.h>

namespace {

using chart::Made;
using chart::Tool;
using chart::ToolKind;
using geo::WaterPoint;

template <class T>
const T& as(const std::optional<Made>& made) {
    EXPECT_TRUE(made.has_value() && std::holds_alternative<T>(*made));
    return std::get<T>(*made);
}

std::unique_ptr<Tool> tool(ToolKind kind) {
    return chart::makeTool(kind);
}

TEST(Tools, PanIsTheCanvassOwn) {
    EXPECT_EQ(tool(ToolKind::pan), nullptr);
    for (const ToolKind kind : {ToolKind::cutLine, ToolKind::note, ToolKind::polygon,
                                ToolKind::lasso, ToolKind::stroke}) {
        EXPECT_TRUE(tool(kind)->wants({1.0, 2.0}));
        EXPECT_EQ(tool(kind)->cursor(), Qt::CrossCursor);
    }
}

TEST(CutLine, GoesFromWhereItWasPressedToWhereItWasLetGo) {
    const auto cut = tool(ToolKind::cutLine);
    EXPECT_FALSE(cut->press({10.0, 20.0}));
    EXPECT_FALSE(cut->move({40.0, 50.0}, true));
    const auto made = cut->release({110.0, 35.0});
    const auto& line = as<chart::LineMade>(made);
    EXPECT_EQ(line.from, (WaterPoint{10.0, 20.0}));
    EXPECT_EQ(line.to, (WaterPoint{110.0, 35.0}));
    EXPECT_FALSE(cut->release({0.0, 0.0})) << "once only";
    cut->press({0.0, 0.0});
    EXPECT_FALSE(cut->release({2.9, 0.0})) << "a slip of the hand";
    cut->press({0.0, 0.0});
    EXPECT_TRUE(cut->release({3.0, 0.0}));
    cut->press({0.0, 0.0});
    EXPECT_TRUE(cut->drop());
    EXPECT_FALSE(cut->drop());
    EXPECT_FALSE(cut->release({30.0, 0.0}));
    cut->press({0.0, 0.0});
    cut->move({30.0, 0.0}, false); // let go elsewhere
    EXPECT_FALSE(cut->release({30.0, 0.0}));
}

TEST(Note, IsThePlaceWhereTheButtonWasLetGo) {
    const auto note = tool(ToolKind::note);
    EXPECT_FALSE(note->press({1.0, 2.0}));
    const auto made = note->release({3.0, 4.0});
    EXPECT_EQ(as<chart::PointMade>(made).at, (WaterPoint{3.0, 4.0}));
}

TEST(Polygon, GathersCornersAndClosesOnEnterOrOnItsFirst) {
    const auto ring = tool(ToolKind::polygon);
    const auto click = [&](WaterPoint p) {
        const auto made = ring->press(p);
        ring->release(p);
        return made;
    };
    EXPECT_FALSE(click({0.0, 0.0}));
    EXPECT_FALSE(click({50.0, 0.0}));
    EXPECT_FALSE(click({50.9, 0.0})) << "the same corner twice is one";
    EXPECT_FALSE(ring->finish()) << "two corners are no ring";
    EXPECT_FALSE(click({50.0, 40.0}));
    EXPECT_FALSE(click({0.0, 40.0}));
    const auto made = click({0.5, 0.5});
    EXPECT_EQ(as<chart::RingMade>(made).ring,
              (geo::Ring{{0.0, 0.0}, {50.0, 0.0}, {50.0, 40.0}, {0.0, 40.0}}));
    EXPECT_FALSE(ring->drop()) << "nothing is left";
    for (const WaterPoint p : {WaterPoint{0, 0}, WaterPoint{9, 0}, WaterPoint{9, 9}}) {
        click(p);
    }
    EXPECT_TRUE(ring->stepBack());
    EXPECT_FALSE(ring->finish());
    EXPECT_TRUE(ring->drop());
    EXPECT_FALSE(ring->stepBack());
}

TEST(Lasso, IsTheWayWithTheButtonHeld) {
    const auto lasso = tool(ToolKind::lasso);
    lasso->press({0.0, 0.0});
    lasso->move({10.0, 0.0}, true);
    lasso->move({10.0, 10.0}, true);
    const auto made = lasso->release({5.0, 5.0});
    EXPECT_EQ(as<chart::RingMade>(made).ring, (geo::Ring{{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}}));
    lasso->press({0.0, 0.0});
    lasso->move({10.0, 0.0}, true);
    EXPECT_FALSE(lasso->release({5.0, 5.0})) << "two points are no ring";
    lasso->move({10.0, 0.0}, true);
    lasso->move({10.0, 10.0}, true);
    EXPECT_FALSE(lasso->release({5.0, 5.0})) << "nothing without a press";
    lasso->press({0.0, 0.0});
    lasso->move({10.0, 0.0}, true);
    lasso->move({40.0, 40.0}, false);
    lasso->move({10.0, 10.0}, true);
    const auto held = lasso->release({5.0, 5.0});
    EXPECT_EQ(as<chart::RingMade>(held).ring, (geo::Ring{{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}}))
        << "nor where the button is up";
}

TEST(Stroke, IsTheWholeWayOfAtLeastThreeMetres) {
    const auto stroke = tool(ToolKind::stroke);
    stroke->press({0.0, 0.0});
    stroke->move({10.0, 5.0}, true);
    const auto made = stroke->release({20.0, 0.0});
    EXPECT_EQ(as<chart::StrokeMade>(made).line, (geo::Path{{0.0, 0.0}, {10.0, 5.0}, {20.0, 0.0}}));
    stroke->press({0.0, 0.0});
    EXPECT_FALSE(stroke->release({2.9, 0.0}));
    stroke->press({0.0, 0.0});
    EXPECT_TRUE(stroke->release({3.0, 0.0}));
    stroke->press({0.0, 0.0});
    stroke->move({9.0, 0.0}, false);
    EXPECT_FALSE(stroke->release({20.0, 0.0})) << "let go elsewhere";
    stroke->press({0.0, 0.0});
    EXPECT_TRUE(stroke->drop());
    EXPECT_FALSE(stroke->release({20.0, 0.0}));
}

/// A square shore with a triangular island.
class ShoreHand : public testing::Test {
protected:
    void SetUp() override {
        auto water = std::make_shared<water::Water>();
        water->frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
        water->shoreline = {
            geo::toEarth(geo::Piece{{{-300, -200}, {300, -200}, {300, 200}, {-300, 200}},
                                    {{{0, 0}, {0, 60}, {60, 0}}}},
                         *water->frame)};
        content_.water = water;
        shore_->takeContent(content_);
        shore_->setReach(10.0);
    }
    chart::ChartContent content_;
    std::unique_ptr<Tool> shore_ = tool(ToolKind::shore);
};

TEST_F(ShoreHand, WantsCornersAndLinesWithinItsReach) {
    EXPECT_EQ(shore_->cursor(), Qt::PointingHandCursor);
    EXPECT_TRUE(shore_->wants({300.0, 209.0}));
    EXPECT_FALSE(shore_->wants({300.0, 211.0}));
    EXPECT_TRUE(shore_->wants({50.0, -191.0})) << "the line between two corners";
    EXPECT_FALSE(shore_->wants({50.0, -189.0}));
    EXPECT_TRUE(shore_->wants({-308.0, 0.0})) << "from the last corner to the first too";
    EXPECT_TRUE(shore_->wants({-3.0, 30.0})) << "an island's line";
    shore_->setReach(1.0);
    EXPECT_FALSE(shore_->wants({300.0, 209.0}));
}

TEST_F(ShoreHand, MovesTheCornerNearestToIt) {
    shore_->press({304.0, 205.0});
    shore_->move({320.0, 240.0}, true);
    const auto made = shore_->release({321.0, 241.0});
    const auto& moved = as<chart::ShoreMade>(made);
    EXPECT_EQ(moved.act, chart::ShoreMade::Act::move);
    EXPECT_EQ(moved.corner, (water::ShoreCorner{0, 0, 2}));
    EXPECT_EQ(moved.at, (WaterPoint{321.0, 241.0}));
    shore_->press({300.0, 200.0});
    shore_->move({303.0, 200.0}, true); // less than 0.4 of its reach
    EXPECT_FALSE(shore_->release({303.0, 200.0})) << "a click only chooses";
    shore_->press({300.0, 200.0});
    shore_->move({304.5, 200.0}, true);
    EXPECT_TRUE(shore_->release({304.5, 200.0}));
}

TEST_F(ShoreHand, MakesANewCornerAfterTheOneBeforeIt) {
    shore_->press({-298.0, 0.0});
    const auto made = shore_->release({-310.0, 4.0});
    const auto& added = as<chart::ShoreMade>(made);
    EXPECT_EQ(added.act, chart::ShoreMade::Act::add);
    EXPECT_EQ(added.corner, (water::ShoreCorner{0, 0, 3}));
    EXPECT_EQ(added.at, (WaterPoint{-310.0, 4.0}));
    const auto removed = shore_->remove();
    EXPECT_EQ(as<chart::ShoreMade>(removed).corner, (water::ShoreCorner{0, 0, 4}))
        << "the new one is chosen";
}

TEST_F(ShoreHand, RemovesTheChosenCornerOfTheRightRing) {
    EXPECT_FALSE(shore_->remove());
    shore_->press({1.0, 59.0});
    EXPECT_FALSE(shore_->remove()) << "not while it is held";
    shore_->release({1.0, 59.0});
    const auto made = shore_->remove();
    const auto& removed = as<chart::ShoreMade>(made);
    EXPECT_EQ(removed.act, chart::ShoreMade::Act::remove);
    EXPECT_EQ(removed.corner.piece, 0U);
    EXPECT_EQ(removed.corner.ring, 1U);
    EXPECT_FALSE(shore_->remove()) << "once";
    shore_->press({300.0, 200.0});
    shore_->release({300.0, 200.0});
    EXPECT_TRUE(shore_->drop());
    EXPECT_FALSE(shore_->remove());
    EXPECT_FALSE(shore_->drop());
}

TEST_F(ShoreHand, PaintsEveryCornerWhereItIsAndTheHeldOneUnderTheHand) {
    const auto view = chart::ViewFrame::showing({-400, -300, 400, 300}, {800.0, 600.0}, 0.0);
    const chart::Palette& palette = chart::Palette::screen();
    const auto discs = [&] {
        support::Recorded page({800, 600});
        QPainter painter(&page);
        shore_->paint(painter, view, palette);
        painter.end();
        std::vector<QPointF> at;
        for (const support::Drawn& drawn : page.all()) {
            if (drawn.brush.style() == Qt::SolidPattern) {
                at.push_back(drawn.middle());
            }
        }
        return at;
    };
    EXPECT_EQ(discs().size(), 7U);
    EXPECT_NEAR(discs()[0].x(), 100.0, 1e-3);
    EXPECT_NEAR(discs()[0].y(), 500.0, 1e-3);
    shore_->press({300.0, 200.0});
    shore_->move({350.0, 250.0}, true);
    ASSERT_EQ(discs().size(), 8U);
    EXPECT_NEAR(discs().back().x(), 750.0, 1e-3);
    EXPECT_NEAR(discs().back().y(), 50.0, 1e-3);
}

/// Points of what a tool paints while the hand is under way.
std::vector<QPointF> underWay(Tool& tool) {
    const auto view = chart::ViewFrame::showing({0, 0, 100, 100}, {200.0, 200.0}, 0.0);
    support::Recorded page({200, 200});
    QPainter painter(&page);
    tool.paint(painter, view, chart::Palette::screen());
    painter.end();
    return page.all().empty() ? std::vector<QPointF>() : page.all().front().points();
}

TEST(ToolsUnderWay, ShowWhatTheyAreAboutToMake) {
    const auto cut = tool(ToolKind::cutLine);
    EXPECT_TRUE(underWay(*cut).empty());
    cut->press({10.0, 20.0});
    cut->move({60.0, 70.0}, true);
    EXPECT_EQ(underWay(*cut), (std::vector<QPointF>{{20.0, 160.0}, {120.0, 60.0}}));
    const auto ring = tool(ToolKind::polygon);
    ring->press({10.0, 20.0});
    ring->move({60.0, 70.0}, false);
    EXPECT_EQ(underWay(*ring), (std::vector<QPointF>{{20.0, 160.0}, {120.0, 60.0}}));
    const auto stroke = tool(ToolKind::stroke);
    stroke->press({10.0, 20.0});
    stroke->move({60.0, 70.0}, true);
    EXPECT_EQ(underWay(*stroke), (std::vector<QPointF>{{20.0, 160.0}, {120.0, 60.0}}));
}

TEST(Measure, SaysTheWholeWayAndTheLastLegInTheUsersUnits) {
    const wording::Words metric;
    using chart::measuredWords;
    EXPECT_EQ(measuredWords({}, metric), "");
    EXPECT_EQ(measuredWords({{0.0, 0.0}}, metric), "");
    EXPECT_EQ(measuredWords({{0.0, 0.0}, {30.0, 40.0}}, metric), "50.0 m 037°");
    EXPECT_EQ(measuredWords({{0.0, 0.0}, {300.0, 0.0}, {300.0, -120.0}}, metric),
              "420 m, last leg 120 m 180°");
    EXPECT_EQ(measuredWords({{0.0, 0.0}, {0.0, 30.48}},
                            wording::Words(preferences::UnitSystem::imperial)),
              "100 ft 000°");
}

TEST(Measure, GathersPlacesTakesThemBackAndStaysToBeRead) {
    const auto measure = tool(ToolKind::measure);
    const auto says = [&](const char* words) {
        support::Recorded drawn({400, 300});
        QPainter painter(&drawn);
        measure->paint(painter,
                       chart::ViewFrame::showing({0.0, 0.0, 200.0, 150.0}, {400, 300}, 0.0),
                       chart::Palette::screen());
        painter.end();
        return drawn.says(words);
    };
    const auto isEmpty = [&] { return !measure->drop(); };
    EXPECT_TRUE(isEmpty());
    EXPECT_FALSE(measure->press({10.0, 10.0}));
    EXPECT_FALSE(measure->move({10.0, 60.0}, false));
    EXPECT_TRUE(says("50.0 m 000°"));
    EXPECT_FALSE(measure->press({10.0, 60.0}));
    EXPECT_FALSE(measure->press({10.0, 60.1})) << "the second click of a double click";
    EXPECT_FALSE(measure->finish());
    EXPECT_FALSE(measure->move({150.0, 90.0}, false));
    EXPECT_TRUE(says("50.0 m 000°")) << "it stays to be read";
    EXPECT_TRUE(measure->stepBack());
    EXPECT_FALSE(measure->move({20.0, 10.0}, false));
    EXPECT_TRUE(says("10.0 m 090°"));
    EXPECT_FALSE(isEmpty());
    EXPECT_TRUE(isEmpty());
    EXPECT_FALSE(says("10.0 m 090°"));
}

} // namespace
