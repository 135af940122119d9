// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"
#include "core/store/key_values.h"

#include <algorithm>

namespace store {

namespace {

void putWind(KeyValues& values, const std::string& which, const logbook::Wind& wind) {
    if (wind.from) {
        values.put(which + "_from_deg", wind.from->inDegrees());
    }
    if (wind.speed) {
        values.put(which + "_speed_m_s", wind.speed->inMetresPerSecond());
    }
}

/// What is not there is not known: it is no calm from the north.
logbook::Wind windIn(KeyValues& values, const std::string& which) {
    logbook::Wind wind;
    if (const auto from_deg = values.number(which + "_from_deg")) {
        wind.from = units::Bearing::degrees(*from_deg);
    }
    if (const auto speed_m_s = values.number(which + "_speed_m_s")) {
        wind.speed = units::Speed::metresPerSecond(*speed_m_s);
    }
    return wind;
}

void putDay(KeyValues& values, const marks::ExpectedDay& day) {
    values.put("day", units::isoText(day.day));
    values.put("start_s", static_cast<std::int64_t>(day.start.count()));
    values.put("end_s", static_cast<std::int64_t>(day.end.count()));
    putWind(values, "wind", day.wind);
    if (day.windLater) {
        values.put("wind_later_at_s", static_cast<std::int64_t>(day.windLater->at.count()));
        putWind(values, "wind_later", day.windLater->wind);
    }
    values.put("level_change_m", day.levelChange.inMetres());
    if (day.waterTemperature) {
        values.put("water_temperature_c", day.waterTemperature->inCelsius());
    }
    if (day.stay) {
        values.put("stay_s", static_cast<std::int64_t>(day.stay->count()));
    }
}

void putTackle(KeyValues& values, const marks::Tackle& tackle) {
    values.put("boat_speed_m_s", tackle.boatSpeed.inMetresPerSecond());
    values.put("boat_length_m", tackle.boatLength.inMetres());
    values.put("bow_height_m", tackle.bowHeight.inMetres());
    values.put("bow_rope_m", tackle.bowRope.inMetres());
    values.put("stern_rope_m", tackle.sternRope.inMetres());
    values.put("scope", tackle.scope);
    values.put("rods", static_cast<std::int64_t>(tackle.rods));
    values.put("cast_m", tackle.cast.inMetres());
    values.put("over_depth_m", tackle.overDepth.inMetres());
    values.put("to_one_anchor", static_cast<std::int64_t>(tackle.toOneAnchor ? 1 : 0));
}

/// Fills `value` where the key is there.
void take(KeyValues& values, std::string_view key, units::Length& value) {
    value = units::Length::metres(values.number(key).value_or(value.inMetres()));
}

void take(KeyValues& values, std::string_view key, units::Speed& value) {
    value = units::Speed::metresPerSecond(values.number(key).value_or(value.inMetresPerSecond()));
}

void take(KeyValues& values, std::string_view key, int& value) {
    value = static_cast<int>(values.wholeNumber(key).value_or(value));
}

void take(KeyValues& values, std::string_view key, std::chrono::seconds& value) {
    value = std::chrono::seconds(values.wholeNumber(key).value_or(value.count()));
}

void takeDay(Connection& connection, KeyValues& values, marks::ExpectedDay& day) {
    if (const auto text = values.text("day")) {
        const auto read = units::dayFrom(*text);
        if (!read) {
            connection.failDamaged("the plan's day '" + *text + "' is no day");
        }
        day.day = read.value_or(day.day);
    }
    take(values, "start_s", day.start);
    take(values, "end_s", day.end);
    day.wind = windIn(values, "wind");
    if (const auto at_s = values.wholeNumber("wind_later_at_s")) {
        day.windLater = marks::LaterWind{std::chrono::seconds(*at_s), windIn(values, "wind_later")};
    }
    take(values, "level_change_m", day.levelChange);
    if (const auto temperature_c = values.number("water_temperature_c")) {
        day.waterTemperature = units::Temperature::celsius(*temperature_c);
    }
    if (const auto stay_s = values.number("stay_s")) {
        day.stay = std::chrono::seconds(std::llround(std::clamp(*stay_s, 300.0, 43'200.0)));
    }
}

void takeTackle(KeyValues& values, marks::Tackle& tackle) {
    take(values, "boat_speed_m_s", tackle.boatSpeed);
    take(values, "boat_length_m", tackle.boatLength);
    take(values, "bow_height_m", tackle.bowHeight);
    take(values, "bow_rope_m", tackle.bowRope);
    take(values, "stern_rope_m", tackle.sternRope);
    tackle.scope = values.number("scope").value_or(tackle.scope);
    take(values, "rods", tackle.rods);
    take(values, "cast_m", tackle.cast);
    take(values, "over_depth_m", tackle.overDepth);
    tackle.toOneAnchor = values.wholeNumber("to_one_anchor").value_or(0) != 0;
}

std::string weightKey(marks::FactorKind kind) {
    return "weight_" + std::string(marks::nameOf(kind));
}

} // namespace

void keepPlan(Connection& connection, const water::Water& water) {
    const marks::Plan& plan = water.plan;
    KeyValues values;
    putDay(values, plan.day);
    putTackle(values, plan.tackle);
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        values.put(weightKey(kind), plan.weights.of(kind));
    }
    if (plan.launch) {
        values.put("launch_lon_deg", plan.launch->lon_deg);
        values.put("launch_lat_deg", plan.launch->lat_deg);
    }
    values.put("count", static_cast<std::int64_t>(plan.count));
    values.put("try_new", plan.tryNew);
    values.save(connection, "plan");

    connection.execute("DELETE FROM pinned_marks");
    Statement insert(connection, "INSERT INTO pinned_marks (geom, name) VALUES (?,?)");
    LonLatBox box;
    for (const water::PinnedMark& mark : water.pinnedMarks) {
        box.take(mark.place);
        insert.run(Blob(blobOf(mark.place)), mark.name);
    }
    setExtent(connection, "pinned_marks", box);
}

void recallPlan(Connection& connection, water::Water& water) {
    marks::Plan& plan = water.plan;
    KeyValues values = KeyValues::load(connection, "plan");
    takeDay(connection, values, plan.day);
    takeTackle(values, plan.tackle);
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        if (const auto weight = values.number(weightKey(kind))) {
            plan.weights.set(kind, *weight);
        }
    }
    const auto lon_deg = values.number("launch_lon_deg");
    const auto lat_deg = values.number("launch_lat_deg");
    if (lon_deg && lat_deg) {
        const geo::LonLat launch = onEarth(connection, {*lon_deg, *lat_deg});
        if (connection.isRowWhole()) {
            plan.launch = launch;
        }
    }
    take(values, "count", plan.count);
    plan.tryNew = std::clamp(values.number("try_new").value_or(plan.tryNew), 0.0, 1.0);

    Statement rows(connection, "SELECT geom, name FROM pinned_marks ORDER BY fid");
    rows.ask();
    while (rows.next()) {
        takeRow(connection, water.pinnedMarks, {rows.text(1), placeAt(connection, rows, 0), {}});
    }
}

} // namespace store
