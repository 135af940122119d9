// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/geometry_blob.h"
#include "core/store/ranges.h"
#include "core/store/statement.h"
#include "core/units/moment.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace store {

/// A moment as GeoPackage's DATETIME, "2026-09-05T08:11:00.000Z", on the stack: there are millions
/// of soundings. Years 0 to 9999.
class KeptTime {
public:
    explicit KeptTime(units::Moment moment);
    [[nodiscard]] std::string_view text() const { return {text_.data(), text_.size()}; }

private:
    std::array<char, 24> text_{};
};

[[nodiscard]] inline std::string keptTime(units::Moment moment) {
    return std::string(KeptTime(moment).text());
}

/// Columns of the present row of `rows` as values; what is none damages the connection and gives
/// the default.
[[nodiscard]] geo::LonLat onEarth(Connection& connection, geo::LonLat place);
[[nodiscard]] units::Moment momentAt(Connection& connection, Statement& rows, int column);
[[nodiscard]] geo::LonLat placeAt(Connection& connection, Statement& rows, int column);
[[nodiscard]] std::vector<geo::LonLat> lineAt(Connection& connection, Statement& rows, int column);
[[nodiscard]] geo::LonLatPiece pieceAt(Connection& connection, Statement& rows, int column);
[[nodiscard]] std::vector<geo::LonLatPiece> piecesAt(Connection& connection, Statement& rows,
                                                     int column);
/// Whole numbers that must fit their type.
[[nodiscard]] int intAt(Connection& connection, Statement& rows, int column);
[[nodiscard]] std::size_t positionAt(Connection& connection, Statement& rows, int column);

} // namespace store
