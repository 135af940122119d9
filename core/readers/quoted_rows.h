// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace readers {

/// The rows of a delimited text after RFC 4180, with any one character as separator: a quoted cell
/// keeps blanks, separators and line breaks. Blanks round other cells are taken off. A quote that
/// closes nowhere, or is followed by more text, is a character like any other, so that one slip
/// does not swallow the rows behind it.
class QuotedRows {
public:
    /// \param text has to outlive the rows.
    QuotedRows(std::string_view text, char separator) : text_(text), separator_(separator) {}

    /// The next row, empty ones too; false at the end.
    [[nodiscard]] bool next(std::vector<std::string>& cells);
    /// The line on which the present row begins, from 1.
    [[nodiscard]] std::size_t line() const { return line_; }
    /// The present row as it stands.
    [[nodiscard]] std::string_view row() const { return row_; }
    /// Share of the text that is read.
    [[nodiscard]] double share() const;

private:
    std::string cell();
    bool takeQuoted(std::string& cell);
    [[nodiscard]] bool isEndOfCell(std::size_t at) const;
    [[nodiscard]] std::size_t behindBlanks(std::size_t at) const;

    std::string_view text_;
    char separator_;
    std::size_t at_ = 0;
    std::size_t line_ = 0;
    std::size_t lines_ = 0; ///< Begun so far, those within cells too.
    std::string_view row_;
};

} // namespace readers
