// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geometry_blob.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstring>

namespace store {

namespace {

static_assert(std::endian::native == std::endian::little, "numbers are copied as they lie");

constexpr std::int32_t wgs84 = 4326;
constexpr std::uint32_t wkbPoint = 1;
constexpr std::uint32_t wkbLine = 2;
constexpr std::uint32_t wkbPolygon = 3;
constexpr std::uint32_t wkbMultiPolygon = 6;
constexpr std::size_t headerSize = 8;
constexpr std::size_t envelopeSize = 32;

class Writer {
public:
    explicit Writer(std::size_t expected) { bytes_.reserve(expected); }

    template <class T>
    void put(T value) {
        const std::size_t at = bytes_.size();
        bytes_.resize(at + sizeof value);
        std::memcpy(bytes_.data() + at, &value, sizeof value);
    }
    void put(geo::LonLat place) {
        put(place.lon_deg);
        put(place.lat_deg);
    }
    void putHeader(const LonLatBox& box) {
        constexpr std::uint8_t littleEndian = 1;
        constexpr std::uint8_t withBox = 1U << 1U;
        constexpr std::uint8_t withoutContent = 1U << 4U;
        const auto flags =
            static_cast<std::uint8_t>(littleEndian | (box.isEmpty() ? withoutContent : withBox));
        put('G');
        put('P');
        put(std::uint8_t{0});
        put(flags);
        put(wgs84);
        if (!box.isEmpty()) {
            put(box.west_deg);
            put(box.east_deg);
            put(box.south_deg);
            put(box.north_deg);
        }
    }
    void putType(std::uint32_t type) {
        put(std::uint8_t{1});
        put(type);
    }
    void putCount(std::size_t count) { put(static_cast<std::uint32_t>(count)); }
    void putRing(const geo::LonLatRing& ring) {
        putCount(ring.empty() ? 0 : ring.size() + 1);
        for (const geo::LonLat& place : ring) {
            put(place);
        }
        if (!ring.empty()) {
            put(ring.front());
        }
    }
    void putPolygon(const geo::LonLatPiece& piece) {
        putType(wkbPolygon);
        putCount(piece.outer.empty() && piece.islands.empty() ? 0 : 1 + piece.islands.size());
        if (piece.outer.empty() && piece.islands.empty()) {
            return;
        }
        putRing(piece.outer);
        for (const geo::LonLatRing& island : piece.islands) {
            putRing(island);
        }
    }
    [[nodiscard]] GeometryBlob taken() { return std::move(bytes_); }

private:
    GeometryBlob bytes_;
};

class Reader {
public:
    explicit Reader(std::span<const std::byte> bytes) : bytes_(bytes) {}

    /// False where what follows is no geometry of GeoPackage.
    [[nodiscard]] bool takesHeader() {
        constexpr std::array<std::size_t, 5> envelopeSizes{0, 32, 48, 48, 64};
        if (take<char>() != 'G' || take<char>() != 'P' || take<std::uint8_t>() != 0) {
            return false;
        }
        const auto flags = take<std::uint8_t>();
        const std::size_t envelope = (flags >> 1U) & 7U;
        const bool isLittleEndian = (flags & 1U) != 0;
        if (!isLittleEndian || envelope >= envelopeSizes.size()) {
            return false;
        }
        take<std::int32_t>();
        skip(envelopeSizes[envelope]);
        return isFine_;
    }
    [[nodiscard]] bool takesType(std::uint32_t wanted) {
        return take<std::uint8_t>() == 1 && take<std::uint32_t>() == wanted && isFine_;
    }
    /// A count of things of at least `size` bytes each; fails where they cannot all be there.
    std::size_t takeCount(std::size_t size) {
        const std::size_t count = take<std::uint32_t>();
        if (count > left() / size) {
            isFine_ = false;
            return 0;
        }
        return count;
    }
    geo::LonLat takePlace() {
        const auto lon_deg = take<double>();
        return {lon_deg, take<double>()};
    }
    std::vector<geo::LonLat> takeLine() {
        const std::size_t count = takeCount(2 * sizeof(double));
        std::vector<geo::LonLat> line;
        line.reserve(count);
        for (std::size_t i = 0; i < count; ++i) {
            line.push_back(takePlace());
        }
        return line;
    }
    geo::LonLatRing takeRing() {
        geo::LonLatRing ring = takeLine();
        if (!ring.empty()) {
            ring.pop_back();
        }
        return ring;
    }
    geo::LonLatPiece takePolygon() {
        geo::LonLatPiece piece;
        isFine_ = takesType(wkbPolygon) && isFine_;
        const std::size_t rings = takeCount(sizeof(std::uint32_t));
        for (std::size_t i = 0; i < rings && isFine_; ++i) {
            if (i == 0) {
                piece.outer = takeRing();
            } else {
                piece.islands.push_back(takeRing());
            }
        }
        return piece;
    }
    /// True where everything was there and nothing is left.
    [[nodiscard]] bool isAtEnd() const { return isFine_ && left() == 0; }
    [[nodiscard]] bool isFine() const { return isFine_; }

private:
    template <class T>
    T take() {
        T value{};
        if (!isFine_ || left() < sizeof value) {
            isFine_ = false;
            return value;
        }
        std::memcpy(&value, bytes_.data() + at_, sizeof value);
        at_ += sizeof value;
        return value;
    }
    void skip(std::size_t count) {
        isFine_ = isFine_ && count <= left();
        at_ += isFine_ ? count : 0;
    }
    [[nodiscard]] std::size_t left() const { return bytes_.size() - at_; }

    std::span<const std::byte> bytes_;
    std::size_t at_ = 0;
    bool isFine_ = true;
};

std::size_t sizeOf(const geo::LonLatPiece& piece) {
    std::size_t size = 9 + 4 + 16 * (piece.outer.size() + 1);
    for (const geo::LonLatRing& island : piece.islands) {
        size += 4 + 16 * (island.size() + 1);
    }
    return size;
}

} // namespace

void LonLatBox::take(geo::LonLat place) {
    west_deg = std::min(west_deg, place.lon_deg);
    east_deg = std::max(east_deg, place.lon_deg);
    south_deg = std::min(south_deg, place.lat_deg);
    north_deg = std::max(north_deg, place.lat_deg);
}

void LonLatBox::take(std::span<const geo::LonLat> places) {
    for (const geo::LonLat& place : places) {
        take(place);
    }
}

void LonLatBox::take(const geo::LonLatPiece& piece) {
    take(std::span(piece.outer));
    for (const geo::LonLatRing& island : piece.islands) {
        take(std::span(island));
    }
}

void LonLatBox::take(std::span<const geo::LonLatPiece> pieces) {
    for (const geo::LonLatPiece& piece : pieces) {
        take(piece);
    }
}

GeometryBlob blobOf(geo::LonLat point) {
    const PointBlob bytes = pointBlobOf(point);
    return {bytes.begin(), bytes.end()};
}

PointBlob pointBlobOf(geo::LonLat point) {
    // magic, version 0, flags (little endian, no envelope), EPSG 4326; WKB little endian, point
    PointBlob bytes{std::byte{'G'}, std::byte{'P'}, std::byte{0}, std::byte{1}};
    std::memcpy(bytes.data() + 4, &wgs84, sizeof wgs84);
    bytes[headerSize] = std::byte{1};
    std::memcpy(bytes.data() + headerSize + 1, &wkbPoint, sizeof wkbPoint);
    std::memcpy(bytes.data() + headerSize + 5, &point.lon_deg, sizeof point.lon_deg);
    std::memcpy(bytes.data() + headerSize + 13, &point.lat_deg, sizeof point.lat_deg);
    return bytes;
}

GeometryBlob blobOf(std::span<const geo::LonLat> line) {
    LonLatBox box;
    box.take(line);
    Writer writer(headerSize + envelopeSize + 9 + 16 * line.size());
    writer.putHeader(box);
    writer.putType(wkbLine);
    writer.putCount(line.size());
    for (const geo::LonLat& place : line) {
        writer.put(place);
    }
    return writer.taken();
}

GeometryBlob blobOf(const geo::LonLatPiece& piece) {
    LonLatBox box;
    box.take(piece);
    Writer writer(headerSize + envelopeSize + sizeOf(piece));
    writer.putHeader(box);
    writer.putPolygon(piece);
    return writer.taken();
}

GeometryBlob blobOf(std::span<const geo::LonLatPiece> pieces) {
    LonLatBox box;
    box.take(pieces);
    std::size_t size = headerSize + envelopeSize + 9;
    for (const geo::LonLatPiece& piece : pieces) {
        size += sizeOf(piece);
    }
    Writer writer(size);
    writer.putHeader(box);
    writer.putType(wkbMultiPolygon);
    writer.putCount(pieces.size());
    for (const geo::LonLatPiece& piece : pieces) {
        writer.putPolygon(piece);
    }
    return writer.taken();
}

std::optional<geo::LonLat> pointFrom(std::span<const std::byte> blob) {
    Reader reader(blob);
    if (!reader.takesHeader() || !reader.takesType(wkbPoint)) {
        return std::nullopt;
    }
    const geo::LonLat place = reader.takePlace();
    return reader.isAtEnd() ? std::optional(place) : std::nullopt;
}

std::optional<std::vector<geo::LonLat>> lineFrom(std::span<const std::byte> blob) {
    Reader reader(blob);
    if (!reader.takesHeader() || !reader.takesType(wkbLine)) {
        return std::nullopt;
    }
    std::vector<geo::LonLat> line = reader.takeLine();
    return reader.isAtEnd() ? std::optional(std::move(line)) : std::nullopt;
}

std::optional<geo::LonLatPiece> pieceFrom(std::span<const std::byte> blob) {
    Reader reader(blob);
    if (!reader.takesHeader()) {
        return std::nullopt;
    }
    geo::LonLatPiece piece = reader.takePolygon();
    return reader.isAtEnd() ? std::optional(std::move(piece)) : std::nullopt;
}

std::optional<std::vector<geo::LonLatPiece>> piecesFrom(std::span<const std::byte> blob) {
    Reader reader(blob);
    if (!reader.takesHeader() || !reader.takesType(wkbMultiPolygon)) {
        return std::nullopt;
    }
    const std::size_t count = reader.takeCount(9);
    std::vector<geo::LonLatPiece> pieces;
    for (std::size_t i = 0; i < count && reader.isFine(); ++i) {
        pieces.push_back(reader.takePolygon());
    }
    return reader.isAtEnd() ? std::optional(std::move(pieces)) : std::nullopt;
}

std::optional<LonLatBox> boxOf(std::span<const std::byte> blob) {
    if (blob.size() < headerSize || !Reader(blob).takesHeader()) {
        return std::nullopt;
    }
    const auto flags = std::to_integer<unsigned>(blob[3]);
    LonLatBox box;
    if ((flags & 0x10U) != 0) {
        return box;
    }
    if ((flags & 0x0eU) == 0) {
        const auto point = pointFrom(blob);
        if (point) {
            box.take(*point);
        }
        return point ? std::optional(box) : std::nullopt;
    }
    std::array<double, 4> envelope{};
    std::memcpy(envelope.data(), blob.data() + headerSize, sizeof envelope);
    return LonLatBox{envelope[0], envelope[2], envelope[1], envelope[3]};
}

} // namespace store
