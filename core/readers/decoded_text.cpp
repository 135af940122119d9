// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/decoded_text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <string_view>

namespace readers {

namespace {

constexpr std::uint32_t unreadable = 0xFFFD;

void append(std::string& text, std::uint32_t point) {
    const auto put = [&](std::uint32_t byte) { text.push_back(static_cast<char>(byte)); };
    const auto putTail = [&](std::uint32_t shift) { put(0x80U | ((point >> shift) & 0x3FU)); };
    if (point < 0x80U) {
        put(point);
    } else if (point < 0x800U) {
        put(0xC0U | (point >> 6U));
        putTail(0);
    } else if (point < 0x10000U) {
        put(0xE0U | (point >> 12U));
        putTail(6);
        putTail(0);
    } else {
        put(0xF0U | (point >> 18U));
        putTail(12);
        putTail(6);
        putTail(0);
    }
}

/// How many bytes follow the first one of a character; nothing good: more than three.
int bytesBehind(unsigned char first) {
    if (first < 0x80U) {
        return 0;
    }
    if (first >= 0xC2U && first < 0xE0U) {
        return 1;
    }
    if (first >= 0xE0U && first < 0xF0U) {
        return 2;
    }
    return first >= 0xF0U && first < 0xF5U ? 3 : 4;
}

/// A file cut within its last character is still UTF-8.
bool isUtf8(std::string_view text) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const int behind = bytesBehind(static_cast<unsigned char>(text[i]));
        if (behind > 3) {
            return false;
        }
        for (int k = 0; k < behind && i + 1 < text.size(); ++k) {
            ++i;
            if ((static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80U) {
                return false;
            }
        }
    }
    return true;
}

/// Source: the code page 1252 of the WHATWG Encoding Standard; from memory.
std::string ofWindows(std::string_view bytes) {
    static constexpr std::array<std::uint16_t, 32> special{
        0x20AC, 0x0081, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
        0x2039, 0x0152, 0x008D, 0x017D, 0x008F, 0x0090, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
        0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x009D, 0x017E, 0x0178};
    std::string text;
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        append(text, byte >= 0x80U && byte < 0xA0U ? special[byte - 0x80U] : byte);
    }
    return text;
}

std::string ofUtf16(std::string_view bytes, std::size_t low) {
    const auto unitAt = [&](std::size_t i) {
        return static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[i + low])) |
               static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[i + 1 - low])) << 8U;
    };
    std::string text;
    for (std::size_t i = 0; i + 1 < bytes.size(); i += 2) {
        const std::uint32_t unit = unitAt(i);
        const bool isHigh = unit >= 0xD800U && unit < 0xDC00U;
        const std::uint32_t next = isHigh && i + 3 < bytes.size() ? unitAt(i + 2) : 0;
        if (isHigh && next >= 0xDC00U && next < 0xE000U) {
            append(text, 0x10000U + ((unit - 0xD800U) << 10U) + (next - 0xDC00U));
            i += 2;
        } else {
            append(text, unit >= 0xD800U && unit < 0xE000U ? unreadable : unit);
        }
    }
    return text;
}

/// Every second byte of a table in UTF-16 is zero; no other text holds zeros. 2: neither.
std::size_t lowByteWithoutMark(std::string_view bytes) {
    constexpr std::size_t enough = 512;
    std::array<std::size_t, 2> zeros{};
    const std::size_t size = std::min(bytes.size(), enough) / 2 * 2;
    for (std::size_t i = 0; i < size; ++i) {
        zeros[i % 2] += bytes[i] == '\0' ? 1U : 0U;
    }
    const auto isFull = [&](std::size_t count) { return size >= 4 && count * 20 >= size * 17; };
    const auto half = [&](std::size_t which) {
        return isFull(2 * zeros[which]) && zeros[1 - which] == 0;
    };
    return half(1) ? 0 : (half(0) ? 1 : 2);
}

} // namespace

DecodedText decodedText(std::string bytes) {
    const std::string_view all = bytes;
    if (all.starts_with("\xEF\xBB\xBF")) {
        bytes.erase(0, 3);
    } else if (all.starts_with("\xFF\xFE") || all.starts_with("\xFE\xFF")) {
        return {ofUtf16(all.substr(2), all[0] == '\xFF' ? 0 : 1), TextEncoding::utf16};
    } else if (const std::size_t low = lowByteWithoutMark(all); low < 2) {
        return {ofUtf16(all, low), TextEncoding::utf16};
    }
    if (!isUtf8(bytes)) {
        return {ofWindows(bytes), TextEncoding::windows1252};
    }
    return {std::move(bytes), TextEncoding::utf8};
}

} // namespace readers
