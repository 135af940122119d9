// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/chart_painter.h"
#include "app/chart/furniture.h"
#include "app/paper/chart_sheet.h"
#include "app/paper/day_sheet.h"
#include "app/side_view/side_scene.h"
#include "tests/app/support/day_to_read.h"
#include "tests/app/support/recorded_pages.h"

#include <gtest/gtest.h>

#include <QLocale>

#include <algorithm>
#include <cmath>
#include <functional>

namespace {

using support::Drawn;
using support::RecordedPages;

bool isNear(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y()) < 0.05;
}

bool isAlike(const Drawn& a, const Drawn& b) {
    if (a.kind != b.kind || a.text != b.text || a.pen.color() != b.pen.color() ||
        a.brush.color() != b.brush.color() || a.points.size() != b.points.size() ||
        a.path.elementCount() != b.path.elementCount() || !isNear(a.origin, b.origin)) {
        return false;
    }
    for (qsizetype i = 0; i < a.points.size(); ++i) {
        if (!isNear(a.points[i], b.points[i])) {
            return false;
        }
    }
    for (int i = 0; i < a.path.elementCount(); ++i) {
        if (!isNear(a.path.elementAt(i), b.path.elementAt(i))) {
            return false;
        }
    }
    return true;
}

/// Whether all of `part` was drawn on the page, one after the other.
bool holds(const std::vector<Drawn>& page, const std::vector<Drawn>& part) {
    return std::search(page.begin(), page.end(), part.begin(), part.end(), isAlike) != page.end();
}

/// A day sheet without an order of the day, so that every mark is drawn, by rank.
class SheetDrawings : public testing::Test {
protected:
    SheetDrawings() {
        water::PlannedDay planned = *content_.planned;
        planned.day = {};
        content_.planned = std::make_shared<water::PlannedDay>(planned);
        content_.selection.mark = 3;
        closeWaterBesideEveryMark();
        content_.shown = {chart::LayerKind::depth};
        EXPECT_TRUE(paper::paintDaySheet(sheet_, content_, paper::SheetForm::withPictures));
        content_.inks = chart::Inks::grey;
        perUnit_ = sheet_.width() / 840.0;
    }
    /// A square of closed water within each plan, 8 m east of where the boat lies.
    void closeWaterBesideEveryMark() {
        water::Water water = *content_.water;
        for (const marks::Mark& mark : content_.planned->marks) {
            const geo::WaterPoint p = mark.anchors.lie.centre;
            geo::LonLatRing ring;
            for (const auto& [x_m, y_m] :
                 {std::pair(8.0, 0.0), {13.0, 0.0}, {13.0, 5.0}, {8.0, 5.0}}) {
                ring.push_back(water.frame->toEarth({p.x_m + x_m, p.y_m + y_m}));
            }
            water.houseRules.closed.push_back({"the reeds", {{ring, {}}}});
        }
        content_.water = std::make_shared<water::Water>(std::move(water));
    }
    /// Frames of this size, in units of the sheet, in the order in which they were drawn.
    std::vector<QRectF> frames(double width, double height) const {
        std::vector<QRectF> found;
        for (const Drawn& drawn : sheet_.all(Drawn::Kind::polygon)) {
            const QRectF box = drawn.points.boundingRect();
            const QRectF units(box.topLeft() / perUnit_, box.size() / perUnit_);
            if (drawn.brush.style() == Qt::NoBrush && std::fabs(units.width() - width) < 0.1 &&
                std::fabs(units.height() - height) < 0.1) {
                found.push_back(units);
            }
        }
        return found;
    }
    /// What `paint` draws into a box of the sheet.
    std::vector<Drawn> drawnBy(const std::function<void(QPainter&)>& paint) const {
        RecordedPages pages;
        QPainter painter(&pages);
        painter.scale(perUnit_, perUnit_);
        paint(painter);
        return pages.drawn();
    }
    chart::ChartContent content_ = support::contentToRead(preferences::UnitSystem::metric);
    RecordedPages sheet_;
    double perUnit_ = 1.0;
};

TEST_F(SheetDrawings, EveryPlanShowsTheWholeLieOfItsMarkToItsScaleWithClosedWater) {
    using chart::LayerKind;
    const auto boxes = frames(264.0, 264.0);
    ASSERT_EQ(boxes.size(), 3U);
    for (std::size_t k = 0; k < 3; ++k) {
        const marks::Mark& mark = content_.planned->marks[k];
        geo::Box reach;
        for (const geo::WaterPoint p :
             {mark.anchors.bow.place, mark.anchors.stern->place, mark.anchors.lie.centre}) {
            reach.take(p);
        }
        for (const rods::RodPlace& rod : mark.spread.rods) {
            reach.take(rod.place);
        }
        // 48.8 m, 36.8 m and 33.8 m across; 1.45 times that on 66 mm.
        const double denominator = k == 0 ? 1250.0 : k == 1 ? 1000.0 : 750.0;
        const double wanted = 1.45 * std::max(reach.width_m(), reach.height_m());
        ASSERT_LT(wanted, 0.066 * denominator);
        const auto view = chart::ViewFrame()
                              .resized(boxes[k].size())
                              .centredOn({0.5 * (reach.west_m + reach.east_m),
                                          0.5 * (reach.south_m + reach.north_m)})
                              .zoomed(4000.0 / denominator, {132.0, 132.0});
        chart::ChartContent one = content_;
        one.selection.mark = mark.rank;
        one.shown = {LayerKind::depth, LayerKind::contours, LayerKind::structure,
                     LayerKind::weed,  LayerKind::closed,   LayerKind::marks};
        EXPECT_TRUE(holds(sheet_.drawn(), drawnBy([&](QPainter& painter) {
                              painter.setRenderHint(QPainter::Antialiasing, true);
                              painter.translate(boxes[k].topLeft());
                              chart::paintChart(painter, view, one, 0.9);
                          })))
            << k;
    }
}

TEST_F(SheetDrawings, EveryCutIsThatOfItsMark) {
    const auto boxes = frames(744.0, 120.0);
    ASSERT_EQ(boxes.size(), 3U);
    for (std::size_t k = 0; k < 3; ++k) {
        const auto scene = side_view::sceneOfMark(content_, static_cast<int>(k) + 1);
        EXPECT_TRUE(holds(sheet_.drawn(), drawnBy([&](QPainter& painter) {
                              side_view::paintScene(painter, scene, boxes[k], 0.9);
                          })))
            << k;
    }
}

TEST_F(SheetDrawings, TheChartOfTheDayShowsTheWholeWaterInGreyWithTheUsualLayers) {
    const auto boxes = frames(744.0, 384.0);
    ASSERT_EQ(boxes.size(), 1U);
    chart::ChartContent whole = content_;
    whole.shown = chart::usualLayers();
    whole.shown.erase(chart::LayerKind::nextLines);
    whole.selection.mark.reset();
    EXPECT_TRUE(holds(sheet_.drawn(), drawnBy([&](QPainter& painter) {
                          painter.translate(boxes[0].topLeft());
                          chart::paintChart(painter,
                                            chart::wholeWater(whole, boxes[0].size(), 0.82), whole,
                                            0.82);
                      })));
}

TEST_F(SheetDrawings, TheWindArrowPointsWhereTheWindBlows) {
    // From 301 degrees: down to the right.
    for (const Drawn& line : sheet_.all(Drawn::Kind::line)) {
        if (line.pen.widthF() == 2.4 && line.points[0].y() / perUnit_ < 48.0 + 52.0) {
            const QPointF way = line.points[1] - line.points[0];
            EXPECT_NEAR(std::atan2(way.x(), -way.y()) * 180.0 / M_PI, 121.0, 0.1);
            return;
        }
    }
    ADD_FAILURE() << "no arrow";
}

TEST_F(SheetDrawings, TheColumnsOfTheDayStandBesideEachOther) {
    double before = 0.0;
    for (const char* heading :
         {"mark", "arrive, leave", "move", "section", "depth today", "position", "heading"}) {
        for (const Drawn& text : sheet_.all(Drawn::Kind::text)) {
            if (text.text == heading) {
                EXPECT_GT(text.points[0].x(), before + 20.0 * perUnit_) << heading;
                before = text.points[0].x();
                break;
            }
        }
    }
    EXPECT_GT(before, 600.0 * perUnit_);
}

TEST_F(SheetDrawings, NoTwoTextsOfTheSheetStandOverEachOther) {
    std::vector<std::pair<int, QRectF>> boxes;
    for (const Drawn& text : sheet_.all(Drawn::Kind::text)) {
        if (text.text.trimmed().isEmpty()) {
            continue;
        }
        const double height = 0.6 * text.font.pixelSize();
        const QRectF box(text.points[0].x() / perUnit_, text.points[0].y() / perUnit_ - height,
                         QFontMetricsF(text.font).horizontalAdvance(text.text) - 2.0, height);
        for (const auto& [page, other] : boxes) {
            EXPECT_FALSE(page == text.page && box.intersects(other)) << text.text.toStdString();
        }
        boxes.emplace_back(text.page, box);
    }
    EXPECT_GT(boxes.size(), 60U);
}

TEST(ChartSheetDrawn, IsTheWaterBesideItsKeyWithoutSomebodysPicture) {
    chart::ChartContent content = support::contentToRead(preferences::UnitSystem::metric);
    content.shown.clear();
    auto picture = std::make_shared<water::Backdrop>();
    picture->whole = content.derived.outline->box();
    picture->lines = {{{-100.0, -50.0}, {90.0, 120.0}}};
    content.backdrop = picture;
    RecordedPages sheet;
    ASSERT_TRUE(paper::paintChartSheet(sheet, content));
    content.backdrop.reset();
    content.shown = chart::usualLayers();
    const geo::Box box = content.derived.outline->box();
    const bool isWide = box.width_m() > box.height_m();
    const double perUnit = sheet.width() / (4.0 * (isWide ? 297.0 : 210.0));
    // Margins of 12 mm, 8 mm for the foot, a head of 44 units.
    const QSizeF page = isWide ? QSizeF(1188, 840) : QSizeF(840, 1188);
    const QRectF map(48.0, 48.0 + 44.0, page.width() - 96.0, page.height() - 96.0 - 32.0 - 44.0);
    const double key = chart::keyWidth(0.85) + 12.0;
    const double least = 4000.0 * std::max(box.width_m() / (map.width() - key - 40.0),
                                           box.height_m() / (map.height() - 40.0));
    double denominator = 0.0;
    for (const double round : {3000.0, 4000.0, 5000.0, 6000.0, 7500.0, 10000.0}) {
        denominator = denominator == 0.0 && round >= least ? round : denominator;
    }
    EXPECT_TRUE(sheet.lines().contains("1 : " + QLocale::c().toString(denominator, 'f', 0)));
    const auto view =
        chart::ViewFrame()
            .resized(map.size())
            .centredOn({0.5 * (box.west_m + box.east_m), 0.5 * (box.south_m + box.north_m)})
            .zoomed(4000.0 / denominator, {0.5 * map.width(), 0.5 * map.height()})
            .panned({-0.5 * key, 0.0});
    RecordedPages expected;
    {
        QPainter painter(&expected);
        painter.scale(perUnit, perUnit);
        painter.translate(map.topLeft());
        chart::paintChart(painter, view, content, 0.85);
    }
    EXPECT_TRUE(holds(sheet.drawn(), expected.drawn()));
}

} // namespace
