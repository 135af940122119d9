// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/lon_lat.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace store {

/// Geometries as GeoPackage 1.3 keeps them (clause 2.1.3): "GP", version, flags, reference system,
/// envelope (none for points), then ISO well-known binary, all little-endian; longitude first.
/// Coordinates come back to the last bit.
using GeometryBlob = std::vector<std::byte>;

[[nodiscard]] GeometryBlob blobOf(geo::LonLat point);
/// The same on the stack: there are millions of soundings.
using PointBlob = std::array<std::byte, 29>;
[[nodiscard]] PointBlob pointBlobOf(geo::LonLat point);
/// An open line.
[[nodiscard]] GeometryBlob blobOf(std::span<const geo::LonLat> line);
/// One piece as a polygon; rings are closed on the way out and opened on the way in.
[[nodiscard]] GeometryBlob blobOf(const geo::LonLatPiece& piece);
/// Several pieces as one multi-polygon.
[[nodiscard]] GeometryBlob blobOf(std::span<const geo::LonLatPiece> pieces);

/// Nothing where the bytes are no such geometry, are cut off or go on behind it.
[[nodiscard]] std::optional<geo::LonLat> pointFrom(std::span<const std::byte> blob);
[[nodiscard]] std::optional<std::vector<geo::LonLat>> lineFrom(std::span<const std::byte> blob);
[[nodiscard]] std::optional<geo::LonLatPiece> pieceFrom(std::span<const std::byte> blob);
[[nodiscard]] std::optional<std::vector<geo::LonLatPiece>>
piecesFrom(std::span<const std::byte> blob);

/// Box round places, for envelopes and layer extents; empty until something is put in.
struct LonLatBox {
    double west_deg = 180.0;
    double south_deg = 90.0;
    double east_deg = -180.0;
    double north_deg = -90.0;

    void take(geo::LonLat place);
    void take(std::span<const geo::LonLat> places);
    void take(const geo::LonLatPiece& piece);
    void take(std::span<const geo::LonLatPiece> pieces);
    [[nodiscard]] bool isEmpty() const { return west_deg > east_deg || south_deg > north_deg; }
};

/// The box round a geometry: its envelope, or the place where it is a point; empty for an empty
/// geometry, nothing where the bytes are no geometry that says.
[[nodiscard]] std::optional<LonLatBox> boxOf(std::span<const std::byte> blob);

} // namespace store
