// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/chunks_in_common.h"
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"
#include "core/store/other_fields.h"

namespace store {

namespace {

/// The number in the unit that `read` reads, where there is a value.
template <class Quantity>
std::optional<double> numberOf(const std::optional<Quantity>& quantity,
                               double (Quantity::*read)() const) {
    return quantity ? std::optional(((*quantity).*read)()) : std::nullopt;
}

/// The other way.
template <class Quantity>
std::optional<Quantity> quantityOf(std::optional<double> number, Quantity (*make)(double)) {
    return number ? std::optional(make(*number)) : std::nullopt;
}

std::optional<double> lonOf(const std::optional<geo::LonLat>& place) {
    return place ? std::optional(place->lon_deg) : std::nullopt;
}

std::optional<double> latOf(const std::optional<geo::LonLat>& place) {
    return place ? std::optional(place->lat_deg) : std::nullopt;
}

/// Of two columns side by side, the longitude first.
std::optional<geo::LonLat> placeIfAny(Connection& connection, Statement& rows, int column) {
    const auto lon_deg = rows.numberIfAny(column);
    const auto lat_deg = rows.numberIfAny(column + 1);
    if (!lon_deg || !lat_deg) {
        return std::nullopt;
    }
    return onEarth(connection, {*lon_deg, *lat_deg});
}

constexpr const char* insertRun =
    "INSERT INTO fish (geom, stay_fid, number, time, landed, species, bait, weight_kg, length_m, "
    "bait_depth_m, note, who, hooked, returned, bait_lon, bait_lat, photograph, other_fields) "
    "VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)";

void keepRuns(Connection& connection, Statement& insert, const logbook::Stay& stay,
              std::int64_t stayFid) {
    const GeometryBlob place = blobOf(stay.place);
    for (const logbook::Fish& fish : stay.runs) {
        insert.run(
            Blob(place), stayFid, fish.id.number(), fish.time.transform(keptTime), fish.landed,
            fish.species, fish.bait,
            kept(connection, "weight_kg", numberOf(fish.weight, &units::Weight::inKilograms)),
            kept(connection, "length_m", numberOf(fish.length, &units::Length::inMetres)),
            kept(connection, "bait_depth_m", numberOf(fish.baitDepth, &units::Depth::inMetres)),
            fish.note, fish.who, fish.hooked, fish.returned, lonOf(fish.baitPlace),
            latOf(fish.baitPlace), fish.photograph, keptFields(fish.others));
    }
}

constexpr const char* selectRuns =
    "SELECT stay_fid, number, time, landed, species, bait, weight_kg, length_m, bait_depth_m, "
    "note, who, hooked, returned, bait_lon, bait_lat, photograph, other_fields FROM fish "
    "ORDER BY stay_fid, fid";

logbook::Fish fishAt(Connection& connection, Statement& rows) {
    logbook::Fish fish;
    fish.id = logbook::FishId(rows.wholeNumber(1));
    if (!rows.isEmpty(2)) {
        fish.time = momentAt(connection, rows, 2);
    }
    fish.landed = rows.wholeNumber(3) != 0;
    fish.species = rows.text(4);
    fish.bait = rows.text(5);
    fish.weight = quantityOf(rows.numberIfAny(6), &units::Weight::kilograms);
    fish.length = quantityOf(rows.numberIfAny(7), &units::Length::metres);
    fish.baitDepth = quantityOf(rows.numberIfAny(8), &units::Depth::metres);
    fish.note = rows.text(9);
    fish.who = rows.text(10);
    fish.hooked = rows.text(11);
    if (!rows.isEmpty(12)) {
        fish.returned = rows.wholeNumber(12) != 0;
    }
    fish.baitPlace = placeIfAny(connection, rows, 13);
    fish.photograph = rows.text(15);
    fish.others = fieldsAt(connection, rows, 16);
    return fish;
}

constexpr const char* selectStays =
    "SELECT fid, geom, number, start_time, end_time, rods, bait, wind_from_deg, wind_speed_m_s, "
    "water_temperature_c, note, level_m, sky, who, bait_lon, bait_lat, photograph, other_fields "
    "FROM stays ORDER BY fid";

logbook::Stay stayAt(Connection& connection, Statement& rows) {
    logbook::Stay stay;
    stay.place = placeAt(connection, rows, 1);
    stay.id = logbook::StayId(rows.wholeNumber(2));
    stay.start = momentAt(connection, rows, 3);
    stay.end = momentAt(connection, rows, 4);
    if (!rows.isEmpty(5)) {
        stay.rods = intAt(connection, rows, 5);
    }
    stay.bait = rows.text(6);
    logbook::Conditions& conditions = stay.conditions;
    conditions.windFrom = quantityOf(rows.numberIfAny(7), &units::Bearing::degrees);
    conditions.windSpeed = quantityOf(rows.numberIfAny(8), &units::Speed::metresPerSecond);
    conditions.waterTemperature = quantityOf(rows.numberIfAny(9), &units::Temperature::celsius);
    stay.note = rows.text(10);
    conditions.level = quantityOf(rows.numberIfAny(11), &units::WaterLevel::metresOnGauge);
    conditions.sky = rows.text(12);
    stay.who = rows.text(13);
    stay.baitPlace = placeIfAny(connection, rows, 14);
    stay.photograph = rows.text(16);
    stay.others = fieldsAt(connection, rows, 17);
    return stay;
}

/// Puts the stays from the position `first` up to `end` into the file, each as the row of its place
/// in the log, counted from 1.
void insertStays(Connection& connection, const logbook::KeptLog& log, std::size_t first,
                 std::size_t end) {
    Statement insert(connection,
                     "INSERT INTO stays (fid, geom, number, start_time, end_time, rods, bait, "
                     "wind_from_deg, wind_speed_m_s, water_temperature_c, note, level_m, sky, who, "
                     "bait_lon, bait_lat, photograph, other_fields) "
                     "VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)");
    Statement runs(connection, insertRun);
    for (std::size_t i = first; i < end; ++i) {
        const logbook::Stay& stay = log[i];
        const logbook::Conditions& conditions = stay.conditions;
        const auto fid = static_cast<std::int64_t>(i) + 1;
        insert.run(fid, Blob(blobOf(stay.place)), stay.id.number(), keptTime(stay.start),
                   keptTime(stay.end), stay.rods, stay.bait,
                   kept(connection, "wind_from_deg",
                        numberOf(conditions.windFrom, &units::Bearing::inDegrees)),
                   kept(connection, "wind_speed_m_s",
                        numberOf(conditions.windSpeed, &units::Speed::inMetresPerSecond)),
                   kept(connection, "water_temperature_c",
                        numberOf(conditions.waterTemperature, &units::Temperature::inCelsius)),
                   stay.note,
                   kept(connection, "level_m",
                        numberOf(conditions.level, &units::WaterLevel::inMetresOnGauge)),
                   conditions.sky, stay.who, lonOf(stay.baitPlace), latOf(stay.baitPlace),
                   stay.photograph, keptFields(stay.others));
        keepRuns(connection, runs, stay, fid);
    }
}

void setExtents(Connection& connection, const logbook::KeptLog& log) {
    LonLatBox box;
    LonLatBox fishBox;
    for (const logbook::Stay& stay : log) {
        box.take(stay.place);
        if (!stay.runs.empty()) {
            fishBox.take(stay.place);
        }
    }
    setExtent(connection, "stays", box);
    setExtent(connection, "fish", fishBox);
}

/// False where another program numbered the rows anew.
bool areRowsNumberedTo(Connection& connection, std::size_t count) {
    Statement rows(connection, "SELECT count(*), coalesce(max(fid), 0), coalesce(min(fid), 1) "
                               "FROM stays");
    rows.ask();
    const auto wanted = static_cast<std::int64_t>(count);
    return rows.next() && rows.wholeNumber(0) == wanted && rows.wholeNumber(1) == wanted &&
           rows.wholeNumber(2) == 1;
}

} // namespace

void keepLog(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM stays; DELETE FROM fish");
    insertStays(connection, water.log, 0, water.log.size());
    setExtents(connection, water.log);
}

void keepLogChanges(Connection& connection, const water::Water& water,
                    const logbook::KeptLog& inFile) {
    if (!areRowsNumberedTo(connection, inFile.size())) {
        return keepLog(connection, water);
    }
    base::InCommon common = base::inCommon(inFile, water.log);
    if (water.log.size() != inFile.size()) {
        common.behind = 0; // rows are numbered by their place in the log
    }
    const std::size_t end = water.log.size() - common.behind;
    const auto from = static_cast<std::int64_t>(common.ahead);
    const auto to = static_cast<std::int64_t>(inFile.size() - common.behind);
    Statement(connection, "DELETE FROM fish WHERE stay_fid > ? AND stay_fid <= ?").run(from, to);
    Statement(connection, "DELETE FROM stays WHERE fid > ? AND fid <= ?").run(from, to);
    insertStays(connection, water.log, common.ahead, end);
    setExtents(connection, water.log);
}

void recallLog(Connection& connection, water::Water& water) {
    Statement runs(connection, selectRuns);
    runs.ask();
    bool hasRun = runs.next();
    Statement rows(connection, selectStays);
    rows.ask();
    logbook::Log log;
    const auto dropRun = [&] {
        if (connection.isFine()) {
            connection.failDamaged("the log holds a fish without a stay");
        }
        hasRun = runs.next();
    };
    while (rows.next()) {
        logbook::Stay stay = stayAt(connection, rows);
        const std::int64_t fid = rows.wholeNumber(0);
        const bool isWhole = connection.isRowWhole();
        while (hasRun && runs.wholeNumber(0) < fid) {
            dropRun();
        }
        while (hasRun && isWhole && runs.wholeNumber(0) == fid) {
            takeRow(connection, stay.runs, fishAt(connection, runs));
            hasRun = runs.next();
        }
        if (isWhole) {
            log.push_back(std::move(stay));
        }
    }
    water.log = std::move(log);
    while (hasRun) {
        dropRun();
    }
}

} // namespace store
