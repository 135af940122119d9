// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/support/star_water.h"

namespace support {

namespace {

units::Depth depthAt(geo::WaterPoint p) {
    return units::Depth::metres(starDepth_m(p));
}

anchoring::AnchorSet anchorsAt(geo::WaterPoint place, const logbook::Wind& wind) {
    anchoring::AnchorSet set;
    set.lie = {place, wind.from.value()};
    set.bow.place = geo::moved(place, wind.from.value(), units::Length::metres(21.0));
    set.stern.emplace().place =
        geo::moved(place, wind.from->opposite(), units::Length::metres(10.0));
    for (anchoring::Anchor* anchor : {&set.bow, &*set.stern}) {
        anchor->depth = depthAt(anchor->place);
        anchor->scope = anchor == &set.bow ? 3.0 : 1.5;
        anchor->rope = units::Length::metres(anchor->scope * (anchor->depth.inMetres() + 0.5));
    }
    set.fallBackRope = set.bow.rope + units::Length::metres(12.0);
    return set;
}

rods::RodSpread rodsAt(geo::WaterPoint place, const logbook::Wind& wind) {
    rods::RodSpread spread;
    for (const double turn : {40.0, 110.0, 215.0, 310.0}) {
        rods::RodPlace rod;
        rod.bearing = wind.from->turnedBy(turn);
        rod.distance = units::Length::metres(20.0 + turn / 30.0);
        rod.place = geo::moved(place, rod.bearing, rod.distance);
        rod.depth = depthAt(rod.place);
        rod.stopKnot = rod.depth + units::Depth::feet(1.0);
        rod.over = structure::ZoneKind::dropOff;
        spread.rods.push_back(rod);
    }
    return spread;
}

marks::Mark markAt(int rank, geo::WaterPoint place, const char* section, const water::Water& water,
                   const logbook::Wind& wind) {
    marks::Mark mark;
    mark.rank = rank;
    mark.place = place;
    mark.lonLat = water.frame->toEarth(place);
    mark.depth = depthAt(place);
    mark.trust = units::Depth::metres(0.15 + 0.05 * rank);
    mark.sectionName = section;
    mark.zones = {structure::ZoneKind::dropOff, structure::ZoneKind::weedEdge};
    mark.score = 0.80 - 0.03 * rank;
    mark.fetch = units::Length::metres(420.0);
    mark.waveHeight = units::Length::metres(0.1);
    mark.factors = {
        {marks::FactorKind::depth, 0.92, 1.0,
         marks::FishableWater{0.94, units::Depth::metres(2.2), units::Depth::metres(6.1),
                              units::Depth::metres(9.1)}},
        {marks::FactorKind::dropOff, 0.81, 1.0,
         marks::DropOffNear{units::Length::metres(58.0), units::Depth::metres(4.0),
                            units::Depth::metres(9.0)}},
        {marks::FactorKind::shelter, 0.72, 0.4, marks::WaveState{*mark.fetch, *mark.waveHeight}}};
    mark.anchors = anchorsAt(place, wind);
    mark.spread = rodsAt(place, wind);
    if (rank % 3 == 0) {
        mark.anchors.cautions = {anchoring::ShortOfRoom{2.9}};
    }
    return mark;
}

} // namespace

water::Water starWater() {
    water::Water water;
    water.name = "Skarrow Water";
    water.frame = *geo::WaterFrame::centredOn({3.11, 55.20});
    const auto lonLat = [&](geo::WaterPoint p) { return water.frame->toEarth(p); };
    water.places = {{"Owl Point", lonLat(starPoint(0.97, 100.0))},
                    {"The Steps", lonLat(starPoint(0.97, 250.0))},
                    {"Old Wall", lonLat(starPoint(0.97, 330.0))}};
    water.plan.launch = lonLat(starPoint(0.985, 285.0));
    geo::LonLatRing strip;
    for (const auto& [share, angle] : {std::pair(1.0, 150.0), std::pair(1.0, 170.0),
                                       std::pair(0.7, 170.0), std::pair(0.7, 150.0)}) {
        strip.push_back(lonLat(starPoint(share, angle)));
    }
    water.houseRules.closed = {{"nursery bay", {{strip, {}}}}};
    water.houseRules.rodLimit = 4;
    for (int i = 0; i < 9; ++i) {
        logbook::Stay stay;
        stay.id = logbook::StayId(i + 1);
        stay.start = units::Moment(std::chrono::hours(490'000 + 30 * i));
        stay.end = stay.start + std::chrono::minutes(30 + 25 * i);
        stay.place = lonLat(starPoint(0.8, 41.0 * i));
        stay.rods = 4;
        for (int k = 0; k < i % 3; ++k) {
            logbook::Fish fish;
            fish.id = logbook::FishId(100 + 10 * i + k);
            fish.time = stay.start + std::chrono::minutes(10 + k);
            fish.landed = k == 0;
            stay.runs.push_back(fish);
        }
        water.log.push_back(stay);
    }
    return water;
}

water::PlannedDay starDay() {
    const water::Water water = starWater();
    water::PlannedDay planned;
    planned.plan.day.wind = {units::Bearing::degrees(300.0), units::Speed::metresPerSecond(6.0)};
    planned.plan.day.levelChange = units::Length::metres(0.35);
    constexpr std::array sectionNames{"North Reeds", "Kiln Bay", "Long Bar",  "Stream Arm",
                                      "Ferry Bank",  "Sluice",   "Low Shelf", "Tern Point"};
    for (int rank = 1; rank <= 8; ++rank) {
        const int at = (rank * 3) % 8;
        planned.marks.push_back(markAt(rank, starPoint(0.84, 45.0 * at + 12.0),
                                       sectionNames[static_cast<std::size_t>(at)], water,
                                       planned.plan.day.wind));
    }
    const units::Moment start{std::chrono::sys_days(planned.plan.day.day) + std::chrono::hours(8)};
    for (int stop = 0; stop < 5; ++stop) {
        planned.day.stops.push_back({(stop * 2) % 5 + 1,
                                     start + std::chrono::minutes(90 * stop),
                                     start + std::chrono::minutes(90 * stop + 75),
                                     units::Length::metres(300.0 + 40.0 * stop),
                                     {}});
    }
    planned.day.moves = units::Length::metres(2900.0);
    planned.light.sunrise = start - std::chrono::minutes(20);
    planned.light.sunset = start + std::chrono::minutes(570);
    planned.light.civilDusk = start + std::chrono::minutes(605);
    planned.cautions = {water::FallingIn{water::ColdWater{true}, false}, water::TellSomebody{}};
    return planned;
}

} // namespace support
