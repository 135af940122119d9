// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"
#include "core/store/key_values.h"

namespace store {

namespace {

/// What is absent is not written, and what is not written is absent.
void putStructure(KeyValues& facts, const water::StructureChoice& chosen) {
    if (chosen.fineScale) {
        facts.put("structure_fine_scale_m", chosen.fineScale->inMetres());
    }
    if (chosen.broadScale) {
        facts.put("structure_broad_scale_m", chosen.broadScale->inMetres());
    }
    if (chosen.dropOffFrom_percent) {
        facts.put("drop_off_from_percent", *chosen.dropOffFrom_percent);
    }
    if (chosen.highGround) {
        facts.put("high_ground_m", chosen.highGround->inMetres());
    }
    if (chosen.leastArea) {
        facts.put("least_zone_area_m2", chosen.leastArea->inSquareMetres());
    }
}

void takeStructure(KeyValues& facts, water::StructureChoice& chosen) {
    if (const auto fine_m = facts.number("structure_fine_scale_m")) {
        chosen.fineScale = units::Length::metres(*fine_m);
    }
    if (const auto broad_m = facts.number("structure_broad_scale_m")) {
        chosen.broadScale = units::Length::metres(*broad_m);
    }
    chosen.dropOffFrom_percent = facts.number("drop_off_from_percent");
    if (const auto high_m = facts.number("high_ground_m")) {
        chosen.highGround = units::Length::metres(*high_m);
    }
    if (const auto area_m2 = facts.number("least_zone_area_m2")) {
        chosen.leastArea = units::Area::squareMetres(*area_m2);
    }
}

void putBands(KeyValues& facts, const water::Settings& settings) {
    if (settings.bands) {
        std::vector<double> edges_m;
        for (const units::Depth edge : settings.bands->edges()) {
            edges_m.push_back(edge.inMetres());
        }
        facts.put("band_edges_m", edges_m);
        facts.put("limit_depth_m", settings.bands->limit().inMetres());
    }
    if (settings.limit) {
        facts.put("limit_for_chosen_bands_m", settings.limit->inMetres());
    }
    if (settings.countsIn == contours::CountsIn::feet) {
        facts.put("counts_in", std::string("feet"));
    }
}

void putSettings(KeyValues& facts, const water::Settings& settings) {
    if (settings.cell) {
        facts.put("cell_m", settings.cell->inMetres());
    }
    putBands(facts, settings);
    if (settings.sectionArea) {
        facts.put("section_area_m2", settings.sectionArea->inSquareMetres());
    }
    if (settings.secchi) {
        facts.put("secchi_depth_m", settings.secchi->inMetres());
    }
    facts.put("weed_left", settings.weedLeft);
    putStructure(facts, settings.structure);
}

void takeBands(Connection& connection, KeyValues& facts, water::Settings& settings) {
    if (const auto limit_m = facts.number("limit_for_chosen_bands_m")) {
        settings.limit = units::Depth::metres(*limit_m);
    }
    const std::string unit = facts.text("counts_in").value_or("metres");
    settings.countsIn = unit == "feet" ? contours::CountsIn::feet : contours::CountsIn::metres;
    if (unit != "feet" && unit != "metres") {
        connection.failDamaged("depths cannot be counted in '" + unit + "'");
    }
    const auto edges_m = facts.numbers("band_edges_m");
    const auto limit_m = facts.number("limit_depth_m");
    if (!edges_m || !limit_m) {
        return;
    }
    std::vector<units::Depth> edges;
    for (const double edge_m : *edges_m) {
        edges.push_back(units::Depth::metres(edge_m));
    }
    const auto bands = contours::Bands::make(std::move(edges), units::Depth::metres(*limit_m));
    if (bands) {
        settings.bands = *bands;
    } else {
        connection.failDamaged("the bands cannot be: " + bands.error().what);
    }
}

void takeSettings(Connection& connection, KeyValues& facts, water::Settings& settings) {
    if (const auto cell_m = facts.number("cell_m")) {
        settings.cell = units::Length::metres(*cell_m);
    }
    takeBands(connection, facts, settings);
    if (const auto area_m2 = facts.number("section_area_m2")) {
        settings.sectionArea = units::Area::squareMetres(*area_m2);
    }
    if (const auto secchi_m = facts.number("secchi_depth_m")) {
        settings.secchi = units::Depth::metres(*secchi_m);
    }
    settings.weedLeft = facts.number("weed_left").value_or(settings.weedLeft);
    takeStructure(facts, settings.structure);
    if (const auto problems = water::problemsIn(settings); !problems.empty()) {
        connection.failDamaged("a setting cannot be: " + problems.front());
        settings = connection.isRowWhole() ? settings : water::Settings();
    }
}

void takeFrame(Connection& connection, KeyValues& facts, water::Water& water) {
    const auto lon_deg = facts.number("frame_centre_lon_deg");
    const auto lat_deg = facts.number("frame_centre_lat_deg");
    if (!lon_deg || !lat_deg) {
        return;
    }
    const auto frame = geo::WaterFrame::centredOn({*lon_deg, *lat_deg});
    if (frame) {
        water.frame = *frame;
    } else {
        connection.failDamaged("the water's frame cannot be: " + frame.error().what);
    }
}

} // namespace

void keepFacts(Connection& connection, const water::Water& water) {
    KeyValues facts;
    facts.put("name", water.name);
    facts.put("clock_zone", water.clock.zone());
    facts.put("chart_level_m", water.chartLevel.inMetresOnGauge());
    if (water.frame) {
        facts.put("frame_centre_lon_deg", water.frame->centre().lon_deg);
        facts.put("frame_centre_lat_deg", water.frame->centre().lat_deg);
        setFrame(connection, *water.frame);
    }
    putSettings(facts, water.settings);
    facts.save(connection, "settings");

    connection.execute("DELETE FROM places");
    Statement insert(connection, "INSERT INTO places (geom, name) VALUES (?,?)");
    LonLatBox box;
    for (const water::NamedPlace& place : water.places) {
        box.take(place.place);
        insert.run(Blob(blobOf(place.place)), place.name);
    }
    setExtent(connection, "places", box);
}

void recallFacts(Connection& connection, water::Water& water) {
    KeyValues facts = KeyValues::load(connection, "settings");
    water.name = facts.text("name").value_or("");
    if (const auto zone = facts.text("clock_zone")) {
        const auto clock = units::Clock::inZone(*zone);
        if (clock) {
            water.clock = *clock;
        } else {
            connection.fail({base::ErrorKind::unusableInput,
                             "this machine knows no time zone '" + *zone + "'",
                             connection.path().string(), "install the time zone data (tzdata)"});
        }
    }
    water.chartLevel =
        units::WaterLevel::metresOnGauge(facts.number("chart_level_m").value_or(0.0));
    takeFrame(connection, facts, water);
    takeSettings(connection, facts, water.settings);

    Statement rows(connection, "SELECT geom, name FROM places ORDER BY fid");
    rows.ask();
    while (rows.next()) {
        takeRow(connection, water.places, {rows.text(1), placeAt(connection, rows, 0)});
    }
}

} // namespace store
