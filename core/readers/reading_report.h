// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace readers {

/// Rows of a file that could not be used, all for one reason.
struct RefusedRows {
    std::size_t count = 0;
    std::size_t firstLine = 0; ///< Line, or number of the point, counted from 1.
    std::string firstText;     ///< What it says, cut at 80 characters, unprintables as '?'.
    friend bool operator==(const RefusedRows&, const RefusedRows&) = default;
};

/// A field that said nothing usable; the rest of its row was taken.
struct BadField {
    std::size_t line = 0; ///< Counted from 1.
    std::string column;
    std::string text; ///< Cut at 80 characters, unprintables as '?'.
    friend bool operator==(const BadField&, const BadField&) = default;
};

/// What a reader did with a file: nothing is dropped without being counted here.
struct ReadingReport {
    std::size_t read = 0; ///< Rows, sentences or points looked at.
    std::size_t used = 0; ///< Soundings (or whatever was asked for) taken from them.
    std::map<std::string, RefusedRows> refused; ///< By reason: "bad_checksum", "no_depth".
    std::vector<BadField> badFields;
    std::vector<std::string> notes; ///< Plain sentences about what was assumed or found odd.

    void refuse(std::string_view reason, std::size_t line, std::string_view text);
    void dropField(std::string_view column, std::size_t line, std::string_view text);
    [[nodiscard]] std::size_t refusedCount() const;
    /// "3 x bad_checksum (first: line 12 '$SDDPT...')", reasons joined; empty where none.
    [[nodiscard]] std::string refusedText() const;
    friend bool operator==(const ReadingReport&, const ReadingReport&) = default;
};

} // namespace readers
