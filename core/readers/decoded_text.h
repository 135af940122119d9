// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace readers {

enum class TextEncoding { utf8, utf16, windows1252 };

struct DecodedText {
    std::string text; ///< UTF-8, without a mark in front.
    TextEncoding encoding = TextEncoding::utf8;
};

/// The bytes of a text file as UTF-8: UTF-8 and UTF-16 with or without mark; what is neither is
/// taken for Windows-1252, in which older spreadsheets write.
[[nodiscard]] DecodedText decodedText(std::string bytes);

} // namespace readers
