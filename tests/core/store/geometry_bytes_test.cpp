// SPDX-License-Identifier: GPL-3.0-or-later
// Geometries byte by byte, as GeoPackage 1.3 (12-128r17, clause 2.1.3) and well-known binary (OGC
// 06-103r4, clause 8.2) lay them.
#include "core/store/geometry_blob.h"

#include <cstring>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace {

using geo::LonLat;
using store::GeometryBlob;

/// Puts bytes together as the standards say, the lowest byte first.
class Bytes {
public:
    template <class T>
    Bytes& put(T value) {
        const std::size_t at = bytes_.size();
        bytes_.resize(at + sizeof value);
        std::memcpy(bytes_.data() + at, &value, sizeof value);
        return *this;
    }
    Bytes& head(std::uint8_t flags) {
        return put('G').put('P').put<std::uint8_t>(0).put(flags).put<std::int32_t>(4326);
    }
    Bytes& box(double west, double east, double south, double north) {
        return put(west).put(east).put(south).put(north);
    }
    Bytes& kind(std::uint32_t type) { return put<std::uint8_t>(1).put(type); }
    Bytes& count(std::uint32_t count) { return put(count); }
    Bytes& places(std::initializer_list<LonLat> places) {
        for (const LonLat& place : places) {
            put(place.lon_deg).put(place.lat_deg);
        }
        return *this;
    }
    [[nodiscard]] GeometryBlob taken() const { return bytes_; }

private:
    GeometryBlob bytes_;
};

const geo::LonLatPiece lake{{{1.0, 2.0}, {5.0, 2.0}, {5.0, 7.0}},
                            {{{3.0, 3.0}, {4.0, 3.0}, {4.0, 4.0}}}};
const geo::LonLatPiece pond{{{-1.0, -2.0}, {0.5, -2.0}, {0.5, 0.25}}, {}};

Bytes& putLake(Bytes& bytes) {
    return bytes.kind(3)
        .count(2)
        .count(4)
        .places({{1.0, 2.0}, {5.0, 2.0}, {5.0, 7.0}, {1.0, 2.0}})
        .count(4)
        .places({{3.0, 3.0}, {4.0, 3.0}, {4.0, 4.0}, {3.0, 3.0}});
}

TEST(GeometryBytes, AreThoseOfTheStandards) {
    EXPECT_EQ(store::blobOf(LonLat{3.1, 55.2}),
              Bytes().head(0x01).kind(1).places({{3.1, 55.2}}).taken());
    const std::vector<LonLat> line{{3.0, 55.0}, {3.5, 54.0}};
    EXPECT_EQ(store::blobOf(std::span(line)), Bytes()
                                                  .head(0x03)
                                                  .box(3.0, 3.5, 54.0, 55.0)
                                                  .kind(2)
                                                  .count(2)
                                                  .places({{3.0, 55.0}, {3.5, 54.0}})
                                                  .taken());
    Bytes one;
    one.head(0x03).box(1.0, 5.0, 2.0, 7.0);
    EXPECT_EQ(store::blobOf(lake), putLake(one).taken());
    const std::vector<geo::LonLatPiece> both{lake, pond};
    Bytes two;
    two.head(0x03).box(-1.0, 5.0, -2.0, 7.0).kind(6).count(2);
    putLake(two).kind(3).count(1).count(4).places(
        {{-1.0, -2.0}, {0.5, -2.0}, {0.5, 0.25}, {-1.0, -2.0}});
    EXPECT_EQ(store::blobOf(std::span(both)), two.taken());
    const std::vector<geo::LonLatPiece> none;
    EXPECT_EQ(store::blobOf(std::span(none)), Bytes().head(0x11).kind(6).count(0).taken());
    EXPECT_EQ(store::blobOf(geo::LonLatPiece()), Bytes().head(0x11).kind(3).count(0).taken());
}

TEST(GeometryBytes, AreReadWithEveryEnvelopeThatTheStandardAllows) {
    // Kinds of envelope: none, xy, xyz, xym, xyzm; 5 to 7 are invalid.
    const int sizes[] = {0, 4, 6, 6, 8};
    for (std::uint8_t kind = 0; kind < 8; ++kind) {
        SCOPED_TRACE(int{kind});
        Bytes bytes;
        bytes.head(static_cast<std::uint8_t>(1U | (kind << 1U)));
        for (int i = 0; i < (kind < 5 ? sizes[kind] : 8); ++i) {
            bytes.put(0.0);
        }
        const GeometryBlob blob = bytes.kind(1).places({{3.1, 55.2}}).taken();
        EXPECT_EQ(store::pointFrom(blob),
                  kind < 5 ? std::optional(LonLat{3.1, 55.2}) : std::nullopt);
    }
}

TEST(GeometryBytes, OfAnythingElseAreRefused) {
    const GeometryBlob whole = store::blobOf(LonLat{3.1, 55.2});
    ASSERT_TRUE(store::pointFrom(whole));
    const auto with = [&](std::size_t at, int value) {
        GeometryBlob other = whole;
        other[at] = static_cast<std::byte>(value);
        return store::pointFrom(other);
    };
    EXPECT_FALSE(with(0, 'g'));
    EXPECT_FALSE(with(1, 'Q'));
    EXPECT_FALSE(with(2, 1)) << "a later version";
    EXPECT_FALSE(with(3, 0)) << "the highest byte first";
    EXPECT_FALSE(with(8, 0)) << "the highest byte first within";
    EXPECT_FALSE(with(9, 2)) << "a line";
    EXPECT_TRUE(with(4, 1)) << "whichever reference system";
    for (std::size_t size = 0; size < whole.size(); ++size) {
        EXPECT_FALSE(store::pointFrom(std::span(whole).first(size))) << size;
        EXPECT_FALSE(store::boxOf(std::span(whole).first(size))) << size;
    }
    GeometryBlob longer = whole;
    longer.push_back(std::byte{0});
    EXPECT_FALSE(store::pointFrom(longer));
    const std::vector<geo::LonLatPiece> both{lake, pond};
    GeometryBlob many = store::blobOf(std::span(both));
    for (std::size_t size = 0; size < many.size(); ++size) {
        EXPECT_FALSE(store::piecesFrom(std::span(many).first(size))) << size;
    }
    many[46] = std::byte{1}; // The first piece alone, and bytes behind it.
    EXPECT_FALSE(store::piecesFrom(many));
}

TEST(GeometryBytes, TellTheirBox) {
    const auto is = [](std::optional<store::LonLatBox> box, double west, double south, double east,
                       double north) {
        ASSERT_TRUE(box);
        EXPECT_EQ(box->west_deg, west);
        EXPECT_EQ(box->south_deg, south);
        EXPECT_EQ(box->east_deg, east);
        EXPECT_EQ(box->north_deg, north);
    };
    is(store::boxOf(store::blobOf(LonLat{3.1, 55.2})), 3.1, 55.2, 3.1, 55.2);
    is(store::boxOf(store::blobOf(lake)), 1.0, 2.0, 5.0, 7.0);
    const std::vector<geo::LonLatPiece> both{lake, pond};
    is(store::boxOf(store::blobOf(std::span(both))), -1.0, -2.0, 5.0, 7.0);
    const auto empty = store::boxOf(store::blobOf(geo::LonLatPiece()));
    ASSERT_TRUE(empty);
    EXPECT_TRUE(empty->isEmpty());
    // A line says its box only in its envelope.
    EXPECT_FALSE(store::boxOf(Bytes().head(0x01).kind(2).count(1).places({{3.1, 55.2}}).taken()));
}

TEST(GeometryBytes, BoxesGrowRoundIslandsToo) {
    store::LonLatBox box;
    EXPECT_TRUE(box.isEmpty());
    box.take(LonLat{3.0, 55.0});
    EXPECT_FALSE(box.isEmpty()) << "one place is a box";
    box = {};
    box.take(geo::LonLatPiece{{{1.0, 1.0}, {2.0, 1.0}, {2.0, 2.0}}, {{{0.0, 3.0}}, {{4.0, -1.0}}}});
    EXPECT_EQ(box.west_deg, 0.0);
    EXPECT_EQ(box.east_deg, 4.0);
    EXPECT_EQ(box.south_deg, -1.0);
    EXPECT_EQ(box.north_deg, 3.0);
}

} // namespace
