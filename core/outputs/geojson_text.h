// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"
#include "core/geo/outline.h"
#include "core/geo/water_frame.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace outputs {

/// The properties of one feature, in the order in which they are given.
class Properties {
public:
    Properties& with(std::string_view name, std::string_view text);
    Properties& with(std::string_view name, double number, int places);
    /// Null where there is none.
    Properties& with(std::string_view name, std::optional<double> number, int places);
    /// A name of its own, because a literal would be taken for a truth.
    Properties& withTruth(std::string_view name, bool isSo);
    [[nodiscard]] std::string text() const { return "{" + inside_ + "}"; }

private:
    void add(std::string_view name, std::string_view value);
    std::string inside_;
};

/// The text of a GeoJSON feature collection (RFC 7946), one feature a line.
class FeatureCollection {
public:
    /// Pieces without a ring of at least three places, seen to 1e-7 degree, are left out, and a
    /// feature that has no other.
    void addPieces(std::span<const geo::LonLatPiece> pieces, const Properties& properties);
    void addPieces(const std::vector<geo::Piece>& pieces, const geo::WaterFrame& frame,
                   const Properties& properties);
    /// A line of at least two places.
    void addLine(std::span<const geo::LonLat> line, const Properties& properties);
    [[nodiscard]] std::string text() const;

private:
    void add(std::string_view geometry, const Properties& properties);
    std::string features_;
};

} // namespace outputs
