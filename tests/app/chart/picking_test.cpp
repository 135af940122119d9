// SPDX-License-Identifier: GPL-3.0-or-later
// What lies under the pointer: the thing itself, to the pixel, and only while it is shown.
#include "app/chart/picking.h"

#include "app/chart/mark_drawing.h"
#include "app/chart/stay_ring.h"
#include "tests/app/support/star_water.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using chart::ChartContent;
using chart::LayerKind;
using chart::ViewFrame;
using geo::WaterPoint;

/// 2 pixels a metre, the water's origin in the middle of 800 by 600.
ViewFrame near(WaterPoint middle = {0.0, 0.0}, double pixelsPerMetre = 2.0) {
    const ViewFrame view =
        ViewFrame::showing({-1, -1, 1, 1}, {800.0, 600.0}, 0.0).centredOn(middle);
    return view.zoomed(pixelsPerMetre / view.pixelsPerMetre(), {400.0, 300.0});
}

ChartContent everything() {
    ChartContent content = support::starContent();
    content.shown = {chart::allLayerKinds.begin(), chart::allLayerKinds.end()};
    return content;
}

TEST(StayAt, IsTheStayWhoseRingIsThereTheNearestOfTwo) {
    ChartContent content = everything();
    auto water = std::make_shared<water::Water>(*content.water);
    water->log = logbook::Log(2);
    water->log.edit(0).place = water->frame->toEarth({0.0, 0.0});
    water->log.edit(1).place = water->frame->toEarth({8.0, 0.0});
    for (std::size_t i = 0; i < 2; ++i) {
        logbook::Stay& stay = water->log.edit(i);
        stay.end = stay.start + std::chrono::hours(1);
        stay.rods = 4;
    }
    content.water = water;
    // Four rod-hours: 2 + 1.35 x 2 = 4.7 pixels, and 3 of slack.
    EXPECT_NEAR(chart::stayRadius(water->log[0], 1.0), 4.7, 1e-9);
    const QPointF at(400.0, 300.0);
    EXPECT_EQ(chart::stayAt(content, near(), at + QPointF(-7.6, 0.0)), water->log[0].id);
    EXPECT_FALSE(chart::stayAt(content, near(), at + QPointF(-7.8, 0.0)));
    EXPECT_EQ(chart::stayAt(content, near(), at + QPointF(7.5, 0.0)), water->log[0].id);
    EXPECT_EQ(chart::stayAt(content, near(), at + QPointF(8.5, 0.0)), water->log[1].id);
    content.shown.erase(LayerKind::log);
    EXPECT_FALSE(chart::stayAt(content, near(), at));
}

TEST(StayRing, GrowsWithTheRodHoursWithinItsBounds) {
    logbook::Stay stay;
    EXPECT_DOUBLE_EQ(chart::stayRadius(stay, 1.0), 3.0);
    stay.rods = 4;
    stay.end = stay.start + std::chrono::hours(4);
    EXPECT_NEAR(chart::stayRadius(stay, 2.0), 2.0 * (2.0 + 1.35 * 4.0), 1e-9);
    stay.end = stay.start + std::chrono::hours(100);
    EXPECT_DOUBLE_EQ(chart::stayRadius(stay, 1.0), 12.0);
}

TEST(SoundingAt, IsTheNearestWithinSixPixelsAndASignIsNearerThanADot) {
    ChartContent content = everything();
    auto checked = std::make_shared<water::CheckedSurvey>();
    checked->survey.days.resize(2);
    checked->survey.days[0].points = {{100.0, 100.0}};
    checked->survey.days[0].verdicts = {soundings::Verdict::kept};
    checked->survey.days[1].points = {{50.0, 50.0}, {0.0, 0.0}, {4.0, 0.0}};
    checked->survey.days[1].verdicts = {soundings::Verdict::kept, soundings::Verdict::kept,
                                        soundings::Verdict::spike};
    for (auto& day : checked->survey.days) {
        day.depth_m.resize(day.points.size());
    }
    content.derived.checked = checked;
    const QPointF at(400.0, 300.0);
    using Pick = chart::SoundingPick;
    EXPECT_EQ(chart::soundingAt(content, near(), at), (Pick{1, 1}));
    EXPECT_EQ(chart::soundingAt(content, near(), at + QPointF(0.0, 5.9)), (Pick{1, 1}));
    EXPECT_FALSE(chart::soundingAt(content, near(), at + QPointF(0.0, 6.1)));
    // Dots at 400 and 408: at 403 the sign, less 3 pixels, is the nearer.
    EXPECT_EQ(chart::soundingAt(content, near(), at + QPointF(3.0, 0.0)), (Pick{1, 2}));
    EXPECT_EQ(chart::soundingAt(content, near(), at + QPointF(2.0, 0.0)), (Pick{1, 1}));
    EXPECT_EQ(chart::soundingAt(content, near(), QPointF(600.0, 100.0)), (Pick{0, 0}));
    content.shown.erase(LayerKind::soundings);
    EXPECT_FALSE(chart::soundingAt(content, near(), at));
}

TEST(MarkAt, IsItsRingFromFarAndItsBoatTooFromNear) {
    ChartContent content = everything();
    auto planned = std::make_shared<water::PlannedDay>(*content.planned);
    for (std::size_t i = 0; i < planned->marks.size(); ++i) {
        planned->marks[i].place = {300.0 * (static_cast<double>(i) - 2.0), 0.0};
    }
    content.planned = planned;
    const marks::Mark& third = planned->marks[2];
    const ViewFrame far = near(third.place, 1.0);
    const QPointF at(400.0, 300.0);
    EXPECT_EQ(chart::markAt(content, far, at), third.rank);
    EXPECT_EQ(chart::markAt(content, far, at + QPointF(12.9, 0.0)), third.rank);
    EXPECT_FALSE(chart::markAt(content, far, at + QPointF(13.1, 0.0)));
    const ViewFrame close = near(third.place, 3.0);
    EXPECT_EQ(chart::markAt(content, close, at), third.rank) << "the boat";
    EXPECT_EQ(chart::markAt(content, close, at + QPointF(20.0, -20.0)), third.rank) << "the ring";
    ChartContent hidden = content;
    hidden.shown.erase(LayerKind::marks);
    EXPECT_FALSE(chart::markAt(hidden, far, at));
}

TEST(MarkRings, StandOnTheirPlacesOrAsideWhereTheyWouldCoverOneAnother) {
    ChartContent content = everything();
    auto marks = content.planned->marks;
    marks.resize(2);
    marks[0].place = {0.0, 0.0};
    marks[1].place = {100.0, 0.0};
    auto rings = chart::ringsOf(marks, near({0, 0}, 1.0), 1.0);
    EXPECT_EQ(rings.at(marks[0].rank).middle, QPointF(400.0, 300.0));
    EXPECT_EQ(rings.at(marks[1].rank).middle, QPointF(500.0, 300.0));
    marks[1].place = {5.0, 0.0};
    rings = chart::ringsOf(marks, near({0, 0}, 1.0), 1.0);
    EXPECT_EQ(rings.at(marks[1].rank).place, QPointF(405.0, 300.0));
    const QPointF apart = rings.at(marks[1].rank).middle - rings.at(marks[0].rank).middle;
    EXPECT_GE(std::hypot(apart.x(), apart.y()), 22.0);
    EXPECT_FALSE(chart::isNear(near({0, 0}, 2.79), 1.0));
    EXPECT_TRUE(chart::isNear(near({0, 0}, 2.8), 1.0));
    EXPECT_FALSE(chart::isNear(near({0, 0}, 2.8), 2.0));
}

TEST(SectionAt, IsTheSectionOfTheCell) {
    ChartContent content = everything();
    auto map = std::make_shared<sections::SectionMap>(*content.derived.sections);
    map->sectionOfCell[map->sectionOfCell.frame().cellOf({12.0, 34.0})] = 5;
    content.derived.sections = map;
    const ViewFrame view = near();
    EXPECT_EQ(chart::sectionAt(content, view, view.toScreen({12.0, 34.0})), 5);
    EXPECT_FALSE(chart::sectionAt(content, view, view.toScreen({12.0, 44.0})));
    EXPECT_FALSE(chart::sectionAt(content, view, view.toScreen({5000.0, 0.0})));
    content.shown.erase(LayerKind::sections);
    EXPECT_FALSE(chart::sectionAt(content, view, view.toScreen({12.0, 34.0})));
}

TEST(ZoneAt, IsOfTheFamilyThatIsPickedFromWithinSixPixels) {
    ChartContent content = everything();
    auto zones = std::make_shared<structure::ZoneMap>(*content.derived.structure);
    std::ranges::fill(zones->zoneOfCell.values(), structure::noZone);
    const grid::GridFrame& frame = zones->zoneOfCell.frame();
    const grid::Cell cell = frame.cellOf({12.0, 34.0});
    zones->zoneOfCell[cell] = 2;
    content.derived.structure = zones;
    auto weed = std::make_shared<weed::WeedMap>(*content.derived.weed);
    weed->zones.zones.resize(2);
    weed->zones.zoneOfCell[cell] = 1;
    content.derived.weed = weed;
    const ViewFrame view = near();
    const QPointF at = view.toScreen(frame.centre(cell)); // 10 pixels a cell
    EXPECT_FALSE(chart::zoneAt(content, view, at)) << "a click chooses a section";
    content.zonesPicked = chart::ZonesPicked::structure;
    EXPECT_EQ(chart::zoneAt(content, view, at), 2);
    EXPECT_EQ(chart::zoneAt(content, view, at + QPointF(10.9, 0.0)), 2);
    EXPECT_EQ(chart::zoneAt(content, view, at + QPointF(0.0, -10.9)), 2);
    EXPECT_FALSE(chart::zoneAt(content, view, at + QPointF(11.1, 0.0)));
    content.zonesPicked = chart::ZonesPicked::weed;
    EXPECT_EQ(chart::zoneAt(content, view, at), static_cast<int>(zones->zones.size()) + 1)
        << "weed is counted after structure";
    content.derived.structure.reset();
    EXPECT_EQ(chart::zoneAt(content, view, at), 1);
    content.derived.weed.reset();
    EXPECT_FALSE(chart::zoneAt(content, view, at));
}

} // namespace
