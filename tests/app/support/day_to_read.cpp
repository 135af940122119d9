// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/support/day_to_read.h"

#include "tests/app/support/star_water.h"

#include <cmath>
#include <cstdio>

namespace support {

namespace {

using marks::FactorKind;
using structure::ZoneKind;
using units::Bearing;
using units::Depth;
using units::Length;

/// Water within a cast that can be fished, down to 9.1 m.
marks::FishableWater fishable(double share, double shallowest_m, double deepest_m) {
    return {share, Depth::metres(shallowest_m), Depth::metres(deepest_m), Depth::metres(9.1)};
}

rods::RodPlace rodAt(geo::WaterPoint lie, double bearing_deg, double distance_m, double depth_m,
                     double knot_m, std::optional<ZoneKind> over) {
    const Bearing bearing = Bearing::degrees(bearing_deg);
    const Length distance = Length::metres(distance_m);
    return {geo::moved(lie, bearing, distance),
            bearing,
            distance,
            Depth::metres(depth_m),
            Depth::metres(knot_m),
            over};
}

anchoring::Anchor anchorAt(geo::WaterPoint lie, double bearing_deg, double away_m, double depth_m,
                           double rope_m, double scope) {
    return {geo::moved(lie, Bearing::degrees(bearing_deg), Length::metres(away_m)),
            Depth::metres(depth_m), Length::metres(rope_m), scope};
}

marks::Mark markAt(int rank, geo::WaterPoint place, double depth_m, double trust_m, double score) {
    marks::Mark mark;
    mark.rank = rank;
    mark.place = place;
    mark.lonLat = starWater().frame->toEarth(place);
    mark.depth = Depth::metres(depth_m);
    mark.trust = Depth::metres(trust_m);
    mark.score = score;
    mark.anchors.lie.centre = place;
    return mark;
}

/// The more a reason weighs, the more it multiplies.
void multiplyByWeight(marks::Mark& mark) {
    for (marks::Factor& factor : mark.factors) {
        factor.times = 1.0 + factor.value * factor.weight;
    }
}

marks::Mark pinnedMark() {
    marks::Mark mark = markAt(1, starPoint(0.80, 57.0), 4.26, 0.17, 0.7749);
    mark.isPinned = true;
    mark.name = "Owl Point";
    mark.sectionName = "Kiln Bay";
    mark.zones = {ZoneKind::dropOff, ZoneKind::weedEdge};
    mark.fetch = Length::metres(420.0);
    mark.waveHeight = Length::metres(0.13);
    mark.factors = {
        {FactorKind::shelter, 0.72, 0.4, marks::WaveState{*mark.fetch, *mark.waveHeight}},
        {FactorKind::feature, 0.21, 0.6,
         marks::FeaturesNear{units::Area::squareMetres(310.0), ZoneKind::hump}},
        {FactorKind::trust, 0.44, 0.0, marks::DepthsKnownTo{Length::metres(0.56)}},
        {FactorKind::record, 0.95, 0.8, {}},
        {FactorKind::dropOff, 0.81, 1.0,
         marks::DropOffNear{Length::metres(58.0), Depth::metres(4.0), Depth::metres(9.0)}},
        {FactorKind::depth, 0.93, 1.0, fishable(0.94, 2.2, 6.1)}};
    mark.anchors.lie.heading = Bearing::degrees(297.4);
    mark.anchors.bow = anchorAt(mark.place, 298.0, 19.0, 6.31, 20.45, 3.02);
    mark.anchors.stern = anchorAt(mark.place, 117.0, 9.0, 3.14, 11.62, 1.83);
    mark.anchors.fallBackRope = Length::metres(33.27);
    mark.anchors.cautions = {anchoring::ShortOfRoom{2.9}};
    mark.spread.rods = {rodAt(mark.place, 322.0, 24.3, 5.27, 5.62, ZoneKind::dropOff),
                        rodAt(mark.place, 44.6, 18.7, 3.91, 4.18, ZoneKind::weedEdge),
                        rodAt(mark.place, 187.0, 29.9, 7.83, 8.44, std::nullopt)};
    mark.cautions = {marks::WavesHere{Length::metres(0.4)}, marks::GuessedHere{}};
    multiplyByWeight(mark);
    return mark;
}

marks::Mark sectionMark() {
    marks::Mark mark = markAt(2, starPoint(0.82, 192.0), 3.42, 0.24, 0.6851);
    mark.sectionName = "Stream Arm";
    mark.factors = {{FactorKind::depth, 0.66, 1.0, fishable(0.67, 1.3, 4.7)},
                    {FactorKind::windward, 0.58, 0.4,
                     marks::WindOnSlope{units::Speed::metresPerSecond(3.2),
                                        marks::WindOnSlope::Way::up, 0.07}}};
    mark.anchors.lie.heading = Bearing::degrees(3.6);
    mark.anchors.bow = anchorAt(mark.place, 4.0, 17.0, 5.02, 16.64, 3.01);
    mark.anchors.stern = anchorAt(mark.place, 182.0, 8.0, 2.77, 9.38, 1.71);
    mark.anchors.fallBackRope = Length::metres(27.91);
    mark.spread.rods = {rodAt(mark.place, 301.0, 26.2, 4.55, 4.97, ZoneKind::flat),
                        rodAt(mark.place, 96.0, 14.4, 2.36, 2.71, ZoneKind::weedBed)};
    mark.cautions = {marks::GuessedHere{}};
    multiplyByWeight(mark);
    return mark;
}

marks::Mark markLeftOut() {
    marks::Mark mark = markAt(3, starPoint(0.78, 300.0), 5.88, 0.31, 0.4149);
    mark.anchors.lie.heading = Bearing::degrees(276.0);
    mark.anchors.bow = anchorAt(mark.place, 276.0, 23.0, 7.46, 24.07, 2.99);
    mark.anchors.stern = anchorAt(mark.place, 96.0, 11.0, 4.69, 14.83, 1.66);
    mark.anchors.fallBackRope = Length::metres(40.39);
    return mark;
}

units::Moment at(units::Day day, int hour, int minute) {
    return std::chrono::sys_days(day) + std::chrono::hours(hour) + std::chrono::minutes(minute);
}

marks::Plan planToRead() {
    marks::Plan plan;
    plan.day.day = {std::chrono::year(2026), std::chrono::month(10), std::chrono::day(3)};
    plan.day.start = std::chrono::hours(7) + std::chrono::minutes(40);
    plan.day.end = std::chrono::hours(15) + std::chrono::minutes(5);
    plan.day.wind = {Bearing::degrees(301.0), units::Speed::metresPerSecond(6.2)};
    plan.day.levelChange = Length::metres(-0.35);
    plan.day.waterTemperature = units::Temperature::celsius(5.2);
    plan.tackle.boatLength = Length::metres(4.3);
    plan.tackle.bowHeight = Length::metres(0.6);
    return plan;
}

} // namespace

water::PlannedDay dayToRead() {
    water::PlannedDay planned;
    planned.plan = planToRead();
    const units::Day day = planned.plan.day.day;
    planned.marks = {pinnedMark(), sectionMark(), markLeftOut()};
    // British Summer Time: 07:55 on the clock at the water is 06:55 UTC.
    planned.day.stops = {
        {2, at(day, 6, 55), at(day, 9, 5), Length::metres(312.0), {}, std::chrono::minutes(120)},
        {1,
         at(day, 9, 26),
         at(day, 13, 38),
         Length::metres(1240.0),
         {},
         std::chrono::minutes(242)}};
    planned.day.moves = Length::metres(2480.0);
    planned.day.leftOut = {3};
    planned.day.leastStay = std::chrono::minutes(30);
    planned.day.dark.home = marks::DarkHours::Home::afterSunset;
    planned.light = {at(day, 5, 41), at(day, 6, 12), at(day, 17, 44), at(day, 18, 16)};
    planned.looked = 61;
    planned.unanchorable = 7;
    planned.cautions = {water::FallingIn{water::ColdWater{true}, false}, planned.day.dark,
                        water::TellSomebody{}};
    planned.rules = {water::RodLimit{4}, water::HouseNote{"No engine within 50 m of the dam."}};
    planned.fishCare = {water::FishCare::handling};
    planned.basis = {
        water::WaterLeftOut{3, 8, {{marks::Exclusion::tooDeep, units::Area::hectares(12.34)}}}};
    return planned;
}

chart::ChartContent contentToRead(preferences::UnitSystem units) {
    chart::ChartContent content = starContent();
    auto water = std::make_shared<water::Water>(*content.water);
    water->clock = *units::Clock::inZone("Europe/London");
    water->houseRules.notes = {"No anchoring within 20 m of the dam."};
    content.planned = std::make_shared<water::PlannedDay>(dayToRead());
    water->plan = content.planned->plan;
    content.water = std::move(water);
    content.words = wording::Words(units);
    return content;
}

QString Said::depth(units::Depth depth) const {
    return QString::asprintf(isMetric_ ? "%.1f m" : "%.1f ft",
                             depth.inMetres() / (isMetric_ ? 1.0 : 0.3048));
}

QString Said::length(units::Length length) const {
    const double m = length.inMetres();
    if (isMetric_) {
        return m < 100.0    ? QString::asprintf("%.1f m", m)
               : m < 1000.0 ? QString::asprintf("%.0f m", m)
                            : QString::asprintf("%.1f km", m / 1000.0);
    }
    const double ft = m / 0.3048;
    return ft < 5280.0 ? QString::asprintf("%.0f ft", ft) : QString::asprintf("%.1f mi", ft / 5280);
}

QString Said::bearing(units::Bearing bearing) {
    return QString::asprintf("%03d°", static_cast<int>(std::lround(bearing.inDegrees())));
}

QString Said::place(geo::LonLat place) {
    return QString::asprintf("%.5f N  %.5f E", place.lat_deg, place.lon_deg);
}

} // namespace support
