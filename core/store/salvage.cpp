// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage.h"

#include "core/store/statement.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <limits>
#include <optional>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <sqlite3.h>

namespace store {

namespace {

/// What can be made again, or belongs to the file and not to the water.
constexpr std::array madeAgain{"bands",    "contours",     "depth", "drawing",    "marks",
                               "sections", "step_results", "trust", "water_file", "zones"};

std::vector<std::string> textsOf(Connection& connection, const std::string& sql) {
    std::vector<std::string> texts;
    Statement rows(connection, sql);
    rows.ask();
    while (rows.next()) {
        texts.push_back(rows.text(0));
    }
    static_cast<void>(connection.outcome());
    return texts;
}

std::vector<std::string> tablesToSalvage(Connection& to) {
    auto tables = textsOf(to, "SELECT name FROM sqlite_master WHERE type='table' AND name NOT LIKE "
                              "'gpkg_%' AND name NOT LIKE 'sqlite_%' ORDER BY name");
    std::erase_if(tables, [](const std::string& table) {
        return std::ranges::find(madeAgain, table) != madeAgain.end();
    });
    return tables;
}

std::vector<std::string> columnsOf(Connection& connection, const std::string& table) {
    return textsOf(connection, fmt::format("SELECT name FROM pragma_table_info('{}')", table));
}

/// Rows of one damaged table in the order of its pages, past what cannot be read: no more of them
/// than the file has room for, since a page may be named again and again.
class Walk {
public:
    Walk(Connection& from, const std::string& table, const std::string& columns)
        : from_(from), rowsLeft_(from.mostRows()) {
        const std::string sql = fmt::format(
            "SELECT rowid, {} FROM \"{}\" WHERE rowid > ?1 ORDER BY rowid", columns, table);
        sqlite3_prepare_v2(from_.handle(), sql.c_str(), -1, &statement_, nullptr);
        sqlite3_bind_int64(statement_, 1, last_);
    }
    ~Walk() { sqlite3_finalize(statement_); }
    Walk(const Walk&) = delete;
    Walk& operator=(const Walk&) = delete;
    Walk(Walk&&) = delete;
    Walk& operator=(Walk&&) = delete;

    [[nodiscard]] bool isOpen() const { return statement_ != nullptr; }
    /// The next row that can be read; null at the end.
    sqlite3_stmt* next() {
        if (rowsLeft_ == 0) {
            ++gaps_;
            return nullptr;
        }
        --rowsLeft_;
        if (const int code = step(); code == SQLITE_ROW || code == SQLITE_DONE) {
            return code == SQLITE_ROW ? taken() : nullptr;
        }
        ++gaps_;
        return goRound() ? taken() : nullptr;
    }
    [[nodiscard]] std::size_t gaps() const { return gaps_; }

private:
    using Number = std::int64_t;
    static constexpr Number mostAhead = Number{1} << 61;

    int step() {
        from_.beginQuery();
        const int code = sqlite3_step(statement_);
        static_cast<void>(from_.outcome()); // a question without end is a row that is not there
        return code;
    }
    int stepFrom(Number behind) {
        sqlite3_reset(statement_);
        sqlite3_bind_int64(statement_, 1, behind);
        return step();
    }
    /// How far a row's number can still go: none is greater than 2^63 - 1.
    [[nodiscard]] Number ahead() const {
        return std::numeric_limits<Number>::max() - std::max<Number>(last_, 0);
    }
    sqlite3_stmt* taken() {
        last_ = std::max<Number>(last_, sqlite3_column_int64(statement_, 0));
        return statement_;
    }
    /// The first row behind those that cannot be read: looked for at ever longer strides, and then
    /// between the last two by halving.
    bool goRound() {
        Number bad = last_;
        Number stride = 1;
        while (stride < mostAhead && stride < ahead()) {
            const int code = stepFrom(last_ + stride);
            if (code == SQLITE_ROW || code == SQLITE_DONE) {
                break;
            }
            bad = last_ + stride;
            stride *= 2;
        }
        Number good = last_ + std::min(stride, ahead());
        while (good - bad > 1) {
            const Number middle = bad + (good - bad) / 2;
            const int code = stepFrom(middle);
            (code == SQLITE_ROW || code == SQLITE_DONE ? good : bad) = middle;
        }
        return stepFrom(good) == SQLITE_ROW;
    }

    Connection& from_;
    sqlite3_stmt* statement_ = nullptr;
    Number last_ = -1; ///< The highest so far: going round leads on. Rows of ours begin at 1.
    std::uint64_t rowsLeft_;
    std::size_t gaps_ = 0;
};

SalvagedTable salvageTable(Connection& from, Connection& to, const std::string& table,
                           base::Progress& progress) {
    SalvagedTable salvaged{table};
    const auto there = columnsOf(from, table);
    std::vector<std::string> columns;
    for (const std::string& column : columnsOf(to, table)) {
        if (std::ranges::find(there, column) != there.end()) {
            columns.push_back(fmt::format("\"{}\"", column));
        }
    }
    const std::string names = fmt::format("{}", fmt::join(columns, ", "));
    Walk walk(from, table, names);
    if (columns.empty() || !walk.isOpen()) {
        salvaged.isLost = true;
        return salvaged;
    }
    const std::string sql =
        fmt::format("INSERT INTO \"{}\" ({}) VALUES ({})", table, names,
                    fmt::join(std::vector<std::string>(columns.size(), "?"), ", "));
    sqlite3_stmt* insert = nullptr;
    sqlite3_prepare_v2(to.handle(), sql.c_str(), -1, &insert, nullptr);
    while (sqlite3_stmt* row = progress.stopAsked() ? nullptr : walk.next()) {
        to.beginChange();
        for (int column = 1; column <= static_cast<int>(columns.size()); ++column) {
            sqlite3_bind_value(insert, column, sqlite3_column_value(row, column));
        }
        ++(sqlite3_step(insert) == SQLITE_DONE ? salvaged.rows : salvaged.refused);
        sqlite3_reset(insert);
    }
    sqlite3_finalize(insert);
    salvaged.gaps = walk.gaps();
    return salvaged;
}

} // namespace

std::vector<SalvagedTable> salvageRows(Connection& from, Connection& to, base::Progress& progress) {
    std::vector<SalvagedTable> all;
    const auto tables = tablesToSalvage(to);
    to.execute("BEGIN");
    for (const std::string& table : tables) {
        progress.tell(static_cast<double>(all.size()) / static_cast<double>(tables.size()));
        all.push_back(salvageTable(from, to, table, progress));
    }
    to.execute("COMMIT");
    if (progress.stopAsked()) {
        to.fail(base::cancelled());
    }
    return all;
}

} // namespace store
