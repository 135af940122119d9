// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"
#include "core/store/statement.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

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

/// Changes a water file behind the program's back.
inline void changeFile(const std::filesystem::path& path, const std::string& sql) {
    auto opened = store::Connection::open(path, store::Connection::Access::existing).value();
    opened->execute(sql);
    const auto outcome = opened->outcome();
    ASSERT_TRUE(outcome.has_value()) << outcome.error().sentence() << " " << sql;
}

} // namespace support
