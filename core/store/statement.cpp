// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/statement.h"

#include "core/base/harmless_text.h"

#include <cmath>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store {

Statement::Statement(Connection& connection, std::string_view sql) : connection_(connection) {
    if (connection_.isFine()) {
        check(sqlite3_prepare_v2(connection_.handle(), sql.data(), static_cast<int>(sql.size()),
                                 &statement_, nullptr));
    }
}

Statement::~Statement() {
    sqlite3_finalize(statement_);
}

void Statement::check(int code) {
    if (code != SQLITE_OK) {
        connection_.failWith(code);
    }
}

void Statement::reset() {
    if (statement_ != nullptr) {
        sqlite3_reset(statement_); // What it answers was seen by next() already.
    }
}

bool Statement::next() {
    static_cast<void>(connection_.isRowWhole()); // a row that was left out ends nothing
    if (!connection_.isFine() || statement_ == nullptr) {
        return false;
    }
    const int code = sqlite3_step(statement_);
    if (code == SQLITE_ROW) {
        return connection_.countRow();
    }
    if (code != SQLITE_DONE) {
        connection_.failWith(code);
    }
    return false;
}

void Statement::bind(int at, std::int64_t value) {
    if (connection_.isFine()) {
        check(sqlite3_bind_int64(statement_, at, value));
    }
}

void Statement::bind(int at, double value) {
    if (!std::isfinite(value)) {
        connection_.fail({base::ErrorKind::wrongUse,
                          "a value that is not a number cannot be kept; nothing was changed",
                          connection_.path().string(), "correct the value and save again"});
    }
    if (connection_.isFine()) {
        check(sqlite3_bind_double(statement_, at, value));
    }
}

void Statement::bind(int at, std::string_view value) {
    if (connection_.isFine()) {
        check(sqlite3_bind_text64(statement_, at, value.data() == nullptr ? "" : value.data(),
                                  value.size(), outlivesValues_ ? SQLITE_TRANSIENT : SQLITE_STATIC,
                                  SQLITE_UTF8));
    }
}

void Statement::bind(int at, Blob value) {
    if (!connection_.isFine()) {
        return;
    }
    if (value.empty()) {
        check(sqlite3_bind_zeroblob(statement_, at, 0));
    } else {
        check(sqlite3_bind_blob64(statement_, at, value.data(), value.size(),
                                  outlivesValues_ ? SQLITE_TRANSIENT : SQLITE_STATIC));
    }
}

void Statement::bind(int at, std::nullopt_t) {
    if (connection_.isFine()) {
        check(sqlite3_bind_null(statement_, at));
    }
}

void Statement::expect(int column, int type, std::string_view wanted) {
    const int found = sqlite3_column_type(statement_, column);
    if (found == type || (type == SQLITE_FLOAT && found == SQLITE_INTEGER)) {
        return;
    }
    connection_.failDamaged(fmt::format("column {} holds something that is no {}",
                                        sqlite3_column_name(statement_, column), wanted));
}

std::int64_t Statement::wholeNumber(int column) {
    expect(column, SQLITE_INTEGER, "whole number");
    return sqlite3_column_int64(statement_, column);
}

double Statement::number(int column) {
    expect(column, SQLITE_FLOAT, "number");
    return withinRange(connection_, sqlite3_column_name(statement_, column), rangeAt(column),
                       sqlite3_column_double(statement_, column));
}

Range Statement::rangeAt(int column) {
    if (ranges_.empty()) {
        for (int k = 0; k < sqlite3_column_count(statement_); ++k) {
            ranges_.push_back(rangeOf(sqlite3_column_name(statement_, k)));
        }
    }
    return ranges_.at(static_cast<std::size_t>(column));
}

std::string Statement::text(int column) {
    expect(column, SQLITE_TEXT, "text");
    const unsigned char* text = sqlite3_column_text(statement_, column);
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement_, column));
    return text == nullptr
               ? std::string()
               : base::harmless(std::string_view(reinterpret_cast<const char*>(text), size));
}

Blob Statement::blob(int column) {
    expect(column, SQLITE_BLOB, "row of bytes");
    const void* bytes = sqlite3_column_blob(statement_, column);
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement_, column));
    return bytes == nullptr ? Blob() : Blob(static_cast<const std::byte*>(bytes), size);
}

bool Statement::isEmpty(int column) const {
    return sqlite3_column_type(statement_, column) == SQLITE_NULL;
}

std::optional<double> Statement::numberIfAny(int column) {
    return isEmpty(column) ? std::nullopt : std::optional(number(column));
}

std::optional<std::string> Statement::textIfAny(int column) {
    return isEmpty(column) ? std::nullopt : std::optional(text(column));
}

} // namespace store
