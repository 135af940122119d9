// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/derived.h"
#include "core/water/document/water.h"
#include "tests/support/made_up_zones.h"

#include <cmath>
#include <memory>

namespace support {

/// A water to plan a day on with everything that matters switched on, every figure by formula: 600
/// by 400 m round the origin, its bottom a plane that falls to the east, so that depths between
/// cells are exact. Today's level stands 0.5 m below the chart's, ropes are short, the east is
/// deeper than the limit, the south is a guess, the fishery closes two pieces of the shallows (one
/// of them round an open middle), and the boat comes home in the dark.
class PlannedWater {
public:
    static constexpr double level_m = -0.5;
    static constexpr double cell_m = 4.0;

    PlannedWater()
        : ground(madeUpWater({{rectangle(-300, -200, 300, 200), {}}}, chartDepth_m, cell_m)) {
        water.name = "Plane";
        water.clock = units::Clock::inZone("Europe/Paris").value();
        water.frame = ground.frame;
        water.settings.bands =
            contours::Bands::make({units::Depth::metres(2.0), units::Depth::metres(4.0)},
                                  units::Depth::metres(6.0))
                .value();
        layRules();
        layPlan();
        layDerived();
    }

    /// Below chart level.
    [[nodiscard]] static double chartDepth_m(geo::WaterPoint p) {
        return 4.0 + 0.012 * p.x_m + 0.003 * p.y_m;
    }
    [[nodiscard]] static double today_m(geo::WaterPoint p) { return chartDepth_m(p) + level_m; }
    [[nodiscard]] static bool isGuess(geo::WaterPoint p) { return p.y_m < -120.0; }
    [[nodiscard]] static double trust_m(geo::WaterPoint p) {
        return isGuess(p) ? 1.4 : 0.3 + 0.0005 * (p.x_m + 300.0);
    }
    /// The northern closed piece has an open middle; the southern one is narrower than a cell.
    [[nodiscard]] static bool isClosed(geo::WaterPoint p) {
        const bool inNorth = std::fabs(p.x_m + 100.0) <= 39.0 && std::fabs(p.y_m - 100.0) <= 39.0;
        const bool inMiddle = std::fabs(p.x_m + 100.0) < 25.0 && std::fabs(p.y_m - 100.0) < 25.0;
        const bool inStrip = std::fabs(p.x_m + 30.6) <= 0.5 && p.y_m >= -149.0 && p.y_m <= -1.0;
        return (inNorth && !inMiddle) || inStrip;
    }
    [[nodiscard]] static int sectionNumber(geo::WaterPoint p) {
        return today_m(p) > 6.0 ? -1 : p.x_m < 0.0 ? 0 : 1;
    }
    [[nodiscard]] static bool isPlateau(geo::WaterPoint p) { return p.x_m < -150.0; }
    [[nodiscard]] static bool isWeed(geo::WaterPoint p) { return p.x_m > 50.0 && p.y_m > 50.0; }

    [[nodiscard]] geo::LonLat onEarth(geo::WaterPoint p) const { return water.frame->toEarth(p); }

    MadeUpWater ground;
    water::Water water;
    water::Derived derived;

private:
    [[nodiscard]] geo::LonLatRing ringOnEarth(const geo::Ring& ring) const {
        return water.frame->toEarth(std::span(ring));
    }
    void layRules() {
        water.houseRules.rodLimit = 4;
        water.houseRules.notes = {"Nets are provided."};
        water.houseRules.closed = {{"Reserve",
                                    {{ringOnEarth(rectangle(-139, 61, -61, 139)),
                                      {ringOnEarth(rectangle(-125, 75, -75, 125))}},
                                     {ringOnEarth(rectangle(-31.1, -149, -30.1, -1)), {}}}}};
    }
    void layPlan() {
        marks::Plan& plan = water.plan;
        plan.day.day = std::chrono::year(2026) / 11 / 14;
        plan.day.start = std::chrono::hours(9);
        plan.day.end = std::chrono::hours(17) + std::chrono::minutes(30);
        plan.day.wind = {units::Bearing::degrees(120.0), units::Speed::metresPerSecond(7.0)};
        plan.day.levelChange = units::Length::metres(level_m);
        plan.day.waterTemperature = units::Temperature::celsius(9.0);
        plan.tackle.boatSpeed = units::Speed::metresPerSecond(1.2);
        plan.tackle.boatLength = units::Length::metres(4.5);
        plan.tackle.bowHeight = units::Length::metres(0.8);
        plan.tackle.bowRope = units::Length::metres(16.0);
        plan.tackle.sternRope = units::Length::metres(6.5);
        plan.tackle.scope = 3.5;
        plan.tackle.rods = 6;
        plan.tackle.cast = units::Length::metres(15.0);
        plan.tackle.overDepth = units::Length::metres(0.45);
        plan.weights.set(marks::FactorKind::windward, 1.3);
        plan.launch = onEarth({-250.0, 190.0});
        plan.count = 6;
        water.pinnedMarks = {{"Old post", onEarth({62.3, 62.7})},
                             {"Reeds", onEarth({-136.0, 100.0})},
                             {"South", onEarth({57.3, -151.7})},
                             {"Hole", onEarth({230.0, 100.0})}};
    }
    void layDerived() {
        const grid::GridFrame& frame = ground.depth.frame();
        grid::Grid<float> halfWidth_m(frame, NAN);
        grid::Grid<surface::TrustName> names(frame, surface::TrustName::inferred);
        sections::SectionMap map;
        map.sectionOfCell = grid::Grid<sections::SectionNumber>(frame, sections::noSection);
        map.sections.resize(2);
        map.sections[0].name = "West";
        map.sections[1].name = "East";
        for (std::size_t i = 0; i < frame.size(); ++i) {
            const geo::WaterPoint p = frame.centre(frame.cellAt(i));
            if (ground.depth.has(i)) {
                halfWidth_m[i] = static_cast<float>(trust_m(p));
                names[i] = isGuess(p) ? surface::TrustName::guess : surface::TrustName::sounded;
                map.sectionOfCell[i] = sectionNumber(p);
                if (sectionNumber(p) >= 0) {
                    map.sections[static_cast<std::size_t>(sectionNumber(p))].cells.push_back(i);
                }
            }
        }
        structure::ZoneMap zones = noZones(ground);
        addZone(zones, ground, structure::ZoneKind::plateau, isPlateau);
        weed::WeedMap weed;
        weed.zones = noZones(ground);
        addZone(weed.zones, ground, structure::ZoneKind::weedBed, isWeed);
        derived.outline = std::make_shared<const geo::Outline>(ground.outline);
        derived.drawn = std::make_shared<const surface::DrawnWater>(
            surface::DrawnWater{ground.mask, ground.depth, {halfWidth_m, names}, {}});
        derived.structure = std::make_shared<const structure::ZoneMap>(std::move(zones));
        derived.weed = std::make_shared<const weed::WeedMap>(std::move(weed));
        derived.sections = std::make_shared<const sections::SectionMap>(std::move(map));
    }
};

} // namespace support
