// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace rules {

/// A piece of a source and the line, counted from 1, on which it begins.
struct Piece {
    int line = 0;
    std::string text;
    std::string before = {}; ///< Of a literal: the code that leads to it, the last of it, with
                             ///< blanks between words only; other literals in it are empty.
};

/// A C++ source taken apart just as far as the rules need it. Comments and literals are told from
/// code, so that a rule on string literals is not fooled by a comment and the other way round.
struct SourceText {
    std::vector<std::string> lines; ///< As written.
    std::vector<std::string> code; ///< As written, without comments and without what literals hold.
    std::vector<Piece> literals;   ///< What string literals hold; raw literals whole.
    std::vector<Piece> quotedIncludes; ///< #include "..."
    std::vector<Piece> angledIncludes; ///< #include <...>
};

/// Knows line and block comments, string, character and raw literals, and 1'000; not trigraphs.
[[nodiscard]] SourceText takeApart(std::string_view source);

/// The whole file; empty where it cannot be read.
[[nodiscard]] std::string contentOf(const std::filesystem::path& file);

/// The lines of a text without their ends; a last line without an end counts.
[[nodiscard]] std::vector<std::string> linesOf(std::string_view text);

} // namespace rules
