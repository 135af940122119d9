// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace support {

/// What a camera notes in a photograph; empty: nothing.
struct CameraNotes {
    std::string time;                   ///< "2026:10:03 09:12:30", by the camera's clock.
    std::string offset;                 ///< "+01:00".
    std::string gpsDate;                ///< "2026:10:03".
    std::vector<std::uint32_t> gpsTime; ///< Hours, minutes, seconds.
    bool hasPlace = false;              ///< 55 12 30 N, 3 6 0 W.
    bool hasSides = true;               ///< Whether it says north and west.
};

/// A grey pixel as JPEG with these notes as Exif. Source of the layout: CIPA DC-008 (Exif 2.32).
class MadeUpPhotograph {
public:
    explicit MadeUpPhotograph(const CameraNotes& notes) {
        std::vector<Entry> exif;
        addText(exif, 0x9003, notes.time);
        addText(exif, 0x9011, notes.offset);
        std::vector<Entry> gps;
        if (notes.hasPlace) {
            addText(gps, 1, notes.hasSides ? "N" : "");
            addNumbers(gps, 2, {55, 12, 30});
            addText(gps, 3, notes.hasSides ? "W" : "");
            addNumbers(gps, 4, {3, 6, 0});
        }
        addNumbers(gps, 7, notes.gpsTime);
        addText(gps, 0x1D, notes.gpsDate);
        // The first directory points to the two others, which follow it.
        std::string tiff("II*\0\x08\0\0\0", 8);
        constexpr std::uint32_t first = 8 + 2 + 2 * 12 + 4;
        const std::string exifText = directory(exif, first);
        const auto second = first + static_cast<std::uint32_t>(exifText.size());
        tiff += directory({{0x8769, 4, 1, word(first)}, {0x8825, 4, 1, word(second)}}, 8);
        tiff += exifText + directory(gps, second);
        const std::string payload = std::string("Exif\0\0", 6) + tiff;
        const auto length = payload.size() + 2;
        bytes_ = "\xFF\xD8\xFF\xE1";
        bytes_ += static_cast<char>(length >> 8U);
        bytes_ += static_cast<char>(length & 0xFFU);
        bytes_ += payload;
        for (const unsigned byte : picture) {
            bytes_ += static_cast<char>(byte);
        }
    }
    [[nodiscard]] const std::string& bytes() const { return bytes_; }

private:
    struct Entry {
        std::uint32_t tag;
        std::uint32_t type;
        std::uint32_t count;
        std::string value;
    };

    static std::string half(std::uint32_t value) {
        return {static_cast<char>(value & 0xFFU), static_cast<char>(value >> 8U & 0xFFU)};
    }
    static std::string word(std::uint32_t value) { return half(value) + half(value >> 16U); }

    static void addText(std::vector<Entry>& entries, std::uint32_t tag, const std::string& text) {
        if (!text.empty()) {
            const auto count = static_cast<std::uint32_t>(text.size()) + 1;
            entries.push_back({tag, 2, count, text + std::string(1, '\0')});
        }
    }
    static void addNumbers(std::vector<Entry>& entries, std::uint32_t tag,
                           const std::vector<std::uint32_t>& numbers) {
        std::string value;
        for (const std::uint32_t number : numbers) {
            value += word(number) + word(1);
        }
        if (!numbers.empty()) {
            entries.push_back({tag, 5, static_cast<std::uint32_t>(numbers.size()), value});
        }
    }
    /// Values of more than four bytes stand behind the directory.
    static std::string directory(const std::vector<Entry>& entries, std::uint32_t at) {
        std::string text = half(static_cast<std::uint32_t>(entries.size()));
        std::string behind;
        const auto end = at + 2 + 12 * static_cast<std::uint32_t>(entries.size()) + 4;
        for (const Entry& entry : entries) {
            text += half(entry.tag) + half(entry.type) + word(entry.count);
            std::string value = entry.value;
            if (value.size() <= 4) {
                value.resize(4, '\0');
                text += value;
            } else {
                text += word(end + static_cast<std::uint32_t>(behind.size()));
                behind += value;
            }
        }
        return text + word(0) + behind;
    }

    static constexpr std::array<unsigned, 157> picture{
        0xff, 0xe0, 0x00, 0x10, 0x4a, 0x46, 0x49, 0x46, 0x00, 0x01, 0x01, 0x00, 0x00, 0x01, 0x00,
        0x01, 0x00, 0x00, 0xff, 0xdb, 0x00, 0x43, 0x00, 0x03, 0x02, 0x02, 0x02, 0x02, 0x02, 0x03,
        0x02, 0x02, 0x02, 0x03, 0x03, 0x03, 0x03, 0x04, 0x06, 0x04, 0x04, 0x04, 0x04, 0x04, 0x08,
        0x06, 0x06, 0x05, 0x06, 0x09, 0x08, 0x0a, 0x0a, 0x09, 0x08, 0x09, 0x09, 0x0a, 0x0c, 0x0f,
        0x0c, 0x0a, 0x0b, 0x0e, 0x0b, 0x09, 0x09, 0x0d, 0x11, 0x0d, 0x0e, 0x0f, 0x10, 0x10, 0x11,
        0x10, 0x0a, 0x0c, 0x12, 0x13, 0x12, 0x10, 0x13, 0x0f, 0x10, 0x10, 0x10, 0xff, 0xc0, 0x00,
        0x0b, 0x08, 0x00, 0x01, 0x00, 0x01, 0x01, 0x01, 0x11, 0x00, 0xff, 0xc4, 0x00, 0x14, 0x00,
        0x01, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00,
        0x00, 0x03, 0xff, 0xc4, 0x00, 0x14, 0x10, 0x01, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00,
        0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0xff, 0xda, 0x00, 0x08, 0x01, 0x01,
        0x00, 0x00, 0x3f, 0x00, 0x27, 0xff, 0xd9};

    std::string bytes_;
};

} // namespace support
