// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/statement.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>
#include <sqlite3.h>

namespace support {

/// What another program reads in a water file: of each row the columns as SQL writes them, parted
/// by "|". \param columns "name, depth_m". \param from the rest of the question: "lead_line ORDER
/// BY fid".
[[nodiscard]] inline std::vector<std::string>
rowsOf(const std::filesystem::path& path, std::string_view columns, std::string_view from) {
    std::string sql = "SELECT ";
    while (!columns.empty()) {
        const std::string_view column = columns.substr(0, columns.find(", "));
        columns.remove_prefix(std::min(columns.size(), column.size() + 2));
        sql += "quote(" + std::string(column) + ")" + (columns.empty() ? "" : " || '|' || ");
    }
    sql += " FROM " + std::string(from);
    auto opened = store::Connection::open(path, store::Connection::Access::existing).value();
    std::vector<std::string> rows;
    {
        store::Statement statement(*opened, sql);
        statement.ask();
        while (statement.next()) {
            rows.push_back(statement.text(0));
        }
    }
    const auto outcome = opened->outcome();
    EXPECT_TRUE(outcome.has_value()) << outcome.error().sentence() << " " << sql;
    return rows;
}

/// Changes a water file behind the program's back, as any other program could.
inline void changeFile(const std::filesystem::path& path, const std::string& sql) {
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READWRITE, nullptr), SQLITE_OK);
    sqlite3_exec(database, "PRAGMA ignore_check_constraints=ON", nullptr, nullptr, nullptr);
    EXPECT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
        << sqlite3_errmsg(database) << " " << sql;
    ASSERT_EQ(sqlite3_close(database), SQLITE_OK);
}

} // namespace support
