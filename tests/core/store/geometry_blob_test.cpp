// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geometry_blob.h"

#include <array>
#include <cstring>

#include <gtest/gtest.h>

namespace {

const geo::LonLatPiece square{{{0.1, 0.2}, {1.3, 0.2}, {1.3, 1.7}, {0.1, 1.7}},
                              {{{0.5, 0.5}, {0.5, 0.6}, {0.6, 0.6}}}};

TEST(GeometryBlob, GivesBackAPlaceToTheLastBit) {
    const geo::LonLat place{-0.1 + 0.2, 1.0 / 3.0};
    EXPECT_EQ(store::pointFrom(store::blobOf(place)), place);
}

TEST(GeometryBlob, GivesBackAPieceWithItsIslands) {
    EXPECT_EQ(store::pieceFrom(store::blobOf(square)), square);
    EXPECT_EQ(store::lineFrom(store::blobOf(std::span(square.outer))), square.outer);
    const std::vector<geo::LonLatPiece> two{square, {square.outer, {}}};
    EXPECT_EQ(store::piecesFrom(store::blobOf(std::span(two))), two);
    const std::vector<geo::LonLatPiece> none;
    EXPECT_EQ(store::piecesFrom(store::blobOf(std::span(none))), none);
}

TEST(GeometryBlob, WritesTheBoxRoundAPiece) {
    const store::GeometryBlob blob = store::blobOf(square);
    ASSERT_GT(blob.size(), 40U);
    EXPECT_EQ(static_cast<int>(blob[3]), 0b0000'0011); // xy envelope, little-endian
    std::array<double, 4> box{};
    std::memcpy(box.data(), blob.data() + 8, sizeof box);
    EXPECT_EQ(box, (std::array{0.1, 1.3, 0.2, 1.7})); // west, east, south, north
}

TEST(GeometryBlob, RefusesEveryBlobThatIsCutOff) {
    const store::GeometryBlob whole = store::blobOf(square);
    for (std::size_t size = 0; size < whole.size(); ++size) {
        EXPECT_FALSE(store::pieceFrom(std::span(whole).first(size)).has_value()) << size;
    }
    store::GeometryBlob longer = whole;
    longer.push_back(std::byte{0});
    EXPECT_FALSE(store::pieceFrom(longer).has_value());
}

TEST(GeometryBlob, RefusesAnotherKindOfGeometry) {
    EXPECT_FALSE(store::pointFrom(store::blobOf(square)).has_value());
    EXPECT_FALSE(store::pieceFrom(store::blobOf(geo::LonLat{1.0, 2.0})).has_value());
    EXPECT_FALSE(store::piecesFrom(store::blobOf(square)).has_value());
}

TEST(GeometryBlob, RefusesACountThatCannotBe) {
    store::GeometryBlob blob = store::blobOf(square);
    // The count of rings lies behind head (8), envelope (32), byte order (1) and type (4).
    blob[45] = blob[46] = blob[47] = blob[48] = std::byte{0xff};
    EXPECT_FALSE(store::pieceFrom(blob).has_value());
}

} // namespace
