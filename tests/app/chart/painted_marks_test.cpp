// SPDX-License-Identifier: GPL-3.0-or-later
// What the layers paint for fishing, and where: marks with their anchors, ropes and baits, stays
// and fish, lines to sound, names and the launch.
#include "app/chart/mark_drawing.h"
#include "app/chart/never_fished.h"
#include "app/chart/overlay_signs.h"
#include "app/chart/stay_ring.h"
#include "core/anchoring/lie.h"
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

ViewFrame near(WaterPoint middle, double pixelsPerMetre) {
    const ViewFrame view = ViewFrame::showing({-1, -1, 1, 1}, page, 0.0).centredOn(middle);
    return view.zoomed(pixelsPerMetre / view.pixelsPerMetre(), {450.0, 350.0});
}

double apart(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

/// The star with its best mark alone.
ChartContent oneMark() {
    ChartContent content = support::starContent();
    auto planned = std::make_shared<water::PlannedDay>(*content.planned);
    planned->marks.resize(1);
    content.planned = planned;
    content.shown = {LayerKind::marks};
    return content;
}

TEST(BannedPainted, LiesUnderTheMarksWithItsNameWhetherTomorrowIsPlannedOrNot) {
    ChartContent content = oneMark();
    auto water = std::make_shared<water::Water>(*content.water);
    const geo::Ring ring{{-40, -30}, {60, -30}, {60, 50}, {-40, 50}};
    const geo::Ring nameless{{80, 0}, {110, 0}, {95, 40}};
    water->banned = {{"snags", water->frame->toEarth(std::span(ring))},
                     {"", water->frame->toEarth(std::span(nameless))}};
    content.water = water;
    content.planned.reset();
    const ViewFrame view = near({10, 10}, 3.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const QColor line = chart::withAlpha(Palette::screen().rust, 0.9);
    const auto lines = drawn.strokes(line, 1.6);
    ASSERT_EQ(lines.size(), 2U);
    const QRectF box = lines[0].path.boundingRect();
    EXPECT_LT(apart(box.topLeft(), view.toScreen({-40, 50})), 0.5);
    EXPECT_LT(apart(box.bottomRight(), view.toScreen({60, -30})), 0.5);
    EXPECT_EQ(drawn.texts("banned: snags").size(), 1U);
    EXPECT_EQ(drawn.texts("banned").size(), 1U);
    content.shown = {};
    Recorded without(page);
    support::paintOn(without, content, view);
    EXPECT_FALSE(without.says("banned: snags")) << "it goes with the marks";
}

TEST(TriedLie, SaysRopesScopeAndKnotsAndWhatItBreaks) {
    const ChartContent content = oneMark();
    const marks::Mark& mark = content.planned->marks[0];
    const wording::Words& words = content.words;
    chart::TriedLie tried{
        mark, content.planned->plan.tackle.boatLength, {"Too short.", "Steep."}, {}};
    const auto drawnOf = [&](const chart::TriedLie& lie) {
        auto drawn = std::make_unique<Recorded>(page);
        QPainter painter(drawn.get());
        chart::drawTried(painter, near(mark.place, 6.0), content, lie);
        return drawn;
    };
    const auto drawn = drawnOf(tried);
    EXPECT_TRUE(drawn->says("Too short."));
    EXPECT_TRUE(drawn->says("Steep."));
    EXPECT_TRUE(drawn->says(
        QStringLiteral("bow %1, rope %2, scope %3")
            .arg(words.depth(mark.anchors.bow.depth), words.length(mark.anchors.bow.rope))
            .arg(mark.anchors.bow.scope, 0, 'f', 1)));
    const rods::RodPlace& rod = mark.spread.rods.at(1);
    EXPECT_TRUE(drawn->says(
        QStringLiteral("rod 2  %1, knot %2, %3 off")
            .arg(words.depth(rod.depth), words.depth(rod.stopKnot), words.length(rod.distance))));
    tried.cannot = "Nothing holds her there.";
    const auto refused = drawnOf(tried);
    EXPECT_TRUE(refused->says("Nothing holds her there."));
    EXPECT_FALSE(refused->says("Too short."));
    EXPECT_EQ(refused->strokes(Palette::screen().rust, 1.7).size(), 0U) << "no ropes of a lie "
                                                                           "that is none";
}

TEST(MarkPainted, ThatBreaksARuleSaysSoFromAfar) {
    ChartContent content = oneMark();
    const auto says = [&](const std::vector<anchoring::Caution>& cautions, double pixelsPerMetre) {
        water::PlannedDay planned = *content.planned;
        planned.marks[0].anchors.cautions = cautions;
        ChartContent with = content;
        with.planned = std::make_shared<const water::PlannedDay>(planned);
        Recorded drawn(page);
        support::paintOn(drawn, with, near(planned.marks[0].place, pixelsPerMetre));
        return drawn.says("!");
    };
    for (const double pixelsPerMetre : {0.5, 6.0}) {
        EXPECT_TRUE(says({anchoring::HighWaves{}, anchoring::LiesAshore{}}, pixelsPerMetre));
        EXPECT_FALSE(says({anchoring::HighWaves{}}, pixelsPerMetre));
        EXPECT_FALSE(says({}, pixelsPerMetre));
    }
}

TEST(MarkPainted, AtOneAnchorHasItsCircleAndNoSternRope) {
    ChartContent content = oneMark();
    water::PlannedDay planned = *content.planned;
    planned.marks[0].anchors.stern.reset();
    planned.marks[0].anchors.swing = anchoring::Swing{units::Length::metres(24.0), 30.0};
    content.planned = std::make_shared<const water::PlannedDay>(planned);
    const anchoring::AnchorSet& set = content.planned->marks[0].anchors;
    const ViewFrame view = near(content.planned->marks[0].place, 6.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto ropes = drawn.strokes(Palette::screen().rust, 1.7);
    ASSERT_EQ(ropes.size(), 1U);
    EXPECT_EQ(ropes[0].points().size(), 2U);
    const auto circles = drawn.strokes(Palette::screen().rust, 1.0);
    ASSERT_FALSE(circles.empty());
    const QRectF box = circles[0].path.boundingRect();
    EXPECT_LT(apart(box.center(), view.toScreen(set.bow.place)), 0.5);
    EXPECT_NEAR(box.width(), 2.0 * 24.0 * 6.0, 1.0);
}

TEST(MarkPainted, RopesRunFromBowAndSternToTheirOwnAnchors) {
    const ChartContent content = oneMark();
    const marks::Mark& mark = content.planned->marks[0];
    const anchoring::AnchorSet& set = mark.anchors;
    const units::Length boat = content.planned->plan.tackle.boatLength;
    const ViewFrame view = near(mark.place, 6.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const Palette& palette = Palette::screen();
    const auto ropes = drawn.strokes(palette.rust, 1.7);
    ASSERT_EQ(ropes.size(), 1U);
    const auto points = ropes[0].points();
    ASSERT_EQ(points.size(), 4U);
    EXPECT_LT(apart(points[0], view.toScreen(anchoring::bowOf(set.lie, boat))), 0.01);
    EXPECT_LT(apart(points[1], view.toScreen(set.bow.place)), 0.01);
    EXPECT_LT(apart(points[2], view.toScreen(anchoring::sternOf(set.lie, boat))), 0.01);
    EXPECT_LT(apart(points[3], view.toScreen(set.stern->place)), 0.01);
    // The anchors: two crosses of 4.5 pixels.
    const auto anchors = drawn.strokes(palette.rust, 2.2);
    ASSERT_EQ(anchors.size(), 1U);
    const auto arms = anchors[0].points();
    ASSERT_EQ(arms.size(), 8U);
    EXPECT_LT(apart(arms[0], view.toScreen(set.bow.place) + QPointF(-4.5, -4.5)), 0.01);
    EXPECT_LT(apart(arms[4], view.toScreen(set.stern->place) + QPointF(-4.5, -4.5)), 0.01);
    // The boat: its bow first, towards the wind that it lies to, to scale.
    const auto boats = drawn.those([&](const Drawn& d) {
        return d.isStroke(palette.rust, 2.0) && d.brush.style() == Qt::SolidPattern;
    });
    ASSERT_EQ(boats.size(), 1U);
    EXPECT_LT(apart(boats[0].points()[0], view.toScreen(anchoring::bowOf(set.lie, boat))), 0.05);
}

TEST(MarkPainted, EveryRodHasItsLineToItsOwnBait) {
    const ChartContent content = oneMark();
    const marks::Mark& mark = content.planned->marks[0];
    const ViewFrame view = near(mark.place, 6.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto lines = drawn.strokes(Palette::screen().plum, 1.3);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].pen.style(), Qt::CustomDashLine);
    const auto points = lines[0].points();
    ASSERT_EQ(points.size(), 2 * mark.spread.rods.size());
    const auto baits = drawn.strokes(Palette::screen().plum, 1.8);
    ASSERT_EQ(baits.size(), 1U);
    for (std::size_t i = 0; i < mark.spread.rods.size(); ++i) {
        const QPointF bait = view.toScreen(mark.spread.rods[i].place);
        EXPECT_LT(apart(points[2 * i], view.toScreen(mark.anchors.lie.centre)), 0.01);
        EXPECT_LT(apart(points[2 * i + 1], bait), 0.01);
        EXPECT_TRUE(baits[0].path.contains(bait));
    }
}

TEST(MarkPainted, AnchorsAndBaitsAreLetteredWithTheirOwnDepths) {
    ChartContent content = oneMark();
    content.selection.mark = 1;
    const marks::Mark& mark = content.planned->marks[0];
    for (const auto units : {preferences::UnitSystem::metric, preferences::UnitSystem::imperial}) {
        content.words = wording::Words(units);
        const ViewFrame view = near(mark.place, 6.0);
        Recorded drawn(page);
        support::paintOn(drawn, content, view);
        const auto expectBeside = [&](const QString& text, WaterPoint place, const QColor& ink) {
            const auto found = drawn.texts(text);
            ASSERT_EQ(found.size(), 1U) << text.toStdString();
            EXPECT_LT(apart(found[0].at, view.toScreen(place)), 75.0) << text.toStdString();
            EXPECT_EQ(found[0].colour.rgb(), ink.rgb());
        };
        expectBeside("bow " + content.words.depth(mark.anchors.bow.depth), mark.anchors.bow.place,
                     Palette::screen().rust);
        expectBeside("stern " + content.words.depth(mark.anchors.stern->depth),
                     mark.anchors.stern->place, Palette::screen().rust);
        for (std::size_t i = 0; i < mark.spread.rods.size(); ++i) {
            expectBeside(QStringLiteral("rod %1  %2")
                             .arg(i + 1)
                             .arg(content.words.depth(mark.spread.rods[i].depth)),
                         mark.spread.rods[i].place, Palette::screen().plum);
        }
    }
}

TEST(MarkPainted, EveryRankStandsInItsRingAndTheChosenOneIsFilled) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::marks};
    content.selection.mark = 3;
    const ViewFrame view = chart::wholeWater(content, page);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto rings = chart::ringsOf(content.planned->marks, view, 1.0);
    for (const marks::Mark& mark : content.planned->marks) {
        const auto found = drawn.texts(QString::number(mark.rank));
        ASSERT_EQ(found.size(), 1U) << mark.rank;
        EXPECT_LT(apart(found[0].at, rings.at(mark.rank).middle), 0.01) << mark.rank;
        EXPECT_LT(apart(rings.at(mark.rank).place, view.toScreen(mark.place)), 0.01);
        const bool isChosen = mark.rank == 3;
        EXPECT_EQ(found[0].colour.rgb(),
                  (isChosen ? Palette::screen().card : Palette::screen().rust).rgb());
        const auto filled = drawn.those([&](const Drawn& d) {
            return d.isStroke(Palette::screen().rust, 1.9) &&
                   apart(d.middle(), rings.at(mark.rank).middle) < 0.01;
        });
        ASSERT_EQ(filled.size(), 1U) << mark.rank;
        EXPECT_EQ(filled[0].brush.color().rgb(),
                  (isChosen ? Palette::screen().rust : Palette::screen().card).rgb());
    }
}

TEST(MarkPainted, RopesComeWithTheChosenMarkFromFarAndWithEveryOneFromNear) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::marks};
    const auto ropesAt = [&](double pixelsPerMetre, std::optional<int> chosen) {
        content.selection.mark = chosen;
        Recorded drawn(page);
        support::paintOn(drawn, content, near(content.planned->marks[0].place, pixelsPerMetre));
        return drawn.strokes(Palette::screen().rust, 1.7).size();
    };
    EXPECT_EQ(ropesAt(0.89, 1), 0U);
    EXPECT_EQ(ropesAt(0.9, 1), 1U);
    EXPECT_EQ(ropesAt(0.9, std::nullopt), 0U);
    EXPECT_EQ(ropesAt(2.8, std::nullopt), content.planned->marks.size());
}

/// The star with two stays: a blank and one of a landed and a lost fish.
ChartContent twoStays() {
    ChartContent content = support::starContent();
    auto water = std::make_shared<water::Water>(*content.water);
    water->log = {};
    for (const WaterPoint at : {WaterPoint{-80.0, 0.0}, WaterPoint{80.0, 30.0}}) {
        logbook::Stay stay;
        stay.id = logbook::StayId(static_cast<int>(water->log.size()) + 1);
        stay.place = water->frame->toEarth(at);
        stay.rods = 3;
        stay.end = stay.start + std::chrono::hours(3);
        water->log.push_back(stay);
    }
    water->log.edit(1).runs.resize(2);
    water->log.edit(1).runs[0].landed = true;
    water->log.edit(1).runs[1].landed = false;
    content.water = water;
    content.shown = {LayerKind::log};
    return content;
}

TEST(LogPainted, StaysStandWhereTheyWereHollowWhereBlankAndFishAreFilledWhereLanded) {
    const ChartContent content = twoStays();
    const Palette& palette = Palette::screen();
    const ViewFrame view = near({0.0, 0.0}, 2.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const double radius = chart::stayRadius(content.water->log[0], 1.0);
    for (const auto& [place, isBlank] :
         {std::pair(WaterPoint{-80.0, 0.0}, true), {WaterPoint{80.0, 30.0}, false}}) {
        const auto discs = drawn.those([&, at = view.toScreen(place)](const Drawn& d) {
            return d.isStroke(palette.card, 3.6) && apart(d.middle(), at) < 0.01;
        });
        ASSERT_EQ(discs.size(), 1U);
        EXPECT_NEAR(discs[0].path.boundingRect().width(), 2.0 * radius, 1e-6);
        EXPECT_EQ(discs[0].brush.color().rgb(), (isBlank ? palette.card : palette.plum).rgb());
    }
    const auto fish = drawn.those([&](const Drawn& d) {
        return d.isStroke(palette.plum, 1.1) && d.brush.style() == Qt::SolidPattern;
    });
    ASSERT_EQ(fish.size(), 2U);
    EXPECT_EQ(fish[0].brush.color().rgb(), palette.plum.rgb());
    EXPECT_EQ(fish[1].brush.color().rgb(), palette.card.rgb());
    const QPointF stay = view.toScreen({80.0, 30.0});
    EXPECT_NEAR(0.5 * (fish[0].middle().x() + fish[1].middle().x()), stay.x(), 1.0);
    EXPECT_LT(fish[0].middle().y(), stay.y() - radius);
}

TEST(LogPainted, FishComeFromNearOrWithTheChosenStayAndMoreThanFiveAreCounted) {
    ChartContent content = twoStays();
    auto water = std::make_shared<water::Water>(*content.water);
    water->log.edit(1).runs.resize(8);
    content.water = water;
    const auto fishAt = [&](double pixelsPerMetre) {
        Recorded drawn(page);
        support::paintOn(drawn, content, near({0.0, 0.0}, pixelsPerMetre));
        EXPECT_EQ(drawn.says("+3"), !drawn.strokes(Palette::screen().plum, 1.1).empty());
        return drawn.strokes(Palette::screen().plum, 1.1).size();
    };
    EXPECT_EQ(fishAt(0.99), 0U);
    EXPECT_EQ(fishAt(1.0), 5U);
    content.selection.stay = logbook::StayId(2);
    EXPECT_EQ(fishAt(0.5), 5U);
    content.selection.stay = logbook::StayId(1);
    EXPECT_EQ(fishAt(0.5), 0U);
    Recorded drawn(page);
    support::paintOn(drawn, content, near({0.0, 0.0}, 0.5));
    const auto chosen = drawn.strokes(Palette::screen().rust, 3.0);
    ASSERT_EQ(chosen.size(), 1U);
    EXPECT_LT(apart(chosen[0].middle(), near({0, 0}, 0.5).toScreen({-80.0, 0.0})), 0.01);
}

TEST(LogPainted, TheTrackRunsThroughItsPoints) {
    ChartContent content = twoStays();
    auto track = std::make_shared<rates::Track>();
    for (const WaterPoint p : {WaterPoint{0, 0}, WaterPoint{50, 10}, WaterPoint{60, -40}}) {
        rates::TrackPoint point;
        point.place = p;
        track->push_back(point);
    }
    content.dayTrack = track;
    const ViewFrame view = near({0.0, 0.0}, 2.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto lines = drawn.strokes(Palette::screen().plum, 1.3);
    ASSERT_EQ(lines.size(), 1U);
    ASSERT_EQ(lines[0].points().size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_LT(apart(lines[0].points()[i], view.toScreen((*track)[i].place)), 0.01);
    }
}

TEST(LinesPainted, RunFromStartToEndWithTheirHeadAtTheEndInTheOrderOfTheTrip) {
    ChartContent content = support::starContent();
    auto trip = std::make_shared<surface::SurveyTrip>();
    trip->lines.resize(2);
    trip->lines[0].start = {-100.0, 0.0};
    trip->lines[0].end = {0.0, 50.0};
    trip->lines[1].start = {60.0, 40.0};
    trip->lines[1].end = {60.0, -80.0};
    trip->route = {{-200.0, 0.0}, {-100.0, 0.0}, {0.0, 50.0}, {60.0, 40.0}};
    content.nextLines = trip;
    content.shown = {LayerKind::nextLines};
    const ViewFrame view = near({0.0, 0.0}, 2.0);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const auto heads = drawn.fills(Palette::screen().rust);
    const auto lines = drawn.strokes(Palette::screen().rust, 1.8);
    ASSERT_EQ(lines.size(), 2U);
    for (std::size_t i = 0; i < 2; ++i) {
        const QPointF from = view.toScreen(trip->lines[i].start);
        const QPointF to = view.toScreen(trip->lines[i].end);
        EXPECT_LT(apart(lines[i].points().front(), from), 0.01);
        EXPECT_LT(apart(lines[i].points().back(), to), 0.01);
        EXPECT_TRUE(std::ranges::any_of(heads, [&](const Drawn& head) {
            return head.points().size() == 4 && apart(head.points()[0], to) < 0.01 &&
                   apart(head.middle(), from) < apart(to, from);
        }));
        const auto number = drawn.texts(QString::number(i + 1));
        ASSERT_EQ(number.size(), 1U);
        EXPECT_LT(apart(number[0].at, from), 12.0);
    }
    const auto route = drawn.strokes(Palette::screen().rust, 0.9);
    ASSERT_EQ(route.size(), 1U);
    EXPECT_LT(apart(route[0].points().front(), view.toScreen({-200.0, 0.0})), 0.01);
    EXPECT_LT(apart(route[0].points().back(), view.toScreen({60.0, 40.0})), 0.01);
}

TEST(PlacesPainted, StandAtTheirPlacesWithTheirNamesBesideThemAndTheLaunchToo) {
    ChartContent content = support::starContent();
    content.shown = {LayerKind::places};
    const ViewFrame view = chart::wholeWater(content, page);
    Recorded drawn(page);
    support::paintOn(drawn, content, view);
    const Palette& palette = Palette::screen();
    for (const water::NamedPlace& place : content.water->places) {
        const QPointF at = view.toScreen(content.water->frame->toWater(place.place));
        EXPECT_EQ(drawn
                      .those([&](const Drawn& d) {
                          return d.isStroke(palette.card, 1.2) && apart(d.middle(), at) < 0.01;
                      })
                      .size(),
                  1U)
            << place.name;
        const auto name = drawn.texts(QString::fromStdString(place.name));
        ASSERT_EQ(name.size(), 1U) << place.name;
        EXPECT_LT(apart(name[0].at, at), 70.0) << place.name;
    }
    const QPointF launch =
        view.toScreen(content.water->frame->toWater(*content.water->plan.launch));
    const auto slip = drawn.fills(palette.rust);
    ASSERT_EQ(slip.size(), 1U);
    EXPECT_LT(apart(slip[0].points()[0], launch + QPointF(-6.0, 3.0)), 0.01);
    const auto word = drawn.texts("launch");
    ASSERT_EQ(word.size(), 1U);
    EXPECT_LT(apart(word[0].at, launch), 50.0);
}

} // namespace
