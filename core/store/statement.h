// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/ranges.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

struct sqlite3_stmt;

namespace store {

/// Bytes kept as they are.
using Blob = std::span<const std::byte>;

/// One prepared SQL statement. A failure goes to its connection; on a failed connection it does
/// nothing and gives no row.
class Statement {
public:
    Statement(Connection& connection, std::string_view sql);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    Statement(Statement&&) = delete;
    Statement& operator=(Statement&&) = delete;

    /// Runs to the end with these values for its question marks; they may be numbers, texts, blobs,
    /// or optionals of such.
    template <class... Values>
    void run(const Values&... values) {
        reset();
        connection_.beginChange();
        outlivesValues_ = false;
        int at = 0;
        (bind(++at, values), ...);
        while (next()) {
        }
        reset();
    }
    /// Gives values for the question marks; next() then goes from row to row.
    template <class... Values>
    void ask(const Values&... values) {
        reset();
        connection_.beginQuery();
        outlivesValues_ = true;
        int at = 0;
        (bind(++at, values), ...);
    }
    /// True where there is one more row.
    [[nodiscard]] bool next();
    /// Lets go of the row, and of the lock that a half-read answer holds.
    void reset();

    /// Columns of the present row, from 0. What is of another type than asked for damages the
    /// connection.
    [[nodiscard]] std::int64_t wholeNumber(int column);
    /// In the range of the column's name (rangeOf).
    [[nodiscard]] double number(int column);
    /// Harmless (base::harmless): names come from files that anybody may have made.
    [[nodiscard]] std::string text(int column);
    /// Valid until the next row.
    [[nodiscard]] Blob blob(int column);
    [[nodiscard]] bool isEmpty(int column) const;
    [[nodiscard]] std::optional<double> numberIfAny(int column);
    [[nodiscard]] std::optional<std::string> textIfAny(int column);

private:
    void bind(int at, std::int64_t value);
    void bind(int at, double value);
    void bind(int at, std::string_view value);
    void bind(int at, Blob value);
    void bind(int at, std::nullopt_t);
    template <class Whole>
        requires std::is_integral_v<Whole>
    void bind(int at, Whole value) {
        bind(at, static_cast<std::int64_t>(value));
    }
    void bind(int at, const std::string& value) { bind(at, std::string_view(value)); }
    void bind(int at, const char* value) { bind(at, std::string_view(value)); }
    template <class T>
    void bind(int at, const std::optional<T>& value) {
        if (value) {
            bind(at, *value);
        } else {
            bind(at, std::nullopt);
        }
    }
    void check(int code);
    void expect(int column, int type, std::string_view wanted);
    [[nodiscard]] Range rangeAt(int column);

    Connection& connection_;
    sqlite3_stmt* statement_ = nullptr;
    std::vector<Range> ranges_;  ///< Of the columns, from the first number read on.
    bool outlivesValues_ = true; ///< So that texts and blobs have to be copied.
};

} // namespace store
