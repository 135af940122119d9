// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace store {

/// Cells along each side of a tile.
inline constexpr int tileSide = 256;
inline constexpr std::size_t tileSize = std::size_t{tileSide} * tileSide;

/// One tile of 32-bit floats as a plain TIFF 6.0 image in one strip, not packed, as the GeoPackage
/// extension for gridded coverages (17-066r1, table 13) wants it. \param values tileSize of them,
/// row by row from the north.
[[nodiscard]] std::vector<std::byte> tileImage(std::span<const float> values);

/// The values of such an image, to the last bit; nothing where the bytes are no image of ours.
[[nodiscard]] std::optional<std::vector<float>> valuesOfTile(std::span<const std::byte> image);

} // namespace store
