// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"
#include "core/store/key_values.h"

#include <fmt/format.h>

namespace store {

namespace {

// A day of the year is kept as month * 100 + day: 1001 is the first of October.
std::int64_t numberOf(std::chrono::month_day day) {
    return static_cast<std::int64_t>(static_cast<unsigned>(day.month()) * 100U +
                                     static_cast<unsigned>(day.day()));
}

std::chrono::month_day dayOfYear(std::int64_t number) {
    return {std::chrono::month(static_cast<unsigned>(number / 100)),
            std::chrono::day(static_cast<unsigned>(number % 100))};
}

constexpr std::string_view notePrefix = "note_";

std::string noteKey(std::size_t number) {
    return fmt::format("{}{:04}", notePrefix, number);
}

} // namespace

void keepHouseRules(Connection& connection, const water::Water& water) {
    const logbook::HouseRules& rules = water.houseRules;
    KeyValues values;
    if (rules.rodLimit) {
        values.put("rod_limit", static_cast<std::int64_t>(*rules.rodLimit));
    }
    if (rules.season) {
        values.put("season_first_month_day", numberOf(rules.season->first));
        values.put("season_last_month_day", numberOf(rules.season->last));
    }
    for (std::size_t i = 0; i < rules.notes.size(); ++i) {
        values.put(noteKey(i + 1), rules.notes[i]);
    }
    values.save(connection, "house_rules");

    connection.execute("DELETE FROM closed_water");
    Statement insert(connection, "INSERT INTO closed_water (geom, name) VALUES (?,?)");
    LonLatBox box;
    for (const logbook::ClosedWater& closed : rules.closed) {
        box.take(std::span(closed.pieces));
        insert.run(Blob(blobOf(std::span(closed.pieces))), closed.name);
    }
    setExtent(connection, "closed_water", box);
}

void recallHouseRules(Connection& connection, water::Water& water) {
    logbook::HouseRules& rules = water.houseRules;
    KeyValues values = KeyValues::load(connection, "house_rules");
    if (const auto limit = values.wholeNumber("rod_limit")) {
        rules.rodLimit = static_cast<int>(*limit);
    }
    const auto first = values.wholeNumber("season_first_month_day");
    const auto last = values.wholeNumber("season_last_month_day");
    if (first && last) {
        rules.season = logbook::Season{dayOfYear(*first), dayOfYear(*last)};
    }
    rules.notes = values.textsFrom(notePrefix);
    Statement rows(connection, "SELECT geom, name FROM closed_water ORDER BY fid");
    rows.ask();
    while (rows.next()) {
        takeRow(connection, rules.closed, {rows.text(1), piecesAt(connection, rows, 0)});
    }
}

} // namespace store
