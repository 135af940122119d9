// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/propose_trip.h"

#include "core/grid/connected_pieces.h"
#include "core/grid/water_way.h"
#include "core/surface/propose_lines.h"
#include "core/water/steps/closed_cells.h"
#include "core/water/steps/worth_sounding.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace water {

namespace {

geo::WaterPoint shoreNearestToMiddle(const geo::Outline& outline) {
    const geo::Box& box = outline.box();
    const geo::WaterPoint middle{0.5 * (box.west_m + box.east_m),
                                 0.5 * (box.south_m + box.north_m)};
    geo::WaterPoint nearest = outline.segments().front().a;
    for (const geo::ShoreSegment& segment : outline.segments()) {
        if (geo::distance_m(middle, segment.a) < geo::distance_m(middle, nearest)) {
            nearest = segment.a;
        }
    }
    return nearest;
}

/// A quarter of the side of a square as large as the water. Forty lines of 60 m bring as much trust
/// in two hours as nineteen of this length (found on the sample water), but nobody sails forty.
units::Length shortestLine(const geo::Outline& outline) {
    static constexpr double share = 1.0 / 4.0;
    return units::Length::metres(
        std::clamp(share * std::sqrt(outline.area().inSquareMetres()), 30.0, 400.0));
}

/// Clears the water that cannot be reached from the launch, so that a way leads to every line.
void keepReachable(grid::DepthGrid& depth, geo::WaterPoint launch) {
    grid::Grid<std::uint8_t> open(depth.frame(), 0);
    grid::Grid<std::int32_t> classes(depth.frame(), -1);
    for (std::size_t i = 0; i < depth.size(); ++i) {
        open[i] = depth.has(i) ? 1 : 0;
        classes[i] = depth.has(i) ? 0 : -1;
    }
    const auto start = grid::Mask::from(open).nearestActive(launch);
    if (!start) {
        return;
    }
    const grid::ConnectedPieces pieces = grid::connectedPieces(classes);
    const std::int32_t reached = pieces.pieceOfCell[*start];
    for (std::size_t i = 0; i < depth.size(); ++i) {
        if (pieces.pieceOfCell[i] != reached) {
            depth.clear(i);
        }
    }
}

/// The drawing with no depth where the fishery lets no boat, nor where none comes to without
/// passing through such water.
base::Result<surface::DrawnWater> withoutClosedWater(const Water& water, surface::DrawnWater drawn,
                                                     geo::WaterPoint launch) {
    const auto closed = closedCells(water, drawn.depth.frame());
    if (!closed) {
        return std::unexpected(closed.error());
    }
    for (std::size_t i = 0; i < closed->size(); ++i) {
        if ((*closed)[i] != 0) {
            drawn.depth.clear(i);
        }
    }
    keepReachable(drawn.depth, launch);
    return drawn;
}

/// All that the boat sails: over water to each line, along it, and back.
geo::Path routeOf(const surface::SurveyTrip& trip, const grid::DepthGrid& depth,
                  geo::WaterPoint launch) {
    geo::Path route{launch};
    const auto sailTo = [&](geo::WaterPoint to) {
        const geo::Path way = grid::wayOverWater(depth, route.back(), to);
        assert(!way.empty() && "all of the water that is left can be reached");
        route.insert(route.end(), way.begin() + 1, way.end());
    };
    for (const surface::SurveyLine& line : trip.lines) {
        sailTo(line.start);
        route.push_back(line.end);
    }
    sailTo(launch);
    return route;
}

} // namespace

base::Result<surface::SurveyTrip> proposeTrip(const Water& water, const Derived& derived,
                                              std::chrono::minutes time, base::Progress& progress) {
    if (!derived.drawn || !derived.outline) {
        return base::fail(base::ErrorKind::wrongUse,
                          "where to sound next can only be told of a drawn water", "",
                          "draw the water first");
    }
    surface::LineSettings settings;
    settings.launch = water.plan.launch ? water.frame->toWater(*water.plan.launch)
                                        : shoreNearestToMiddle(*derived.outline);
    settings.time = time;
    settings.speed = water.plan.tackle.boatSpeed;
    settings.shortest = shortestLine(*derived.outline);
    const auto open = withoutClosedWater(water, *derived.drawn, settings.launch);
    if (!open) {
        return std::unexpected(open.error());
    }
    const grid::Grid<float> worth = worthSounding(water, derived);
    auto trip = surface::proposeLines(*open, *derived.outline, worth, settings, progress);
    const units::Length shorter = std::min(settings.shortest, surface::LineSettings().shortest);
    if (!trip && trip.error().kind == base::ErrorKind::unusableInput &&
        shorter < settings.shortest) {
        // Little time, or a water of narrow arms: short lines are better than none.
        settings.shortest = shorter;
        trip = surface::proposeLines(*open, *derived.outline, worth, settings, progress);
    }
    if (trip) {
        trip->route = routeOf(*trip, open->depth, settings.launch);
    }
    return trip;
}

} // namespace water
