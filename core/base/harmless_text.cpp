// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/harmless_text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace base {

namespace {

constexpr std::string_view noCharacter = "\xEF\xBF\xBD"; // U+FFFD

bool isPlain(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return (byte >= 0x20 && byte < 0x7f) || c == '\n' || c == '\r' || c == '\t';
}

/// One character of UTF-8 (RFC 3629) and its length; a length of 0 where the bytes are none.
std::pair<std::uint32_t, std::size_t> characterAt(std::string_view text) {
    constexpr std::array<std::uint32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
    const auto lead = static_cast<unsigned char>(text[0]);
    const std::size_t length = lead < 0x80             ? 1
                               : (lead & 0xe0) == 0xc0 ? 2
                               : (lead & 0xf0) == 0xe0 ? 3
                               : (lead & 0xf8) == 0xf0 ? 4
                                                       : 0;
    if (length == 0 || length > text.size()) {
        return {0, 0};
    }
    std::uint32_t code = length == 1 ? lead : lead & (0x7fU >> length);
    for (std::size_t k = 1; k < length; ++k) {
        const auto byte = static_cast<unsigned char>(text[k]);
        if ((byte & 0xc0) != 0x80) {
            return {0, 0};
        }
        code = (code << 6U) | (byte & 0x3fU);
    }
    const bool isSurrogate = code >= 0xd800 && code < 0xe000;
    return code < least.at(length) || isSurrogate || code > 0x10ffff ? std::pair(0U, std::size_t{0})
                                                                     : std::pair(code, length);
}

bool isControl(std::uint32_t code) {
    return (code < 0x20 && code != '\n' && code != '\r' && code != '\t') ||
           (code >= 0x7f && code < 0xa0) || code == 0x2028 || code == 0x2029;
}

/// Embeddings, overrides and isolates (UAX 9), the mark of byte order, notes between the lines.
bool isUnseen(std::uint32_t code) {
    return (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069) ||
           code == 0xfeff || (code >= 0xfff9 && code <= 0xfffb);
}

} // namespace

std::string harmless(std::string_view text) {
    if (std::ranges::all_of(text, isPlain)) {
        return std::string(text);
    }
    std::string out;
    while (!text.empty()) {
        const auto [code, length] = characterAt(text);
        if (length == 0) {
            out += noCharacter;
        } else if (isControl(code)) {
            out += ' ';
        } else if (!isUnseen(code)) {
            out += text.substr(0, length);
        }
        text.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return out;
}

} // namespace base
