// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/support/star_water.h"

#include "core/water/document/chosen_scale.h"

#include "app/chart/chart_painter.h"

#include <cmath>
#include <numbers>

namespace support {

namespace {

constexpr double deepest_m = 20.0;
constexpr double cell_m = 5.0;

geo::Ring shoreAt(double share) {
    geo::Ring ring;
    for (int i = 0; i < 720; ++i) {
        ring.push_back(starPoint(share, 0.5 * i));
    }
    return ring;
}

geo::Ring disc(geo::WaterPoint middle, double radius_m) {
    geo::Ring ring;
    for (int i = 0; i < 60; ++i) {
        ring.push_back(
            geo::moved(middle, units::Bearing::degrees(-6.0 * i), units::Length::metres(radius_m)));
    }
    return ring;
}

double radiusAt_m(double angle) {
    return 420.0 * (1.0 + 0.20 * std::cos(2.0 * angle + 0.4) + 0.10 * std::sin(3.0 * angle) +
                    0.06 * std::cos(5.0 * angle));
}

double shareAt(geo::WaterPoint p) {
    return std::hypot(p.x_m, p.y_m) / radiusAt_m(std::atan2(p.y_m, p.x_m));
}

double shareOfDepth(units::Depth depth) {
    return std::sqrt(std::max(0.0, 1.0 - depth.inMetres() / deepest_m));
}

std::shared_ptr<surface::DrawnWater> drawn(const geo::Outline& outline) {
    const auto frame = grid::GridFrame::covering(outline.box(), units::Length::metres(cell_m));
    auto water = std::make_shared<surface::DrawnWater>();
    water->mask = grid::Mask::of(outline, *frame);
    water->depth = grid::DepthGrid(*frame);
    grid::Grid<float> halfWidth(*frame, NAN);
    grid::Grid<surface::TrustName> names(*frame, surface::TrustName::sounded);
    for (std::size_t i = 0; i < frame->size(); ++i) {
        if (!water->mask.isActive(i)) {
            continue;
        }
        const geo::WaterPoint p = frame->centre(frame->cellAt(i));
        water->depth.set(i, units::Depth::metres(std::max(starDepth_m(p), 0.05)));
        // Sounded along lines 50 m apart, but for a round patch in the west.
        const double toLine = std::abs(std::remainder(p.y_m, 50.0));
        const double toPatch = geo::distance_m(p, {-220.0, 60.0});
        const double half = 0.15 + 0.008 * toLine + (toPatch < 120.0 ? 2.6 : 0.0);
        halfWidth[i] = static_cast<float>(half);
        names[i] = toPatch < 120.0 ? surface::TrustName::guess
                   : toLine < 6.0  ? surface::TrustName::sounded
                                   : surface::TrustName::inferred;
    }
    water->trust = surface::TrustGrid(std::move(halfWidth), std::move(names));
    return water;
}

std::shared_ptr<water::WaterForm> form(const contours::Bands& bands) {
    auto made = std::make_shared<water::WaterForm>();
    for (int metres = 1; metres < 20; ++metres) {
        const units::Depth depth = units::Depth::metres(metres);
        geo::Path line = shoreAt(shareOfDepth(depth));
        line.push_back(line.front());
        made->contours.push_back({depth, std::move(line), true});
    }
    for (std::size_t i = 0; i < bands.count(); ++i) {
        geo::Piece piece{shoreAt(shareOfDepth(bands.from(i))), {}};
        if (const auto to = bands.to(i); to && to->inMetres() < deepest_m) {
            geo::Ring hole = shoreAt(shareOfDepth(*to));
            piece.islands.emplace_back(hole.rbegin(), hole.rend());
        }
        made->bandPolygons.push_back({bands.from(i), bands.to(i), {std::move(piece)}});
    }
    made->hypsography.area = units::Area::hectares(57.0);
    made->hypsography.maxDepth = units::Depth::metres(deepest_m);
    made->hypsography.meanDepth = units::Depth::metres(10.0);
    return made;
}

structure::ZoneMap zones(const grid::GridFrame& frame) {
    structure::ZoneMap map;
    map.zoneOfCell = grid::Grid<structure::ZoneNumber>(frame, structure::noZone);
    const auto add = [&](structure::ZoneKind kind, const char* name, geo::WaterPoint middle,
                         double radius_m) {
        structure::Zone zone;
        zone.kind = kind;
        zone.name = name;
        zone.middle = middle;
        zone.pieces = {{disc(middle, radius_m), {}}};
        zone.area = units::Area::squareMetres(std::numbers::pi * radius_m * radius_m);
        for (std::size_t i = 0; i < frame.size(); ++i) {
            if (geo::distance_m(frame.centre(frame.cellAt(i)), middle) < radius_m) {
                map.zoneOfCell[i] = static_cast<structure::ZoneNumber>(map.zones.size());
                zone.cells.push_back(i);
            }
        }
        map.zones.push_back(std::move(zone));
    };
    add(structure::ZoneKind::hump, "Hump 1", {120.0, -60.0}, 55.0);
    add(structure::ZoneKind::hole, "Hole 1", {-40.0, -20.0}, 45.0);
    add(structure::ZoneKind::plateau, "Plateau 1", {40.0, 130.0}, 50.0);
    structure::Zone edge;
    edge.kind = structure::ZoneKind::dropOff;
    edge.name = "Drop-off 1";
    geo::Path top;
    for (int angle = 20; angle <= 200; ++angle) {
        top.push_back(starPoint(0.86, angle));
    }
    edge.topEdges = {top};
    edge.middle = top[90];
    edge.edgeLength = geo::lengthOf(top);
    map.zones.push_back(std::move(edge));
    return map;
}

std::shared_ptr<weed::WeedMap> weeds(const grid::GridFrame& frame) {
    auto map = std::make_shared<weed::WeedMap>();
    map->probability = grid::Grid<float>(frame, NAN);
    map->height_m = grid::Grid<float>(frame, NAN);
    map->zones.zoneOfCell = grid::Grid<structure::ZoneNumber>(frame, structure::noZone);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const geo::WaterPoint p = frame.centre(frame.cellAt(i));
        if (shareAt(p) < 1.0) {
            const bool isBay = p.x_m > 250.0 && shareAt(p) > 0.8;
            map->probability[i] = isBay ? 0.9F : 0.1F;
            map->height_m[i] = isBay ? 1.2F : 0.2F;
        }
    }
    return map;
}

std::shared_ptr<sections::SectionMap> sectionsOf(const grid::GridFrame& frame, units::Depth limit) {
    auto map = std::make_shared<sections::SectionMap>();
    map->sectionOfCell = grid::Grid<sections::SectionNumber>(frame, sections::noSection);
    const double inner = shareOfDepth(limit);
    constexpr std::array names{"North Reeds", "Kiln Bay", "Long Bar",  "Stream Arm",
                               "Ferry Bank",  "Sluice",   "Low Shelf", "Tern Point"};
    for (std::size_t k = 0; k < names.size(); ++k) {
        sections::Section section;
        section.name = names[k];
        geo::Ring ring;
        for (int step = 0; step <= 45; ++step) {
            ring.push_back(starPoint(1.0, 45.0 * static_cast<double>(k) + step));
        }
        for (int step = 45; step >= 0; --step) {
            ring.push_back(starPoint(inner, 45.0 * static_cast<double>(k) + step));
        }
        section.pieces = {{ring, {}}};
        const double middle = 45.0 * static_cast<double>(k) + 22.5;
        section.middle = starPoint(0.5 * (1.0 + inner), middle);
        for (double angle = middle - 14.0; angle <= middle + 14.0; angle += 1.0) {
            section.spine.push_back(starPoint(0.5 * (1.0 + inner), angle));
        }
        map->sections.push_back(std::move(section));
    }
    return map;
}

std::shared_ptr<water::CheckedSurvey> checkedSurvey() {
    auto checked = std::make_shared<water::CheckedSurvey>();
    reduction::ReducedDay day;
    for (int line = -6; line <= 6; ++line) {
        for (double x_m = -400.0; x_m < 400.0; x_m += 4.0) {
            const geo::WaterPoint p{x_m, 50.0 * line};
            if (shareAt(p) >= 1.0 || geo::distance_m(p, {-220.0, 60.0}) < 120.0) {
                continue;
            }
            const std::size_t n = day.points.size();
            day.points.push_back(p);
            day.verdicts.push_back(n % 97 == 0    ? soundings::Verdict::spike
                                   : n % 141 == 0 ? soundings::Verdict::positionJump
                                                  : soundings::Verdict::kept);
            day.depth_m.push_back(n % 97 == 0 ? 2.0 * starDepth_m(p) : starDepth_m(p));
        }
        reduction::Crossing crossing;
        crossing.at = {150.0, 50.0 * line};
        crossing.depthA_m = starDepth_m(crossing.at);
        crossing.depthB_m = crossing.depthA_m + 0.1 * line;
        checked->crossings.push_back(crossing);
    }
    checked->survey.days.push_back(std::move(day));
    return checked;
}

} // namespace

geo::WaterPoint starPoint(double share, double angle_deg) {
    const double angle = angle_deg * std::numbers::pi / 180.0;
    const double radius = share * radiusAt_m(angle);
    return {radius * std::cos(angle), radius * std::sin(angle)};
}

double starDepth_m(geo::WaterPoint p) {
    const double share = shareAt(p);
    return deepest_m * (1.0 - share * share);
}

water::Derived starDerived() {
    const water::Water water = starWater();
    water::Derived derived;
    derived.outline = std::make_shared<geo::Outline>(
        *geo::Outline::make({geo::Piece{shoreAt(1.0), {}}}, *water.frame));
    const auto made = drawn(*derived.outline);
    derived.drawn = made;
    derived.form = form(water::bandsOf(water, derived));
    derived.structure = std::make_shared<structure::ZoneMap>(zones(made->depth.frame()));
    derived.weed = weeds(made->depth.frame());
    derived.sections = sectionsOf(made->depth.frame(), water::bandsOf(water, derived).limit());
    derived.checked = checkedSurvey();
    return derived;
}

chart::ChartContent starContent() {
    chart::ChartContent content;
    content.water = std::make_shared<water::Water>(starWater());
    content.derived = starDerived();
    content.planned = std::make_shared<water::PlannedDay>(starDay());
    content.shown = chart::usualLayers();
    return content;
}

} // namespace support
