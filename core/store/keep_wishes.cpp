// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"

#include <algorithm>

namespace store {

namespace {

void keepBanned(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM banned_water");
    Statement insert(connection, "INSERT INTO banned_water (geom, name) VALUES (?,?)");
    LonLatBox box;
    for (const water::BannedWater& banned : water.banned) {
        box.take(std::span(banned.ring));
        insert.run(Blob(blobOf(geo::LonLatPiece{banned.ring, {}})), banned.name);
    }
    setExtent(connection, "banned_water", box);
}

void keepProfiles(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM belief_profiles");
    Statement insert(connection, "INSERT INTO belief_profiles (number, name, factor, weight) "
                                 "VALUES (?,?,?,?)");
    std::int64_t number = 0;
    for (const water::BeliefProfile& profile : water.beliefProfiles) {
        ++number;
        for (const marks::FactorKind kind : marks::allFactorKinds) {
            insert.run(number, profile.name, marks::nameOf(kind), profile.weights.of(kind));
        }
    }
    setChanged(connection, "belief_profiles");
}

void keepDayByHand(Connection& connection, const water::DayByHand& day) {
    connection.execute("DELETE FROM day_by_hand");
    Statement insert(connection, "INSERT INTO day_by_hand (geom, turn, stay_s) VALUES (?,?,?)");
    LonLatBox box;
    box.take(std::span(day.order));
    std::int64_t turn = 0;
    for (const geo::LonLat& place : day.order) {
        insert.run(Blob(blobOf(place)), ++turn, std::nullopt);
    }
    for (const water::DayByHand::Stay& stay : day.stays) {
        box.take(stay.place);
        insert.run(Blob(blobOf(stay.place)), std::nullopt, stay.length.count());
    }
    setExtent(connection, "day_by_hand", box);
}

/// Anchors and baits that the user laid, each with the place among the pinned marks of its own.
void keepLaid(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM laid_by_hand");
    Statement insert(connection,
                     "INSERT INTO laid_by_hand (geom, mark, part, wind_from_deg) VALUES (?,?,?,?)");
    LonLatBox box;
    std::int64_t mark = 0;
    for (const water::PinnedMark& pinned : water.pinnedMarks) {
        ++mark;
        const auto keep = [&](geo::LonLat place, std::string_view part) {
            const auto& wind = pinned.laid.windFrom;
            box.take(place);
            insert.run(Blob(blobOf(place)), mark, part,
                       wind ? std::optional(wind->inDegrees()) : std::nullopt);
        };
        if (pinned.laid.bow) {
            keep(*pinned.laid.bow, "bow");
        }
        if (pinned.laid.stern) {
            keep(*pinned.laid.stern, "stern");
        }
        for (const geo::LonLat bait : pinned.laid.baits) {
            keep(bait, "bait");
        }
    }
    setExtent(connection, "laid_by_hand", box);
}

void recallLaid(Connection& connection, water::Water& water) {
    Statement rows(connection,
                   "SELECT geom, mark, part, wind_from_deg FROM laid_by_hand ORDER BY fid");
    rows.ask();
    while (rows.next()) {
        const std::int64_t mark = rows.wholeNumber(1);
        const std::string part = rows.text(2);
        if (mark < 1 || mark > static_cast<std::int64_t>(water.pinnedMarks.size())) {
            connection.failDamaged("what was laid by hand belongs to no mark");
            continue;
        }
        water::LaidByHand& laid = water.pinnedMarks[static_cast<std::size_t>(mark - 1)].laid;
        const geo::LonLat place = placeAt(connection, rows, 0);
        if (!connection.isRowWhole()) {
            continue;
        }
        if (part == "bow") {
            laid.bow = place;
        } else if (part == "stern") {
            laid.stern = place;
        } else if (part == "bait") {
            laid.baits.push_back(place);
        } else {
            connection.failDamaged("nothing of a mark is called '" + part + "'");
        }
        if (!rows.isEmpty(3)) {
            laid.windFrom = units::Bearing::degrees(rows.number(3));
        }
    }
}

void recallProfiles(Connection& connection, water::Water& water) {
    Statement rows(connection,
                   "SELECT number, name, factor, weight FROM belief_profiles ORDER BY number, id");
    rows.ask();
    std::int64_t number = 0;
    while (rows.next()) {
        const std::string factor = rows.text(2);
        const auto kind = marks::factorNamed(factor);
        if (!kind) {
            connection.failDamaged("there is no belief named '" + factor + "'");
            continue;
        }
        if (water.beliefProfiles.empty() || rows.wholeNumber(0) != number) {
            number = rows.wholeNumber(0);
            water.beliefProfiles.push_back({rows.text(1), {}});
        }
        const double weight = rows.number(3);
        if (connection.isRowWhole()) {
            water.beliefProfiles.back().weights.set(*kind, weight);
        }
    }
}

void recallDayByHand(Connection& connection, water::DayByHand& day) {
    Statement rows(connection, "SELECT geom, turn, stay_s FROM day_by_hand ORDER BY turn, fid");
    rows.ask();
    while (rows.next()) {
        const geo::LonLat place = placeAt(connection, rows, 0);
        if (!connection.isRowWhole()) {
            continue;
        }
        if (!rows.isEmpty(1)) {
            day.order.push_back(place);
        }
        if (!rows.isEmpty(2)) {
            day.stays.push_back({place, std::chrono::seconds(std::clamp<std::int64_t>(
                                            rows.wholeNumber(2), 300, 43'200))});
        }
    }
}

} // namespace

void keepWishes(Connection& connection, const water::Water& water) {
    keepBanned(connection, water);
    keepProfiles(connection, water);
    keepDayByHand(connection, water.dayByHand);
    keepLaid(connection, water);
}

void recallWishes(Connection& connection, water::Water& water) {
    Statement rows(connection, "SELECT geom, name FROM banned_water ORDER BY fid");
    rows.ask();
    while (rows.next()) {
        takeRow(connection, water.banned, {rows.text(1), pieceAt(connection, rows, 0).outer});
    }
    recallProfiles(connection, water);
    recallDayByHand(connection, water.dayByHand);
    recallLaid(connection, water);
}

} // namespace store
