// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/tile_image.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <cstring>

namespace store {

namespace {

static_assert(std::endian::native == std::endian::little, "numbers are copied as they lie");

constexpr std::size_t directoryAt = 8;
constexpr std::size_t fieldCount = 10;
constexpr std::size_t valuesAt = 136; ///< Behind the directory, on a multiple of four.
static_assert(directoryAt + 2 + fieldCount * 12 + 4 <= valuesAt);

struct Field {
    std::uint16_t tag;
    std::uint16_t type; ///< 3: 16 bit, 4: 32 bit.
    std::uint32_t count;
    std::uint32_t value;
};
static_assert(sizeof(Field) == 12);

constexpr std::array<Field, fieldCount> fields{{
    {256, 3, 1, tileSide},                 // ImageWidth
    {257, 3, 1, tileSide},                 // ImageLength
    {258, 3, 1, 32},                       // BitsPerSample
    {259, 3, 1, 1},                        // Compression: none
    {262, 3, 1, 1},                        // PhotometricInterpretation: black is zero
    {273, 4, 1, valuesAt},                 // StripOffsets
    {277, 3, 1, 1},                        // SamplesPerPixel
    {278, 3, 1, tileSide},                 // RowsPerStrip
    {279, 4, 1, tileSize * sizeof(float)}, // StripByteCounts
    {339, 3, 1, 3},                        // SampleFormat: IEEE floating point
}};

std::array<std::byte, valuesAt> header() {
    std::array<std::byte, valuesAt> bytes{};
    const std::array<char, 4> magic{'I', 'I', '*', '\0'};
    const std::uint32_t directory = directoryAt;
    const std::uint16_t count = fieldCount;
    std::memcpy(bytes.data(), magic.data(), magic.size());
    std::memcpy(bytes.data() + 4, &directory, sizeof directory);
    std::memcpy(bytes.data() + directoryAt, &count, sizeof count);
    std::memcpy(bytes.data() + directoryAt + 2, fields.data(), sizeof fields);
    return bytes;
}

} // namespace

std::vector<std::byte> tileImage(std::span<const float> values) {
    const auto head = header();
    std::vector<std::byte> image(valuesAt + tileSize * sizeof(float));
    std::ranges::copy(head, image.begin());
    std::memcpy(image.data() + valuesAt, values.data(),
                std::min(values.size(), tileSize) * sizeof(float));
    return image;
}

std::optional<std::vector<float>> valuesOfTile(std::span<const std::byte> image) {
    const auto head = header();
    if (image.size() != valuesAt + tileSize * sizeof(float) ||
        !std::ranges::equal(head, image.first(valuesAt))) {
        return std::nullopt;
    }
    std::vector<float> values(tileSize);
    std::memcpy(values.data(), image.data() + valuesAt, tileSize * sizeof(float));
    return values;
}

} // namespace store
