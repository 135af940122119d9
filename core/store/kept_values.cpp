// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kept_values.h"

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <limits>

#include <fmt/format.h>

namespace store {

KeptTime::KeptTime(units::Moment moment) {
    const auto midnight = std::chrono::floor<std::chrono::days>(moment);
    const std::chrono::year_month_day day(midnight);
    const std::chrono::hh_mm_ss time(moment - midnight);
    char* to = text_.data();
    const auto put = [&to](std::int64_t number, int digits, char after) {
        for (int k = digits - 1; k >= 0; --k) {
            to[k] = static_cast<char>('0' + number % 10);
            number /= 10;
        }
        to[digits] = after;
        to += digits + 1;
    };
    put(static_cast<int>(day.year()), 4, '-');
    put(static_cast<unsigned>(day.month()), 2, '-');
    put(static_cast<unsigned>(day.day()), 2, 'T');
    put(time.hours().count(), 2, ':');
    put(time.minutes().count(), 2, ':');
    put(time.seconds().count(), 2, '.');
    put(time.subseconds().count(), 3, 'Z');
}

units::Moment momentAt(Connection& connection, Statement& rows, int column) {
    const std::string text = rows.text(column);
    const auto moment = units::momentFrom(text, units::Clock());
    if (!moment) {
        connection.failDamaged(fmt::format("'{}' is no time", text));
    }
    return moment.value_or(units::Moment());
}

namespace {

template <class T>
T geometryAt(Connection& connection, Statement& rows, int column,
             std::optional<T> (*read)(std::span<const std::byte>)) {
    std::optional<T> geometry = read(rows.blob(column));
    if (!geometry) {
        connection.failDamaged("a geometry cannot be read");
    }
    return std::move(geometry).value_or(T());
}

} // namespace

geo::LonLat onEarth(Connection& connection, geo::LonLat place) {
    if (!geo::isOnEarth(place)) { // NaN is nowhere
        connection.failDamaged(
            fmt::format("a place of {:g}, {:g} is not on the Earth", place.lon_deg, place.lat_deg));
        return {};
    }
    return place;
}

namespace {

void checkOnEarth(Connection& connection, const geo::LonLatPiece& piece) {
    const auto check = [&](const geo::LonLatRing& ring) {
        std::ranges::for_each(
            ring, [&](geo::LonLat place) { static_cast<void>(onEarth(connection, place)); });
    };
    check(piece.outer);
    std::ranges::for_each(piece.islands, check);
}

} // namespace

geo::LonLat placeAt(Connection& connection, Statement& rows, int column) {
    return onEarth(connection, geometryAt(connection, rows, column, pointFrom));
}

std::vector<geo::LonLat> lineAt(Connection& connection, Statement& rows, int column) {
    std::vector<geo::LonLat> line = geometryAt(connection, rows, column, lineFrom);
    std::ranges::for_each(
        line, [&](geo::LonLat place) { static_cast<void>(onEarth(connection, place)); });
    return line;
}

geo::LonLatPiece pieceAt(Connection& connection, Statement& rows, int column) {
    geo::LonLatPiece piece = geometryAt(connection, rows, column, pieceFrom);
    checkOnEarth(connection, piece);
    return piece;
}

std::vector<geo::LonLatPiece> piecesAt(Connection& connection, Statement& rows, int column) {
    auto pieces = geometryAt(connection, rows, column, piecesFrom);
    std::ranges::for_each(pieces,
                          [&](const geo::LonLatPiece& piece) { checkOnEarth(connection, piece); });
    return pieces;
}

int intAt(Connection& connection, Statement& rows, int column) {
    const std::int64_t number = rows.wholeNumber(column);
    static_cast<void>(rows.number(column)); // in its range
    if (number < std::numeric_limits<int>::min() || number > std::numeric_limits<int>::max()) {
        connection.failDamaged(fmt::format("{} is too great a number", number));
        return 0;
    }
    return static_cast<int>(number);
}

std::size_t positionAt(Connection& connection, Statement& rows, int column) {
    const std::int64_t number = rows.wholeNumber(column);
    if (number < 0) {
        connection.failDamaged(fmt::format("{} is no position", number));
        return 0;
    }
    return static_cast<std::size_t>(number);
}

} // namespace store
